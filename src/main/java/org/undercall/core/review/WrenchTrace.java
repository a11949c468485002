package org.undercall.core.review;

import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Wrenches;

/** Which wrench was named last, as a log is read. */
final class WrenchTrace {
  private static final Set<String> OF_WRENCHES =
      Set.of(EventKind.WRENCH_NAMED.name(), EventKind.OVERDUE_NOTED.name());

  private final Wrenches wrenches;
  private Optional<Tool> named = Optional.empty();

  WrenchTrace(Wrenches wrenches) {
    this.wrenches = wrenches;
  }

  void read(SessionEvent event) {
    if (event instanceof SessionEvent.WrenchNamed e) {
      named = wrenches.called(e.wrench());
    } else if (event instanceof SessionEvent.OverdueNoted e) {
      named = wrenches.called(e.wrench());
    } else if (event instanceof SessionEvent.SayingTakenBack e && OF_WRENCHES.contains(e.what())) {
      named = Optional.empty();
    }
  }

  /** The wrench of a torque stage: the one named last if it fits, else none. */
  Optional<Tool> at(Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? named.filter(tool -> tool.serves(torque.setting()))
        : Optional.empty();
  }
}
