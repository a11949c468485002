package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Reply;
import org.undercall.core.review.Review;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** A bay in which a dialogue is played. Every decision is also watched for broken promises. */
final class Bay {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final double LEAST_CONFIDENCE = 0.6;

  private final Walk walk;
  private final Promises promises;
  private final List<SessionEvent> recorded = new ArrayList<>();
  private final TimerPromises timers;
  private final List<Recorded> log = new ArrayList<>();
  private List<SessionEvent> last = List.of();
  private Session session;
  private long seconds;
  private long wall;

  private Bay(Walk walk) {
    this.walk = walk;
    this.promises = new Promises(walk);
    this.timers = new TimerPromises(walk);
    this.session = Session.start(walk);
  }

  /** A bay in which the cautions wait to be understood. */
  static Bay briefing(Walk walk) {
    return new Bay(walk);
  }

  /** A bay in which the work has begun. */
  static Bay working(Walk walk) {
    Bay bay = new Bay(walk);
    bay.say("cautions understood");
    return bay;
  }

  /** A bay with two bushes a side, where the left side was confirmed at ride height. */
  static Bay atRideHeight() {
    return working(Jobs.twoBushesASide())
        .after(
            "350 millimeters",
            "that is correct",
            "wheels carry the car",
            "left side at ride height");
  }

  /**
   * Plays a dialogue line by line and compares it as a whole: {@code > } is said by the technician,
   * {@code < } is one sentence of the reply, {@code +30} lets seconds pass, {@code * restart} ends
   * the program and takes the work up again after an hour in which the clocks of this bay stand,
   * {@code * off 30} does so after 30 seconds that pass, {@code * set -30} sets the wall clock,
   * {@code * quiet 600} lets so long a quiet pass, {@code ~ } is said with a pause after each word.
   */
  Bay goes(String dialogue) {
    StringBuilder played = new StringBuilder();
    for (String line : dialogue.lines().toList()) {
      if (line.startsWith("<")) {
        continue;
      }
      played.append(line).append('\n');
      reply(line).forEach(sentence -> played.append("< ").append(sentence).append('\n'));
    }
    assertEquals(dialogue, played.toString());
    return this;
  }

  private List<String> reply(String line) {
    return switch (line.charAt(0)) {
      case '+' -> pass(Long.parseLong(line.substring(1)));
      case '~' -> hear(slow(line.substring(2)));
      case '*' -> act(List.of(line.substring(2).split(" ", -1)));
      default -> say(line.substring(2));
    };
  }

  /** Says a phrase with full confidence; gives the sentences of the reply. */
  List<String> say(String phrase) {
    return hear(RecognisedPhrase.typed(phrase));
  }

  /** Records what was given before the first word was said. */
  Bay given(SessionEvent... events) {
    promises.given(List.of(events));
    apply(new Decision(List.of(events), Reply.SILENCE, Outcome.ACCEPTED), false);
    return this;
  }

  /** Says phrases whose replies do not matter. */
  Bay after(String... phrases) {
    List.of(phrases).forEach(this::say);
    return this;
  }

  /** Says a phrase that is heard with a confidence. */
  List<String> mumble(String phrase, double confidence) {
    return hear(
        new RecognisedPhrase(
            RecognisedPhrase.typed(phrase).words().stream()
                .map(w -> new RecognisedPhrase.Word(w.text(), confidence, 0, 0))
                .toList()));
  }

  /** A phrase with a pause of a second after each word. */
  private static RecognisedPhrase slow(String phrase) {
    List<RecognisedPhrase.Word> words = new ArrayList<>();
    for (RecognisedPhrase.Word word : RecognisedPhrase.typed(phrase).words()) {
      double start = 1.5 * words.size();
      words.add(new RecognisedPhrase.Word(word.text(), 1, start, start + 0.5));
    }
    return new RecognisedPhrase(words);
  }

  /** Where the work stands. */
  Session session() {
    return session;
  }

  /** Something that is close to a phrase, heard at some levels. */
  List<String> unclear(Optional<SoundLevels> levels) {
    return decide(new Intent.Unclear(Intent.Unclear.Reason.NOT_A_PHRASE).at(levels));
  }

  private List<String> act(List<String> words) {
    long number = words.size() > 1 ? Long.parseLong(words.get(1)) : 0;
    return switch (words.get(0)) {
      case "restart" -> restart(3600);
      case "off" -> {
        wall += number;
        seconds += Math.max(0, number);
        wall -= Math.max(0, number);
        List<String> up = new ArrayList<>(restart(number));
        up.addAll(decide(new Intent.Plain(IntentKind.TIMER_ENDED)));
        yield up;
      }
      case "set" -> {
        wall += number;
        yield decide(new Intent.ClockJumped(1000 * number, Math.max(0, 1000 * number)));
      }
      case "quiet" -> {
        sleep(number);
        yield decide(new Intent.NothingHeard(1000 * number));
      }
      default -> throw new IllegalArgumentException(words.toString());
    };
  }

