package org.undercall.core.review;

import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Wrenches;

/** Which wrench was named last, as a log is read. */
final class WrenchTrace {
  private final Wrenches wrenches;
  private Optional<Tool> named = Optional.empty();

  WrenchTrace(Wrenches wrenches) {
    this.wrenches = wrenches;
  }

  void read(SessionEvent event) {
    if (event instanceof SessionEvent.WrenchNamed e) {
      named = wrenches.called(e.wrench());
    }
  }

  /** The wrench of a torque stage: the one named last if it fits, else none. */
  Optional<Tool> at(Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? named.filter(tool -> tool.serves(torque.setting()))
        : Optional.empty();
  }
}
