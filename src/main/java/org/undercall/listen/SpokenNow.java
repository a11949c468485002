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
  private long soundsUntil = Long.MIN_VALUE;

  /** Words may come so much earlier than their letters tell, and by this factor. */
  private static final long EARLY_MILLIS = 400;

  private static final double FASTER = 1.15;

  private static final class Sentence {
    private final List<String> all;
    private final int millis;
    private final long from;
    private Set<String> words;
    private long to = Long.MAX_VALUE;

    Sentence(List<String> all, int millis, long from) {
      this.all = all;
      this.words = Set.copyOf(all);
      this.millis = millis;
      this.from = from;
    }

    /** Cut short: what may have been said of it, by the letters. */
    void cut(long now) {
      double letters = all.stream().mapToInt(String::length).sum();
      double said = letters * (FASTER * (now - from) + EARLY_MILLIS) / Math.max(1, millis);
      int count = 0;
      for (double before = 0; count < all.size() && before <= said; count++) {
        before += all.get(count).length();
      }
      words = Set.copyOf(all.subList(0, count));
    }
  }

  SpokenNow(LongSupplier nowMillis) {
    this.nowMillis = nowMillis;
  }

  @Override
  public synchronized void begins(String sentence, int millis) {
    end(BUFFER_MILLIS);
    // The loudspeaker is given it before the last one has sounded.
    long sounds = Math.max(nowMillis.getAsLong(), soundsUntil);
    soundsUntil = sounds + millis;
    String plain = sentence.toLowerCase(Locale.ROOT).replaceAll("[^a-z' ]+", " ").strip();
    List<String> words = List.of(plain.split("\\s+", -1));
    sentences.add(new Sentence(words, millis, sounds));
    if (sentences.size() > MOST) {
      sentences.remove();
    }
  }

  @Override
  public void plays(byte[] samples, int offset, int length, int rate) {}

  @Override
  public synchronized void ends(boolean cutShort) {
    Sentence last = sentences.peekLast();
    if (cutShort && last != null && last.to == Long.MAX_VALUE) {
      last.cut(nowMillis.getAsLong());
    }
    soundsUntil = Long.MIN_VALUE;
    end(0);
  }

  private void end(long later) {
    Sentence last = sentences.peekLast();
    if (last != null && last.to == Long.MAX_VALUE) {
      last.to = nowMillis.getAsLong() + later;
    }
  }

  /** The words of all sentences so far that are still known. */
  synchronized Set<String> all() {
    Set<String> words = new HashSet<>();
    sentences.forEach(sentence -> words.addAll(sentence.words));
    return words;
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
