package org.undercall.listen;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.RecognisedPhrase.Word;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Tells whether something was said around or between the words of a phrase that are no words of it.
 * A list of words hides a word that is not on it, but not the time that it took.
 *
 * <p>Found by measuring: of true phrases of voices that do not pause, none had such speech in
 * quiet, and nearly all phrases with a word put into them had.
 */
final class UnheardSpeech {
  /** Levels are taken over so many samples: 10 ms. */
  private static final int SAMPLES = Frames.RATE / 100;

  private static final double SECONDS = 0.01;

  /** The quietest that counts, in decibels of full scale. */
  private static final double FLOOR = -75;

  /** How far from the words others still speak against them, and how near they blur. */
  private static final double REACH = 0.35;

  private static final double BLUR = 0.03;

  /** The shortest time of speech before, after or between words. */
  private static final double LEAST_AROUND = 0.1;

  private static final double LEAST_BETWEEN = 0.1;

  /** How far, of the way from the noise to the words, speech stands at least. */
  private static final double SHARE = 0.5;

  /** Where in a stretch its level is read: clicks are shorter. */
  private static final double MOST_OF_IT = 0.7;

  private static final double NOISE = 0.1;

  /** What is so far below the words is breath or echo, in decibels. */
  private static final double BREATH = 22;

  private final double[] levels;
  private final double start;

  private UnheardSpeech(List<Frame> sound) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    sound.forEach(frame -> all.writeBytes(frame.sound()));
    byte[] bytes = all.toByteArray();
    levels =
        IntStream.range(0, bytes.length / (2 * SAMPLES))
            .mapToDouble(i -> level(bytes, i * SAMPLES))
            .toArray();
    start = sound.isEmpty() ? 0 : (double) sound.get(0).firstSample() / Frames.RATE;
  }

  /**
   * Whether there is speech that the words do not explain.
   *
   * @param sound with the phrase in it, without a gap
   * @param noisy whether there is noise: then only what lies between the words is looked at
   */
  static boolean around(List<Frame> sound, RecognisedPhrase phrase, boolean noisy) {
    return new UnheardSpeech(sound).isAround(phrase.words(), noisy);
  }

  private boolean isAround(List<Word> words, boolean noisy) {
    List<Double> spoken = new ArrayList<>();
    words.forEach(word -> spoken.addAll(between(word.start(), word.end())));
    Collections.sort(spoken);
    double noise = at(between(start, start + SECONDS * levels.length), NOISE);
    double speech = at(spoken, MOST_OF_IT);
    double needed = Math.max(noise + SHARE * (speech - noise), speech - BREATH);
    for (int i = 1; i < words.size(); i++) {
      double from = words.get(i - 1).end();
      double to = words.get(i).start();
      if (to - from > BLUR && isLoud(from, to, LEAST_BETWEEN, needed)) {
        return true;
      }
    }
    double first = words.get(0).start();
    double last = words.get(words.size() - 1).end();
    return !noisy
        && (isLoud(first - REACH, first - BLUR, LEAST_AROUND, needed)
            || isLoud(last + BLUR, last + REACH, LEAST_AROUND, needed));
  }

  private boolean isLoud(double from, double to, double least, double needed) {
    List<Double> there = between(from, to);
    return there.size() * SECONDS >= least && at(there, MOST_OF_IT) >= needed;
  }

  private List<Double> between(double from, double to) {
    int first = Math.max(0, (int) Math.round((from - start) / SECONDS));
    int end = Math.min(levels.length, (int) Math.round((to - start) / SECONDS));
    List<Double> there = new ArrayList<>();
    for (int i = first; i < end; i++) {
      there.add(levels[i]);
    }
    Collections.sort(there);
    return there;
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? Double.NEGATIVE_INFINITY
        : sorted.get((int) Math.min(sorted.size() - 1L, (long) (share * sorted.size())));
  }

  private static double level(byte[] sound, int from) {
    double sum = 0;
    for (int i = from; i < from + SAMPLES; i++) {
      double sample = (short) ((sound[2 * i] & 0xff) | (sound[2 * i + 1] << 8)) / 32768.0;
      sum += sample * sample;
    }
    return Math.max(FLOOR, 10 * Math.log10(Math.max(sum / SAMPLES, 1e-12)));
  }
}
