package org.undercall.listen;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import org.undercall.sound.Playback;

/** Knows which sentence the voice said when. Any thread may ask it. */
final class SpokenNow implements Playback {
  /** A sentence still sounds so long after the next was given to the loudspeaker. */
  private static final long BUFFER_MILLIS = 300;

  /** As many as can lie in the sound of one phrase. */
  private static final int MOST = 16;

  private final Deque<Sentence> sentences = new ArrayDeque<>();
  private final LongSupplier nowMillis;

  private static final class Sentence {
    private final Set<String> words;
    private final long from;
    private long to = Long.MAX_VALUE;

    Sentence(Set<String> words, long from) {
      this.words = words;
      this.from = from;
    }
  }

  SpokenNow(LongSupplier nowMillis) {
    this.nowMillis = nowMillis;
  }

  @Override
  public synchronized void begins(String sentence) {
    end(BUFFER_MILLIS);
    String plain = sentence.toLowerCase(Locale.ROOT).replaceAll("[^a-z' ]+", " ").strip();
    sentences.add(new Sentence(Set.of(distinct(plain)), nowMillis.getAsLong()));
    if (sentences.size() > MOST) {
      sentences.remove();
    }
  }

  private static String[] distinct(String plain) {
    return new HashSet<>(List.of(plain.split("\\s+", -1))).toArray(new String[0]);
  }

  @Override
  public void plays(byte[] samples, int offset, int length, int rate) {}

  @Override
  public synchronized void ends(boolean cutShort) {
    end(0);
  }

  private void end(long later) {
    Sentence last = sentences.peekLast();
    if (last != null && last.to == Long.MAX_VALUE) {
      last.to = nowMillis.getAsLong() + later;
    }
  }

  /** The words that were said in that time; empty if the voice was silent. */
  synchronized Optional<Set<String>> during(long from, long to) {
    Set<String> words = new HashSet<>();
    sentences.stream()
        .filter(sentence -> sentence.from <= to && sentence.to > from)
        .forEach(sentence -> words.addAll(sentence.words));
    return words.isEmpty() ? Optional.empty() : Optional.of(words);
  }
}
