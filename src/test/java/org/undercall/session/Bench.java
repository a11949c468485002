package org.undercall.session;

import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Voice;

/** Stands in for the world around the loop, and keeps what happened in the order it happened. */
final class Bench {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  final List<String> happened = new ArrayList<>();
  final List<Recorded> recorded = new ArrayList<>();
  final List<Long> patience = new ArrayList<>();
  final List<Set<IntentKind>> allowed = new ArrayList<>();
  private final Queue<Turn> turns = new ArrayDeque<>();
  private Optional<Fault> broken = Optional.empty();
  private long millis;
  private long wallSet;

  /** The sound of the phrases to come; none if null. */
  byte[] sound;

  private java.time.ZoneOffset zone = START.getOffset();

  /** What comes next from the ear: a phrase or none, after some time, and what happens before. */
  private record Turn(Optional<Heard> phrase, long millis, Runnable before) {}

  /** The next phrase. */
  Bench hears(String phrase) {
    return hears(RecognisedPhrase.typed(phrase));
  }

  /** The next phrase, every word with a confidence. */
  Bench hears(String phrase, double confidence) {
    List<RecognisedPhrase.Word> words =
        RecognisedPhrase.typed(phrase).words().stream()
            .map(w -> new RecognisedPhrase.Word(w.text(), confidence, 0, 0))
            .toList();
    return hears(new RecognisedPhrase(words));
  }

  private Bench hears(RecognisedPhrase phrase) {
    Heard heard =
        new Heard(phrase, Heard.How.PRESSED, Optional.empty(), Optional.ofNullable(sound));
    turns.add(new Turn(Optional.of(heard), 0, () -> {}));
    return this;
  }

  /** Nothing is heard for a time. */
  Bench silence(long during) {
    turns.add(new Turn(Optional.empty(), during, () -> {}));
    return this;
  }

  /** From the next phrase on the journal fails. */
  Bench breaks(Fault fault) {
    turns.add(new Turn(Optional.empty(), 0, () -> broken = Optional.of(fault)));
    return this;
  }

  /** From the next phrase on the journal works again. */
  Bench works() {
    turns.add(new Turn(Optional.empty(), 0, () -> broken = Optional.empty()));
    return this;
  }

  /** Nothing is heard for a time, in which the wall clock is set. */
  Bench wallClockSet(long by, long during) {
    turns.add(new Turn(Optional.empty(), during, () -> wallSet += by));
    return this;
  }

  /** Nothing is heard for a time, in which summer time begins. */
  Bench summerTime(long during) {
    turns.add(new Turn(Optional.empty(), during, () -> zone = java.time.ZoneOffset.ofHours(2)));
    return this;
  }

  /** What the loop is connected to. */
  SessionLoop.Ports ports() {
    return new SessionLoop.Ports(new FakeEar(), new FakeVoice(), this::append, this::now);
  }

  private Moment now() {
    OffsetDateTime wall = START.plusNanos((millis + wallSet) * 1_000_000);
    return new Moment(wall.withOffsetSameInstant(zone), millis);
  }

  private void append(Recorded decision) throws Fault {
    if (broken.isPresent()) {
      happened.add("failed");
      throw broken.get();
    }
    recorded.add(decision);
    happened.add("recorded " + decision.said());
  }

  private final class FakeEar implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> now, long patienceMillis) throws EndOfInput {
      Turn turn = turns.poll();
      if (turn == null) {
        throw new EndOfInput();
      }
      allowed.add(now);
      patience.add(patienceMillis);
      turn.before().run();
      millis += turn.millis();
      return turn.phrase();
    }

    @Override
    public void forget() {
      happened.add("forgot");
    }

    @Override
    public void close() {}
  }

  private final class FakeVoice implements Voice {
    @Override
    public void say(String words) {
      happened.add("said " + words);
    }

    @Override
    public void close() {}
  }
}
