package org.undercall.session;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.decision.CutValue;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.listen.PatientEar;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Journal;
import org.undercall.port.Signal;
import org.undercall.port.Time;
import org.undercall.port.Voice;

/**
 * The only loop: hear, decide, record, apply, and only then speak. One thread runs it and owns the
 * session.
 */
public final class SessionLoop {
  /** The quiet before the first reminder, if nothing else is set. */
  public static final Duration REMIND_AFTER = Duration.ofMinutes(10);

  private static final long PATIENCE_MILLIS = 60_000;

  /** How long to leave an act of its own alone that could not be recorded. */
  private static final long RETRY_MILLIS = 10_000;

  private final Ear ear;
  private final Voice voice;
  private final Journal journal;
  private final PhraseClips clips;
  private final Time time;
  private final Duration remindAfter;
  private final ClockWatch clocks;
  private final Display display;
  private Session session;
  private long seq;
  private long retryAt = Long.MIN_VALUE;

  /**
   * Prepares a loop.
   *
   * @param session the session as the journal's earlier decisions left it
   * @param ports where phrases come from, replies go, decisions are kept and time is told
   * @param recorded how many decisions the journal holds already
   */
  public SessionLoop(Session session, Ports ports, long recorded) {
    this(session, ports, recorded, REMIND_AFTER);
  }

  /**
   * Prepares a loop that reminds after another time.
   *
   * @param remindAfter the quiet before the first reminder, doubled before each further one; zero
   *     for no reminders
   */
  public SessionLoop(Session session, Ports ports, long recorded, Duration remindAfter) {
    this.session = session;
    this.ear =
        new PatientEar(
            ports.ear(),
            said -> CutValue.mayGoOn(this.session, said),
            (first, whole) -> CutValue.isOne(this.session, first, whole));
    this.voice = ports.voice();
    this.journal = ports.journal();
    this.clips = new PhraseClips(journal.clips());
    this.time = ports.time();
    this.display = ports.display();
    this.seq = recorded;
    this.remindAfter = remindAfter;
    this.clocks = new ClockWatch(time.now());
  }

  /** What the loop is connected to. */
  public record Ports(Ear ear, Voice voice, Journal journal, Time time, Display display) {
    /** Without a display. */
    public Ports(Ear ear, Voice voice, Journal journal, Time time) {
      this(ear, voice, journal, time, Display.NONE);
    }
  }

  /**
   * Makes the first decision and goes on until the session ends or the input does.
   *
   * @param first the decision that begins the session or takes it up again
   * @return the session as it was left
   * @throws Fault if not even the first decision can be recorded
   */
  public Session run(Decision first) throws Fault {
    record(first, Optional.empty());
    say(first.reply());
    lookAtClocks(0);
    try {
      while (session.phase() != Phase.ENDED) {
        listen();
      }
    } catch (Ear.EndOfInput e) {
      lookAtClocks(PATIENCE_MILLIS);
    }
    return session;
  }

  private void listen() throws Ear.EndOfInput {
    Set<IntentKind> allowed = Decider.heard(session);
    long patience = patience();
    Optional<Heard> next = ear.next(allowed, patience);
    lookAtClocks(patience);
    if (next.isPresent()) {
      Heard heard = next.get();
      Intent intent = Interpreter.interpret(heard.phrase(), allowed, Interpreter.LEAST_CONFIDENCE);
      decide(intent instanceof Intent.Unclear u ? u.at(heard.levels()) : intent, next);
    } else {
      remind();
    }
  }

  /** Deals with a clock that was set, then with every timer whose time has come. */
  private void lookAtClocks(long patience) {
    Moment now = time.now();
    Optional<Intent> jump = clocks.look(now, patience);
    if (jump.isEmpty() || own(jump.get(), now)) {
      clocks.seen(now);
      boolean due = session.nextTimer().filter(t -> !t.isAfter(now.wall().toInstant())).isPresent();
      if (due) {
        own(new Intent.Plain(IntentKind.TIMER_ENDED), now);
      }
    }
  }

  /** Reminds the technician if nothing was heard or said for long. */
  private void remind() {
    Moment now = time.now();
    Optional<Long> next = nextReminder();
    if (next.isPresent() && next.get() <= now.monotonicMillis()) {
      own(new Intent.NothingHeard(now.monotonicMillis() - session.quietSince()), now);
    }
  }

  private Optional<Long> nextReminder() {
    return remindAfter.isZero() ? Optional.empty() : session.nextReminder(remindAfter.toMillis());
  }

  /** The loop's own act; if it cannot be recorded, it is left alone for a while. */
  private boolean own(Intent intent, Moment now) {
    if (now.monotonicMillis() < retryAt) {
      return false;
    }
    boolean recorded = decide(intent, Optional.empty());
    retryAt = recorded ? Long.MIN_VALUE : now.monotonicMillis() + RETRY_MILLIS;
    return recorded;
  }

  /** How long to listen until something of the loop's own is due. */
  private long patience() {
    Moment now = time.now();
    long wall = now.wall().toInstant().toEpochMilli();
    long timer = session.nextTimer().map(t -> t.toEpochMilli() - wall).orElse(PATIENCE_MILLIS);
    long reminder = nextReminder().map(at -> at - now.monotonicMillis()).orElse(PATIENCE_MILLIS);
    long retry = retryAt == Long.MIN_VALUE ? 0 : retryAt - now.monotonicMillis();
    long next = Math.max(retry, Math.min(timer, reminder));
    return Math.max(1, Math.min(PATIENCE_MILLIS, next));
  }

  /** Decides and carries out; says so if it could not be recorded. */
  private boolean decide(Intent intent, Optional<Heard> heard) {
    Decision decision = Decider.decide(session, intent, time.now());
    Optional<Recorded.Heard> kept = heard.map(h -> clips.keep(seq + 1, h, intent, decision));
    try {
      record(decision, kept);
    } catch (Fault e) {
      clips.discard(kept);
      say(Refuse.cannotRecord());
      return false;
    }
    heard.flatMap(h -> signal(decision)).ifPresent(voice::signal);
    say(decision.reply());
    return true;
  }

  /** The tone before a reply; none for what is left alone. */
  private static Optional<Signal> signal(Decision decision) {
    return switch (decision.outcome()) {
      case REFUSED -> Optional.of(Signal.NOT_ACCEPTED);
      case IGNORED -> Optional.empty();
      default -> Optional.of(decision.isAskedAgain() ? Signal.NOT_ACCEPTED : Signal.HEARD);
    };
  }

  private void record(Decision decision, Optional<Recorded.Heard> heard) throws Fault {
    String said = decision.reply().text();
    Recorded recorded = new Recorded(seq + 1, time.now(), heard, decision.events(), said);
    journal.append(recorded);
    seq++;
    session = session.after(recorded);
    display.recorded(session, recorded);
  }

  private void say(Reply reply) {
    if (!reply.sentences().isEmpty()) {
      display.said(reply.text(), time.now());
      voice.say(reply.text());
      ear.forget();
    }
  }
}
