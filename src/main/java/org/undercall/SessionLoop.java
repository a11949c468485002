package org.undercall;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.files.LogFault;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;

/**
 * The only loop: hear, decide, record, apply, and only then speak. One thread runs it and owns the
 * session.
 */
public final class SessionLoop {
  /** How sure the recogniser must be of every word of a phrase, from 0 to 1. */
  public static final double LEAST_CONFIDENCE = 0.6;

  private static final long PATIENCE_MILLIS = 60_000;

  /** How long to leave a timer alone whose end could not be recorded. */
  private static final long RETRY_MILLIS = 10_000;

  private final Ear ear;
  private final Voice voice;
  private final Journal journal;
  private final Time time;
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
    this.session = session;
    this.ear = ports.ear();
    this.voice = ports.voice();
    this.journal = ports.journal();
    this.time = ports.time();
    this.seq = recorded;
  }

  /** What the loop is connected to. */
  public record Ports(Ear ear, Voice voice, Journal journal, Time time) {}

  /**
   * Makes the first decision and goes on until the session ends or the input does.
   *
   * @param first the decision that begins the session or takes it up again
   * @return the session as it was left
   * @throws LogFault if not even the first decision can be recorded
   */
  public Session run(Decision first) throws LogFault {
    record(first, Optional.empty());
    say(first.reply());
    try {
      while (session.phase() != Phase.ENDED) {
        listen();
      }
    } catch (Ear.EndOfInput e) {
      endTimers();
    }
    return session;
  }

  private void listen() throws Ear.EndOfInput {
    Set<IntentKind> allowed = Decider.heard(session);
    Optional<RecognisedPhrase> heard = ear.next(allowed, patience());
    endTimers();
    if (heard.isPresent()) {
      RecognisedPhrase phrase = heard.get();
      Intent intent = Interpreter.interpret(phrase, allowed, LEAST_CONFIDENCE);
      decide(intent, Optional.of(heard(phrase, intent)));
    }
  }

  private Recorded.Heard heard(RecognisedPhrase phrase, Intent intent) {
    String name = intent.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    double confidence = Math.round(phrase.confidence() * 100) / 100.0;
    return new Recorded.Heard(phrase.text(), name, confidence, ear.how());
  }

  /** Lets every timer end whose time has come. */
  private void endTimers() {
    Moment now = time.now();
    boolean due =
        session.nextTimer().filter(end -> !end.isAfter(now.wall().toInstant())).isPresent();
    if (due && now.monotonicMillis() >= retryAt) {
      boolean recorded = decide(new Intent.Plain(IntentKind.TIMER_ENDED), Optional.empty());
      retryAt = recorded ? Long.MIN_VALUE : now.monotonicMillis() + RETRY_MILLIS;
    }
  }

  private long patience() {
    Moment now = time.now();
    long retry = retryAt == Long.MIN_VALUE ? 0 : retryAt - now.monotonicMillis();
    return session
        .nextTimer()
        .map(due -> Math.max(retry, due.toEpochMilli() - now.wall().toInstant().toEpochMilli()))
        .map(millis -> Math.max(1, Math.min(PATIENCE_MILLIS, millis)))
        .orElse(PATIENCE_MILLIS);
  }

  /** Decides and carries out; says so if it could not be recorded. */
  private boolean decide(Intent intent, Optional<Recorded.Heard> heard) {
    Decision decision = Decider.decide(session, intent, time.now());
    try {
      record(decision, heard);
    } catch (LogFault e) {
      say(Refuse.cannotRecord());
      return false;
    }
    say(decision.reply());
    return true;
  }

  private void record(Decision decision, Optional<Recorded.Heard> heard) throws LogFault {
    String said = decision.reply().text();
    journal.append(new Recorded(seq + 1, time.now(), heard, decision.events(), said));
    seq++;
    session = session.after(decision.events());
  }

  private void say(Reply reply) {
    if (!reply.sentences().isEmpty()) {
      voice.say(reply.text());
      ear.forget();
    }
  }
}
