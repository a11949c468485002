package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Job;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;

/**
 * An invented piece of work that somebody asks about a year later: what is asked for is done, one
 * phrase in 20 seconds, with a fault found, a value called wrong and a bolt that is checked again.
 */
public final class YearOldWork {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-02T08:00:00+01:00");
  private static final int PACE_SECONDS = 20;

  /** What is said besides, before the answer that a step asks for. */
  private static final Map<String, List<String>> BESIDES =
      Map.of(
          "joint-boot/LEFT", List.of("found fault", "boot of the tie rod is torn"),
          "bush-bolt/RIGHT", List.of("torque reached 50"));

  private final List<Recorded> log = new ArrayList<>();
  private final List<String> said = new ArrayList<>();
  private Session session;

  private YearOldWork(Walk walk) {
    this.session = Session.start(walk);
  }

  /** Every decision of the work. */
  public static List<Recorded> of(Procedure procedure, String sha256) {
    YearOldWork work = new YearOldWork(Walk.of(procedure));
    work.begin(procedure, sha256);
    Deque<String> next = new ArrayDeque<>();
    for (int i = 0; i < 2000 && work.session.phase() != Phase.ENDED; i++) {
      if (work.session.nextTimer().isPresent()) {
        work.decide(new Intent.Plain(IntentKind.TIMER_ENDED), Optional.empty());
        continue;
      }
      if (next.isEmpty()) {
        next.addAll(work.phrases());
      }
      work.say(next.remove());
    }
    return List.copyOf(work.log);
  }

  private void begin(Procedure procedure, String sha256) {
    Job job =
        new Job(
            Optional.of("INV 123"),
            Optional.empty(),
            Optional.of(new Measure(new BigDecimal("84210"), MeasureUnit.KILOMETRE)),
            Optional.of("4711"),
            Optional.of("S. Ample"));
    String title = procedure.about().title();
    String revision = procedure.about().revision();
    apply(
        Decider.begin(
            session, new SessionEvent.SessionStarted(title, revision, sha256, "0.1.0", job)),
        Optional.empty());
  }

  private List<String> phrases() {
    String at = session.ref().id() + "/" + session.ref().side();
    boolean torque = session.phase() == Phase.TORQUE;
    if (torque && once("wrench " + at)) {
      boolean small =
          session.stage() instanceof Stage.TorqueStage t && t.target().amount().intValue() <= 25;
      return List.of(small ? "wrench 1" : "wrench 2");
    }
    boolean now = torque || session.phase() == Phase.DO || session.phase() == Phase.CHECK;
    if (now && BESIDES.containsKey(at) && once("besides " + at)) {
      return BESIDES.get(at);
    }
    return List.of(WalkThrough.answer(session));
  }

  private boolean once(String what) {
    return !said.contains(what) && said.add(what);
  }

  private void say(String phrase) {
    Intent intent =
        Interpreter.interpret(RecognisedPhrase.typed(phrase), Decider.heard(session), 0);
    String name = intent.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    decide(intent, Optional.of(new Recorded.Heard(phrase, name, 0.93, "spoken")));
  }

  private void decide(Intent intent, Optional<Recorded.Heard> heard) {
    apply(Decider.decide(session, intent, now()), heard);
  }

  private Moment now() {
    long second = (long) PACE_SECONDS * log.size();
    return new Moment(START.plusSeconds(second), 1000 * second);
  }

  private void apply(Decision decision, Optional<Recorded.Heard> heard) {
    Recorded recorded =
        new Recorded(log.size() + 1L, now(), heard, decision.events(), decision.reply().text());
    log.add(recorded);
    session = session.after(recorded);
  }
}
