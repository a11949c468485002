package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.reply.JobTalk;
import org.undercall.core.reply.Reply;
import org.undercall.core.term.Job;
import org.undercall.core.term.JobField;
import org.undercall.core.term.Vin;

/** Which car, which job and who, told before the cautions; each is read back before it counts. */
final class JobRules {
  private static final int LONGEST = 20;
  private static final int MOST_DIGITS = 7;

  private JobRules() {}

  static Decision told(Session session, Intent intent, Moment now) {
    Intent.OfJob said = (Intent.OfJob) intent;
    Turn turn = new Turn(session).drop();
    if (session.talk().mode() == Talk.Mode.HANDED && said.field() != JobField.TECHNICIAN) {
      return turn.then(ShiftRules.noName(turn.session(), intent, now));
    }
    boolean fits =
        switch (said.field()) {
          case VIN -> Vin.begins(session.account().vin() + said.text()) || Vin.isOne(said.text());
          case ODOMETER -> said.text().matches("[0-9]{1," + MOST_DIGITS + "}");
          case REGISTRATION, JOB_NUMBER, TECHNICIAN -> said.text().length() <= LONGEST;
        };
    if (!fits) {
      return turn.record(new SessionEvent.CloseRefused(session.ref(), Missing.JOB_TEXT))
          .say(JobTalk.refused(said.field()))
          .end(Outcome.REFUSED);
    }
    Optional<Decision> other = otherCar(turn, said);
    if (other.isPresent()) {
      return other.get();
    }
    return turn.record(new SessionEvent.JobCalled(said.field(), said.text()))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** The refusal of a plate or number that is not of the car that was worked on before. */
  private static Optional<Decision> otherCar(Turn turn, Intent.OfJob said) {
    return turn.session()
        .account()
        .visit()
        .flatMap(
            visit ->
                switch (said.field()) {
                  case REGISTRATION ->
                      visit.registration().filter(r -> !Job.samePlate(r, said.text()));
                  case VIN -> visit.vin().filter(vin -> !vin.contains(said.text()));
                  case ODOMETER, JOB_NUMBER, TECHNICIAN -> Optional.<String>empty();
                })
        .map(
            of ->
                turn.record(new SessionEvent.CloseRefused(turn.session().ref(), Missing.SAME_CAR))
                    .say(JobTalk.otherCar(said.field(), of))
                    .end(Outcome.REFUSED));
  }

  /** What is said of an odometer that stands lower than it did before; nothing of any other. */
  private static Reply lower(Session session, Pending.OfJob pending) {
    return session
        .account()
        .visit()
        .filter(visit -> pending.field() == JobField.ODOMETER)
        .flatMap(visit -> JobTalk.lower(visit.odometer(), new BigDecimal(pending.text())))
        .orElse(Reply.SILENCE);
  }

  static Decision keep(Session session, Intent intent, Moment now) {
    Pending.OfJob pending = (Pending.OfJob) session.talk().pending().orElseThrow();
    Turn turn =
        new Turn(session).record(new SessionEvent.JobNoted(pending.field(), pending.text()));
    if (session.talk().mode() == Talk.Mode.HANDED) {
      return turn.say(Prompt.whole(turn.session())).end(Outcome.ACCEPTED);
    }
    String vin = turn.session().account().vin();
    Optional<Boolean> check =
        Optional.of(vin).filter(Vin::isOne).map(text -> new Vin(text).checkDigitFits());
    return turn.say(
            pending.field() == JobField.VIN ? JobTalk.vinKept(vin.length(), check) : JobTalk.kept())
        .say(lower(session, pending))
        .end(Outcome.ACCEPTED);
  }
}
