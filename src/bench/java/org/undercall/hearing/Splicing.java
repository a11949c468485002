package org.undercall.hearing;

import java.util.List;
import java.util.Random;

/** Joins single words of one speaker to a phrase. */
final class Splicing {
  /** The pause between two words, in milliseconds. */
  private static final int SHORTEST = 80;

  private static final int LONGEST = 150;

  private Splicing() {}

  /** The words in a row, with a pause of 80 to 150 ms between each two. */
  static Speech spoken(List<Speech> words, Random random) {
    return spoken(words, random, words.size(), 0);
  }

  /** The same with a longer pause before one word, counted from 0. */
  static Speech spoken(List<Speech> words, Random random, int late, int pauseMillis) {
    Sound[] parts = new Sound[2 * words.size() - 1];
    double power = 0;
    double total = 0;
    for (int i = 0; i < words.size(); i++) {
      Speech word = words.get(i);
      parts[2 * i] = word.sound();
      power += word.activeRms() * word.activeRms() * word.sound().length();
      total += word.sound().length();
      if (i > 0) {
        int usual = SHORTEST + random.nextInt(LONGEST - SHORTEST + 1);
        parts[2 * i - 1] = Sound.silence(i == late ? pauseMillis : usual);
      }
    }
    return new Speech(Sound.joined(parts), Math.sqrt(power / total));
  }
}
