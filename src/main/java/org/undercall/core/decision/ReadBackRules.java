package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Step;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Say;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;

/** Values, markings and the end of the work: said, read back, and only then kept. */
final class ReadBackRules {
  private ReadBackRules() {}

  static Decision measured(Session session, Intent intent, Moment now) {
    Step.Measure step = (Step.Measure) session.place().step();
    Intent.OfNumber number = (Intent.OfNumber) intent;
    if (number.unit().isPresent() && !fits(number, step.unit())) {
      return StepRules.refuse(session, Missing.OTHER_UNIT, Refuse.otherUnit(step));
    }
    Measure value = new Measure(number.number().value(), step.unit());
    return new Turn(session)
        .record(new SessionEvent.MeasureCalled(session.ref(), value))
        .prompt()
        .end(Outcome.ASKED);
  }

  static Decision right(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    if (pending instanceof Pending.Value value) {
      return keep(session, value.value());
    }
    if (pending instanceof Pending.Marking marking) {
      return keep(session, marking.marking());
    }
    int open = session.progress().open();
    return new Turn(session)
        .record(new SessionEvent.SessionEnded(false, open))
        .say(Prompt.ended(session, false))
        .end(Outcome.ACCEPTED);
  }

  static Decision dropped(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .record(new SessionEvent.ReadBackDropped())
        .say(Say.dropped())
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  /** The value was called again: the same one is kept, another one is read back in its place. */
  static Decision valueAgain(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    if (!(pending instanceof Pending.Value value)) {
      return StepRules.missing(session, intent, now);
    }
    Intent.OfNumber again = (Intent.OfNumber) intent;
    boolean same =
        again.number().value().compareTo(value.value().amount()) == 0
            && (again.unit().isEmpty() || fits(again, value.value().unit()));
    return same ? keep(session, value.value()) : measured(session, intent, now);
  }

  /** The marking was read out again: the same one is kept, another one is read back instead. */
  static Decision markingAgain(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    if (!(pending instanceof Pending.Marking marking)) {
      return StepRules.missing(session, intent, now);
    }
    boolean same = ((Intent.Marking) intent).marking().equals(marking.marking());
    return same ? keep(session, marking.marking()) : FastenRules.marking(session, intent, now);
  }

  static Decision end(Session session, Intent intent, Moment now) {
    int open = session.progress().open();
    return new Turn(session)
        .record(new SessionEvent.EndCalled(open))
        .say(Prompt.end(session))
        .end(Outcome.ASKED);
  }

  static Decision complete(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .record(new SessionEvent.SessionEnded(true, 0))
        .say(Prompt.ended(session, true))
        .end(Outcome.ACCEPTED);
  }

  /** Takes back the called value, or else the last closing. */
  static Decision takeBack(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session);
    if (session.tightening().called().isPresent()) {
      return turn.record(new SessionEvent.ValueDropped(session.ref()))
          .say(Say.dropped())
          .end(Outcome.ACCEPTED);
    }
    return session
        .progress()
        .lastClosed()
        .map(
            ref ->
                turn.record(new SessionEvent.ClosingTakenBack(ref))
                    .say(Say.takenBack())
                    .moveTo(session.walk().indexOf(ref)))
        .map(t -> t.end(Outcome.ACCEPTED))
        .orElseGet(
            () ->
                turn.record(StepRules.notNow(session, intent))
                    .say(Say.nothingToTakeBack())
                    .end(Outcome.REFUSED));
  }

  private static Decision keep(Session session, Measure value) {
    Step.Measure step = (Step.Measure) session.place().step();
    boolean within = step.limits().hold(value.amount());
    Turn turn = new Turn(session).record(new SessionEvent.Measured(session.ref(), value, within));
    if (!within && !step.limits().mayBeOutside()) {
      return turn.say(Say.outsideLimits(value)).end(Outcome.REFUSED);
    }
    if (step.notesRideHeight()) {
      turn.record(new SessionEvent.RideHeightNoted(session.side(), value));
    }
    return turn.say(Say.measured(within)).close().end(Outcome.ACCEPTED);
  }

  private static Decision keep(Session session, HeadMarking marking) {
    return new Turn(session)
        .record(new SessionEvent.MarkingNoted(session.ref(), marking))
        .say(Say.markingKept(marking))
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  private static boolean fits(Intent.OfNumber number, MeasureUnit unit) {
    return number.unit().flatMap(ReadBackRules::unit).equals(Optional.of(unit));
  }

  private static Optional<MeasureUnit> unit(org.undercall.core.intent.SpokenUnit spoken) {
    return switch (spoken) {
      case MILLIMETRES -> Optional.of(MeasureUnit.MILLIMETRE);
      case INCHES -> Optional.of(MeasureUnit.INCH);
      case DEGREES -> Optional.of(MeasureUnit.DEGREE);
      case BAR -> Optional.of(MeasureUnit.BAR);
      case KILOMETRES -> Optional.of(MeasureUnit.KILOMETRE);
      case NEWTON_METRES, FOOT_POUNDS, INCH_POUNDS -> Optional.empty();
    };
  }
}
