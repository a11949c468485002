package org.undercall.core.board;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;

/** Plays phrases on a session, a second apart, and shows its board. */
public final class BoardPlay {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private final List<Recorded> recorded = new ArrayList<>();
  private Session session;
  private Happened happened = Happened.NOTHING;
  private Devices devices = Devices.WELL;
  private String said = "";

  private BoardPlay(Session session) {
    this.session = session;
    apply(
        Decider.begin(session, new SessionEvent.SessionStarted("", "", "", "")), Optional.empty());
  }

  /** A session of a procedure file that has just begun. */
  public static BoardPlay of(Path procedure) throws Fault {
    return of(ProcedureFile.load(procedure).procedure());
  }

  /** A session of a procedure that has just begun. */
  public static BoardPlay of(Procedure procedure) {
    return new BoardPlay(Session.start(Walk.of(procedure)));
  }

  /** Says phrases. */
  public BoardPlay says(String... phrases) {
    return hears("spoken", phrases);
  }

  /** Types phrases. */
  public BoardPlay types(String... phrases) {
    return hears("typed", phrases);
  }

  private BoardPlay hears(String how, String... phrases) {
    for (String words : phrases) {
      RecognisedPhrase phrase = RecognisedPhrase.typed(words);
      Intent intent = Interpreter.interpret(phrase, Decider.heard(session), 0.6);
      Decision decision = Decider.decide(session, intent, now());
      apply(decision, Optional.of(new Recorded.Heard(phrase.text(), intent.kind().name(), 1, how)));
    }
    return this;
  }

  /** Tells news of a device. */
  public BoardPlay tells(DeviceNews news) {
    devices = devices.after(news);
    return this;
  }

  /** Looks at the timers. */
  public BoardPlay looksAtTimers() {
    apply(
        Decider.decide(session, new Intent.Plain(IntentKind.TIMER_ENDED), now()), Optional.empty());
    return this;
  }

  /** What the session waits for. */
  public Phase phase() {
    return session.phase();
  }

  /** Sets the wall clock. */
  public BoardPlay sets(long millis) {
    apply(Decider.decide(session, new Intent.ClockJumped(millis, 0), now()), Optional.empty());
    return this;
  }

  private void apply(Decision decision, Optional<Recorded.Heard> heard) {
    String reply = decision.reply().text();
    Recorded made = new Recorded(recorded.size() + 1L, now(), heard, decision.events(), reply);
    Session next = session.after(made);
    happened = happened.after(made, session, next);
    session = next;
    devices = heard.isPresent() ? devices.seen() : devices;
    said = reply.isEmpty() ? said : reply;
    recorded.add(made);
  }

  private Moment now() {
    return new Moment(START.plusSeconds(recorded.size()), recorded.size() * 1000L);
  }

  /** What was recorded. */
  public List<Recorded> recorded() {
    return List.copyOf(recorded);
  }

  /** What the board shows now. */
  public Board board() {
    return Board.of(session, happened, devices, said, now());
  }
}
