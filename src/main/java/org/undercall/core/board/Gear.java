package org.undercall.core.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Wrenches;
import org.undercall.core.term.Torque;

/**
 * One thing to take in hand for the stage at hand.
 *
 * @param what what it is for
 * @param name as it is called or marked
 * @param note what is to be minded; empty if nothing
 */
public record Gear(What what, String name, String note) {
  /** What a thing is for. */
  public enum What {
    SOCKET,
    WRENCH,
    /** There is no wrench that can serve, or the one named does not. */
    NO_WRENCH,
    /** It is turned by an angle, so that no torque is read. */
    TURN,
    ADAPTOR,
    COUNTER_HOLD,
    /** Its thread is left-handed. */
    LEFT_HAND
  }

  /** What is needed for the step at hand; of a wrench only while a torque may be seen. */
  static List<Gear> of(Session session) {
    if (!(session.place().step() instanceof Step.Fasten fasten)) {
      return List.of();
    }
    Fastener fastener = fasten.fastener();
    List<Gear> gear = new ArrayList<>();
    gear.add(new Gear(What.SOCKET, DriveSize.shown(fastener.drive()), ""));
    if (session.phase() == Phase.TORQUE && session.stage() instanceof Stage.TorqueStage torque) {
      wrench(session, torque.setting()).ifPresent(gear::add);
      torque
          .dialled()
          .map(d -> d.extension().toPlainString() + " mm, at " + d.angle().toPlainString() + "°")
          .ifPresent(name -> gear.add(new Gear(What.ADAPTOR, name, "set as shown, with it on")));
    }
    if (session.phase() == Phase.ANGLE) {
      gear.add(new Gear(What.TURN, "by angle", "no torque is read"));
    }
    fastener
        .manner()
        .counterHold()
        .ifPresent(with -> gear.add(new Gear(What.COUNTER_HOLD, with, "")));
    if (fastener.manner().leftHand()) {
      gear.add(new Gear(What.LEFT_HAND, "left-hand thread", "turns the other way"));
    }
    return gear;
  }

  private static Optional<Gear> wrench(Session session, Torque setting) {
    Wrenches wrenches = session.walk().procedure().wrenches();
    if (wrenches.tools().isEmpty()) {
      return Optional.empty();
    }
    Optional<Tool> named = session.bench().named().flatMap(wrenches::called);
    if (named.isPresent()) {
      Tool tool = named.get();
      return Optional.of(
          tool.serves(setting)
              ? new Gear(What.WRENCH, tool.id(), "named, " + range(tool))
              : new Gear(What.NO_WRENCH, tool.id(), "does not fit: name another"));
    }
    List<Tool> serving = wrenches.serving(setting);
    if (serving.isEmpty()) {
      return Optional.of(new Gear(What.NO_WRENCH, "none listed fits", ""));
    }
    String names = String.join(" or ", serving.stream().map(Tool::id).toList());
    String note = serving.size() > 1 ? "name the one used" : range(serving.get(0));
    return Optional.of(new Gear(What.WRENCH, names, note));
  }

  private static String range(Tool tool) {
    return tool.least().amount().toPlainString() + " to " + tool.most();
  }
}