  /** The program ends and takes the work up from what was recorded. */
  List<String> restart(long secondsAway) {
    assertEquals(session, replayed(), "the state replayed");
    Decision up = Decider.takeUp(session, "test", Duration.ofSeconds(secondsAway));
    promises.restarted(up);
    return apply(up, false);
  }

  private Session replayed() {
    Session replayed = Session.start(walk);
    for (Recorded decision : log) {
      replayed = replayed.after(decision);
    }
    return replayed;
  }

  /** Lets seconds pass without the program noticing. */
  Bay sleep(long more) {
    seconds += more;
    return this;
  }

  /** Lets so long a quiet pass that the program reminds. */
  void quiet(long seconds) {
    act(List.of("quiet", String.valueOf(seconds)));
  }

  /** Lets seconds pass; the program looks at its timers then. */
  Bay passes(long more) {
    pass(more);
    return this;
  }

  private List<String> pass(long more) {
    sleep(more);
    return decide(new Intent.Plain(IntentKind.TIMER_ENDED));
  }

  private List<String> hear(RecognisedPhrase phrase) {
    return decide(Interpreter.interpret(phrase, Decider.heard(session), LEAST_CONFIDENCE));
  }

  private List<String> decide(Intent intent) {
    Decision decision = Decider.decide(session, intent, now());
    promises.watch(intent, decision);
    timers.watch(seconds * 1000, decision);
    return apply(decision, intent.kind().isHeard() || intent.kind() == IntentKind.UNCLEAR);
  }

  private Moment now() {
    return new Moment(START.plusSeconds(seconds + wall), seconds * 1000);
  }

  private List<String> apply(Decision decision, boolean heard) {
    last = decision.events();
    recorded.addAll(last);
    String said = decision.reply().text();
    Optional<Recorded.Heard> words =
        heard ? Optional.of(new Recorded.Heard("x", "x", 1, "typed")) : Optional.empty();
    log.add(new Recorded(log.size() + 1L, now(), words, last, said));
    session = session.after(log.get(log.size() - 1));
    return decision.reply().sentences();
  }

  /** What was recorded for the last phrase, by the names of the dictionary. */
  String last() {
    return last.stream().map(e -> EventKind.of(e).name()).collect(Collectors.joining(" "));
  }

  /** Every recorded event of a type, in order. */
  <E extends SessionEvent> List<E> recorded(Class<E> type) {
    return recorded.stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** What a review finds in everything recorded. */
  Review review() {
    return Review.of(walk, log);
  }

  /** What the session waits for. */
  Phase phase() {
    return session.phase();
  }

  /** The step at hand, such as {@code bush/left}. */
  String at() {
    return session.ref().toString();
  }

  /** When the next reminder is due, in seconds; empty if none is. */
  Optional<Long> reminder(long afterSeconds) {
    return session.nextReminder(1000 * afterSeconds).map(millis -> millis / 1000);
  }

  /** How a step stands. */
  StepState.Status status(String id, Side side) {
    return session.progress().states().get(walk.indexOf(new StepRef(id, side))).status();
  }

  /** Who works; empty if nobody named himself. */
  String technician() {
    return session.account().technician();
  }

  /** The names of the closed steps, in the order of the walk. */
  String closed() {
    return walk.places().stream()
        .map(Walk.Place::ref)
        .filter(ref -> status(ref.id(), ref.side()) == StepState.Status.CLOSED)
        .map(StepRef::toString)
        .collect(Collectors.joining(" "));
  }

  /** Says what is asked for, and lets a time pass that is waited for. */
  void carryOn() {
    if (phase() == Phase.WAITING && session.timers().runs(session.ref())) {
      passes(((Step.Wait) session.place().step()).time().toSeconds());
    } else {
      say(WalkThrough.answer(session));
    }
  }

  /** The value of the stage at hand, digit by digit. */
  String amount() {
    return session.stage().amount().toPlainString();
  }

  /** The number of a step by its name, such as {@code bush/left}. */
  int number(String name) {
    return 1 + walk.places().stream().map(p -> p.ref().toString()).toList().indexOf(name);
  }

  /** Plays a line of a dialogue whose reply does not matter. */
  void plays(String line) {
    reply(line);
  }
}
