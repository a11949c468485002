package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
import org.undercall.core.term.SpellingAlphabet;
import org.undercall.core.term.TalkLevel;

/**
 * A procedure as the technician will hear it, by walking it with somebody who does and says just
 * what is asked for. The rules are those of real work; nothing is recorded.
 */
public final class WalkThrough {
  private static final OffsetDateTime START =
      OffsetDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
  private static final int MOST_PHRASES = 100_000;

  /** Who works, and who sees it where that is asked for; neither is a name. */
  private static final String WORKER = "ME";

  private static final String OBSERVER = "YOU";

  private final List<Exchange> exchanges = new ArrayList<>();
  private Session session;
  private Duration passed = Duration.ZERO;
  private boolean refused;

  /**
   * What is said once, and what to answer.
   *
   * @param heard the sentences that the technician hears
   * @param place the place of the walk at hand then, from 0
   * @param answer what to say then; empty at the end and while a time is waited
   */
  public record Exchange(List<String> heard, int place, Optional<String> answer) {
    public Exchange {
      heard = List.copyOf(heard);
    }
  }

  private WalkThrough(Walk walk) {
    session = Session.start(new Walk(undated(walk.procedure()), walk.places()));
  }

  /** Of this walk it matters what is said, not on which day. */
  private static Procedure undated(Procedure procedure) {
    return new Procedure(
        procedure.about(),
        procedure.cautions(),
        procedure.tools().stream()
            .map(t -> new Tool(t.id(), t.kind(), t.least(), t.most(), Optional.empty()))
            .toList(),
        procedure.rideHeight(),
        procedure.loadHolds(),
        procedure.phases());
  }

  /**
   * The whole walk. Of several head markings the last of the procedure is read out; a measured
   * value is the least that is permitted.
   *
   * @throws IllegalStateException if the walk does not come to its end, which no procedure causes
   */
  public static List<Exchange> of(Walk walk) {
    return of(walk, new SessionEvent.TalkSet(TalkLevel.NORMAL));
  }

  /** The same for a technician of whom it is known how much he wants to hear. */
  public static List<Exchange> of(Walk walk, SessionEvent.TalkSet talk) {
    WalkThrough through = new WalkThrough(walk);
    through.apply(Decider.begin(through.session, started(), Optional.of(talk)), Optional.empty());
    for (int i = 0; through.session.phase() != Phase.ENDED; i++) {
      if (i == MOST_PHRASES) {
        throw new IllegalStateException("no end after " + through.session.ref());
      }
      through.next();
    }
    return List.copyOf(through.exchanges);
  }

  /** Somebody works who is not the witness. */
  static SessionEvent.SessionStarted started() {
    return new SessionEvent.SessionStarted(
        "",
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(WORKER),
        Optional.empty());
  }

  private void next() {
    if (session.phase() == Phase.WAITING && session.timers().runs(session.ref())) {
      passed = passed.plus(((Step.Wait) session.place().step()).time());
      decide(new Intent.Plain(IntentKind.TIMER_ENDED), Optional.empty());
    } else {
      say(refused ? "put off for later" : answer(session));
    }
  }

  private void say(String answer) {
    Exchange last = exchanges.remove(exchanges.size() - 1);
    exchanges.add(new Exchange(last.heard(), last.place(), Optional.of(answer)));
    Intent intent =
        Interpreter.interpret(RecognisedPhrase.typed(answer), Decider.heard(session), 0);
    decide(intent, Optional.of(new Recorded.Heard(answer, intent.kind().name(), 1, "typed")));
  }

  private void decide(Intent intent, Optional<Recorded.Heard> heard) {
    apply(Decider.decide(session, intent, now()), heard);
  }

  private Moment now() {
    return new Moment(START.plus(passed), passed.toMillis());
  }

  private void apply(Decision decision, Optional<Recorded.Heard> heard) {
    refused = decision.outcome() == Outcome.REFUSED;
    session =
        session.after(new Recorded(1, now(), heard, decision.events(), decision.reply().text()));
    exchanges.add(
        new Exchange(decision.reply().sentences(), session.progress().at(), Optional.empty()));
  }

  /** What somebody says who does just what is asked for. */
  public static String answer(Session session) {
    return switch (session.phase()) {
      case BRIEFING -> "cautions understood";
      case DO, HAND_OVER -> "step completed";
      case CHECK -> "check passed";
      case MEASURE -> measured((Step.Measure) session.place().step());
      case HARDWARE -> newHardware(FastenRules.fastener(session));
      case MARKING -> "head marking " + marking(session);
      case GATE, LOAD -> isDroop(session) ? "suspension hangs free" : rideHeight(session);
      case BY_HAND -> byHand(FastenRules.fastener(session).set().count());
      case RUN_DOWN -> "it reads one" + runDownUnit(session);
      case TORQUE -> "torque reached " + amount(session.stage()) + unit(session);
      case ANGLE -> "angle turned " + amount(session.stage());
      case WAITING ->
          session.timers().ended().contains(session.ref()) ? "step completed" : "start the timer";
      case WITNESS -> "witness " + SpellingAlphabet.spelled(OBSERVER);
      case WITNESS_READ_BACK -> "witnessed by " + SpellingAlphabet.spelled(OBSERVER);
      case READ_BACK -> "that is correct";
      case LOAD_READ_BACK ->
          session.side().place() + (isDroop(session) ? " at full droop" : " at ride height");
      case ALL_CLOSED, CLOSED_STEP -> "end of work";
      case JOB_READ_BACK, BEGUN, TROUBLE, NOTING, ON_HOLD, SHIFT_CHANGE, ENDED ->
          throw new IllegalStateException("nobody led to " + session.phase());
    };
  }

  private static String byHand(int count) {
    return count > 1 ? count + " run in by hand" : "run in by hand";
  }

  private static String newHardware(Fastener fastener) {
    return fastener.set().several()
        ? fastener.set().count() + " new bolts fitted"
        : "new hardware fitted";
  }

  /** With a wheel off the knuckle is jacked; the height shows it where one was noted. */
  private static String rideHeight(Session session) {
    if (session.car().hasOn(session.place().wheels())) {
      return "wheels carry the car";
    }
    Measure noted = session.loads().rideHeights().get(session.side());
    return noted == null
        ? "body lifts off the stand"
        : "arch height " + noted.amount().toPlainString();
  }

  private static String measured(Step.Measure step) {
    Optional<BigDecimal> least = step.limits().least().filter(value -> value.signum() > 0);
    BigDecimal value = least.or(step.limits()::most).orElse(BigDecimal.TEN);
    return "it reads " + value.toPlainString() + " " + step.unit().symbol();
  }

  private static HeadMarking marking(Session session) {
    Fastener fastener = FastenRules.fastener(session);
    return fastener.variants().get(fastener.variants().size() - 1).marking().orElseThrow();
  }

  private static String runDownUnit(Session session) {
    return " " + ((Stage.TorqueStage) session.specified()).target().unit().symbol();
  }

  /** The unit, where a procedure has torques in several. */
  private static String unit(Session session) {
    return session.walk().procedure().mixesUnits()
        ? " " + ((Stage.TorqueStage) session.stage()).target().unit().symbol()
        : "";
  }

  private static String amount(Stage stage) {
    return stage.amount().toPlainString();
  }

  private static boolean isDroop(Session session) {
    return Session.needs(session.place()) == LoadCondition.FULL_DROOP;
  }
}
