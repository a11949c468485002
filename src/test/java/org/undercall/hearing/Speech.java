package org.undercall.hearing;

import java.util.Arrays;
import org.undercall.adapter.microphone.Frames;

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

  /** Finds the speech in a recording. */
  static Speech in(Sound recording) {
    double[] loudness = loudness(recording);
    double limit = limit(loudness);
    int first = -1;
    int last = -1;
    double power = 0;
    int loud = 0;
    for (int i = 0; i < loudness.length; i++) {
      if (loudness[i] >= limit) {
        first = first < 0 ? i : first;
        last = i;
        power += loudness[i] * loudness[i];
        loud++;
      }
    }
    if (loud == 0) {
      return new Speech(recording, 0);
    }
    Sound cut = recording.part(first * BLOCK - BEFORE, (last + 1) * BLOCK + AFTER);
    return new Speech(cut, Math.sqrt(power / loud));
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
