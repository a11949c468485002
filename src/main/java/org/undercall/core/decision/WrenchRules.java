package org.undercall.core.decision;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Wrenches;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;

/**
 * Which torque wrench is used, and whether its calibration holds. Nothing is inferred: a wrench
 * counts as used only if it was named and fits the torque.
 */
final class WrenchRules {
  private WrenchRules() {}

  /** The wrench that is used from here on; refused if it does not fit the torque at hand. */
  static Decision named(Session session, Intent intent, Moment now) {
    Wrenches wrenches = session.walk().procedure().wrenches();
    int number = ((Intent.OfPosition) intent).position();
    Optional<Tool> tool = wrenches.called(number);
    if (tool.isEmpty()) {
      return StepRules.refuse(
          session, Missing.WRENCH, Refuse.noSuchWrench(number, wrenches.numbers()));
    }
    Optional<Stage.TorqueStage> stage = torque(session);
    if (stage.filter(torque -> !tool.get().serves(torque.setting())).isPresent()) {
      return StepRules.refuse(
          session,
          Missing.WRENCH,
          Refuse.wrenchDoesNotFit(number, tool.get(), stage.get().setting()));
    }
    Turn turn = new Turn(session);
    if (session.tightening().called().isPresent() && stage.isPresent()) {
      turn.record(new SessionEvent.ValueDropped(session.ref()));
    }
    turn.record(new SessionEvent.WrenchNamed(session.ref(), tool.get().id()))
        .say(Say.wrench(number));
    return turn.say(
            overdueOn(turn.session(), now.wall().toLocalDate())
                .map(t -> Ask.overdue(number))
                .orElse(Reply.SILENCE))
        .end(Outcome.ACCEPTED);
  }

  /** Why a wrench whose calibration is over is used all the same; read back before it counts. */
  static Decision overdue(Session session, Intent intent, Moment now) {
    Optional<Tool> tool = overdueOn(session, now.wall().toLocalDate());
    if (tool.isEmpty()) {
      return TalkRules.notNow(session, intent, now);
    }
    if (candidates(session).size() > 1) {
      return refuse(session, tool.get());
    }
    return new Turn(session)
        .record(
            new SessionEvent.OverdueCalled(
                session.ref(), tool.get().id(), ((Intent.Overdue) intent).reason()))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** Keeps why it is used. */
  static Decision keep(Session session, Pending.Overdue pending) {
    return new Turn(session)
        .record(new SessionEvent.OverdueNoted(pending.step(), pending.wrench(), pending.reason()))
        .say(Say.overdueNoted())
        .end(Outcome.ACCEPTED);
  }

  /** The refusal of a torque with a wrench whose calibration is over; empty if all is well. */
  static Optional<Decision> calibrationOver(Session session, Moment now) {
    return overdueOn(session, now.wall().toLocalDate()).map(tool -> refuse(session, tool));
  }

  private static Decision refuse(Session session, Tool tool) {
    int number = session.walk().procedure().wrenches().number(tool);
    return StepRules.refuse(
        session,
        Missing.CALIBRATION,
        candidates(session).size() > 1
            ? Refuse.nameTheWrench(number)
            : Refuse.calibrationOver(number));
  }

  /**
   * What is to be said of the wrench with the torque at hand: that its calibration is over; that
   * the one named does not fit; or, until the first torque is closed, to name one of several.
   */
  static Reply prompt(Session session) {
    Optional<Stage.TorqueStage> stage = torque(session);
    if (stage.isEmpty()) {
      return Reply.SILENCE;
    }
    Wrenches wrenches = session.walk().procedure().wrenches();
    Optional<Tool> over =
        session.stopwatch().last().flatMap(now -> overdueOn(session, now.wall().toLocalDate()));
    Optional<Tool> named = session.bench().named().flatMap(wrenches::called);
    if (named.filter(tool -> !tool.serves(stage.get().setting())).isPresent()) {
      return Ask.otherWrench(wrenches.number(named.get()));
    }
    if (over.isPresent() && candidates(session).size() == 1) {
      return Ask.overdue(wrenches.number(over.get()));
    }
    boolean first =
        session.progress().states().stream().noneMatch(state -> state.tightening().tight());
    boolean ask = named.isEmpty() && first && wrenches.leaveAChoice(stage.get().setting());
    return ask || over.isPresent() ? Ask.whichWrench() : Reply.SILENCE;
  }

  /** Whether the torque at hand is read at the wrench, whichever of those that fit it is. */
  static boolean indicates(Session session) {
    List<Tool> candidates = candidates(session);
    return !candidates.isEmpty()
        && candidates.stream().allMatch(tool -> tool.kind() == Tool.Kind.INDICATING);
  }

  /** The wrench that could be in use with its calibration over, and was not excused. */
  private static Optional<Tool> overdueOn(Session session, LocalDate day) {
    return candidates(session).stream()
        .filter(tool -> !session.bench().excused().contains(tool.id()))
        .filter(tool -> tool.calibrated().filter(date -> isOver(date, day)).isPresent())
        .findFirst();
  }

  private static boolean isOver(LocalDate calibrated, LocalDate day) {
    return new Calibration(calibrated, OptionalInt.empty()).on(day, Calibration.Interval.ISO_6789)
        == Calibration.State.DUE_BY_DATE;
  }

  /** The wrench that was named if it fits the torque at hand, else all that could serve. */
  private static List<Tool> candidates(Session session) {
    Optional<Stage.TorqueStage> stage = torque(session);
    if (stage.isEmpty()) {
      return List.of();
    }
    List<Tool> serving = session.walk().procedure().wrenches().serving(stage.get().setting());
    return session
        .bench()
        .named()
        .flatMap(id -> serving.stream().filter(tool -> tool.id().equals(id)).findFirst())
        .map(List::of)
        .orElse(serving);
  }

  /** The torque stage at hand, whatever waits to be read back. */
  private static Optional<Stage.TorqueStage> torque(Session session) {
    return Phase.ofStep(session) == Phase.TORQUE
            && session.place().step() instanceof Step.Fasten
            && session.stage() instanceof Stage.TorqueStage torque
        ? Optional.of(torque)
        : Optional.empty();
  }
}
