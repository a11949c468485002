package org.undercall.hearing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.undercall.sound.Frames;

/**
 * Something said, with the silence around it cut off.
 *
 * @param sound from the first to the last loud block, with a short margin
 * @param activeRms root mean square over the loud blocks alone
 */
record Speech(Sound sound, double activeRms) {
  /** 10 ms. */
  private static final int BLOCK = Frames.RATE / 100;

  /** A block counts as loud down to 30 dB below the loudest one. */
  private static final double LEAST_OF_PEAK = 0.0316;

  /** A block counts as loud from 6 dB above the quietest tenth of the blocks. */
  private static final double LEAST_OF_FLOOR = 2;

  /** The margin kept before the first loud block: 20 ms. */
  private static final int BEFORE = 2 * BLOCK;

  /** The margin kept after the last loud block: 40 ms. */
  private static final int AFTER = 4 * BLOCK;

  /** Loud blocks this far apart still belong together: 250 ms, more than a stop consonant holds. */
  private static final int LONGEST_GAP = 25;

  /** Finds the words in a recording: everything from the first loud block to the last. */
  static Speech in(Sound recording) {
    double[] loudness = loudness(recording);
    return cut(recording, loudness, loud(loudness));
  }

  /**
   * Finds one word in a recording: what holds together around the loudest block, no click apart.
   */
  static Speech word(Sound recording) {
    double[] loudness = loudness(recording);
    List<Integer> loud = loud(loudness);
    List<Integer> best = List.of();
    double most = -1;
    int from = 0;
    for (int i = 1; i <= loud.size(); i++) {
      if (i == loud.size() || loud.get(i) - loud.get(i - 1) > LONGEST_GAP) {
        List<Integer> run = loud.subList(from, i);
        double power = power(loudness, run);
        best = power > most ? run : best;
        most = Math.max(most, power);
        from = i;
      }
    }
    return cut(recording, loudness, best);
  }

  private static Speech cut(Sound recording, double[] loudness, List<Integer> loud) {
    if (loud.isEmpty()) {
      return new Speech(recording, 0);
    }
    int first = loud.get(0);
    int last = loud.get(loud.size() - 1);
    Sound cut = recording.part(first * BLOCK - BEFORE, (last + 1) * BLOCK + AFTER);
    return new Speech(cut, Math.sqrt(power(loudness, loud) / loud.size()));
  }

  private static List<Integer> loud(double[] loudness) {
    double limit = limit(loudness);
    return IntStream.range(0, loudness.length).filter(i -> loudness[i] >= limit).boxed().toList();
  }

  private static double power(double[] loudness, List<Integer> blocks) {
    return blocks.stream().mapToDouble(i -> loudness[i] * loudness[i]).sum();
  }

  private static double limit(double[] loudness) {
    double[] sorted = loudness.clone();
    Arrays.sort(sorted);
    double peak = sorted.length == 0 ? 0 : sorted[sorted.length - 1];
    double floor = sorted.length == 0 ? 0 : sorted[sorted.length / 10];
    double limit = Math.max(Math.max(floor * LEAST_OF_FLOOR, peak * LEAST_OF_PEAK), 1);
    return Math.min(limit, peak);
  }

  private static double[] loudness(Sound sound) {
    double[] loudness = new double[sound.length() / BLOCK];
    for (int i = 0; i < loudness.length; i++) {
      loudness[i] = rms(sound, i * BLOCK, (i + 1) * BLOCK);
    }
    return loudness;
  }

  /** Root mean square of some samples. */
  static double rms(Sound sound, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += (double) sound.samples()[i] * sound.samples()[i];
    }
    return to > from ? Math.sqrt(sum / (to - from)) : 0;
  }
}
