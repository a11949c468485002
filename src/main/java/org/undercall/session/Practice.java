package org.undercall.session;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Journal;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.text.ProgramVersion;

/**
 * A rehearsal of which nothing is kept: the loop of real work, with typed phrases and without a
 * log. It runs on a thread of its own; any thread may use what is public.
 */
public final class Practice implements AutoCloseable {
  private static final long ANSWER_MILLIS = 5000;
  private static final int MOST_LINES = 10_000;

  private final BlockingQueue<Optional<String>> phrases = new LinkedBlockingQueue<>();
  private final List<Line> lines = new ArrayList<>();
  private boolean waits;
  private boolean ended;

  private Practice() {}

  /**
   * Something that was typed or said.
   *
   * @param typed whether it was typed; else the program said it
   * @param ref the step at hand when it was said; empty before the first
   */
  public record Line(boolean typed, String words, String ref) {}

  /** Begins at the beginning of a procedure. */
  public static Practice of(Procedure procedure) {
    Practice practice = new Practice();
    Thread thread = new Thread(() -> practice.run(procedure), "rehearsal");
    thread.setDaemon(true);
    thread.start();
    practice.await();
    return practice;
  }

  private void run(Procedure procedure) {
    Shown shown = new Shown();
    Session session = Session.start(Walk.of(procedure));
    SessionEvent.SessionStarted started =
        new SessionEvent.SessionStarted(
                procedure.about().title(),
                procedure.about().revision(),
                "",
                ProgramVersion.TEXT,
                Job.NOT_GIVEN)
            .with(Occasion.REHEARSAL);
    Journal nowhere = decision -> {};
    SessionLoop.Ports ports =
        new SessionLoop.Ports(new Typed(), shown, nowhere, Time.ofMachine(), shown);
    try {
      new SessionLoop(session, ports, 0, Duration.ZERO)
          .run(Decider.begin(session, started, Optional.empty()));
    } catch (Fault e) {
      throw new IllegalStateException("nothing is recorded", e);
    } finally {
      end();
    }
  }

  private synchronized void end() {
    ended = true;
    notifyAll();
  }

  private synchronized void add(Line line) {
    if (lines.size() < MOST_LINES) {
      lines.add(line);
    }
  }

  private synchronized void waiting(boolean now) {
    waits = now;
    notifyAll();
  }

  /** Says a typed phrase, and returns when it was answered or is waited for longer. */
  public void say(String phrase) {
    synchronized (this) {
      waits = false;
      lines.add(new Line(true, phrase, ""));
    }
    phrases.add(Optional.of(phrase));
    await();
  }

  private synchronized void await() {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(ANSWER_MILLIS);
    try {
      for (long left = ANSWER_MILLIS; !waits && !ended && left > 0; ) {
        wait(left);
        left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** What was typed and said, from a line on, counted from 0. */
  public synchronized List<Line> from(int first) {
    return List.copyOf(lines.subList(Math.min(Math.max(0, first), lines.size()), lines.size()));
  }

  /** Whether it has come to its end. */
  public synchronized boolean ended() {
    return ended;
  }

  @Override
  public void close() {
    phrases.add(Optional.empty());
  }

  /** Hands over the typed phrases. */
  private final class Typed implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
      try {
        waiting(phrases.isEmpty());
        Optional<String> phrase = phrases.poll(patienceMillis, TimeUnit.MILLISECONDS);
        if (phrase == null) {
          return Optional.empty();
        }
        waiting(false);
        String words = phrase.orElseThrow(EndOfInput::new);
        return Optional.of(new Heard(RecognisedPhrase.typed(words), Heard.How.TYPED))
            .filter(heard -> !heard.phrase().words().isEmpty());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new EndOfInput();
      }
    }

    @Override
    public void close() {}
  }

  /** Keeps what is said, with the step at hand. */
  private final class Shown implements Voice, Display {
    private String ref = "";

    @Override
    public void say(String words) {
      add(new Line(false, words, ref));
    }

    @Override
    public void earlier(Session session, List<Recorded> decisions) {}

    @Override
    public void recorded(Session session, Recorded decision) {
      ref = session.place().ref().id();
    }

    @Override
    public void said(String words, Moment at) {}

    @Override
    public void close() {}
  }
}
