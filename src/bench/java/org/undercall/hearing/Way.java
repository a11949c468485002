package org.undercall.hearing;

import java.util.Random;
import org.undercall.sound.Frames;

/**
 * How sound gets from the loudspeaker to the microphone.
 *
 * @param room whether reflections come after the sound itself
 * @param changes whether the reflections are others from the middle of a prompt on
 */
record Way(String name, int delayMillis, boolean room, boolean changes) {

  /** The sound after its way. */
  double[] echo(Sound played) {
    double[] before = response(1);
    double[] after = changes ? response(2) : before;
    int delay = delayMillis * Frames.RATE / 1000;
    double[] echo = new double[played.length()];
    for (int i = 0; i < echo.length; i++) {
      double[] taps = i < echo.length / 2 ? before : after;
      double sum = 0;
      for (int k = 0; k < taps.length && i - delay - k >= 0; k++) {
        sum += taps[k] == 0 ? 0 : taps[k] * played.samples()[i - delay - k];
      }
      echo[i] = sum;
    }
    return echo;
  }

  /** One impulse, or that and reflections that fall by 60 dB in 0.25 s. */
  private double[] response(int seed) {
    if (!room) {
      return new double[] {1};
    }
    Random random = new Random(seed);
    double[] taps = new double[Frames.RATE / 5];
    taps[0] = 1;
    for (int k = 30 + random.nextInt(20); k < taps.length; k += 5 + random.nextInt(25)) {
      taps[k] = 0.5 * random.nextGaussian() * Math.pow(10, -3.0 * k / (0.25 * Frames.RATE));
    }
    return taps;
  }
}
