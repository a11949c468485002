package org.undercall.sound;

/**
 * A rising tone that is found again in what a microphone heard, also in noise: by correlation, over
 * every place where it could begin.
 */
public final class Chirp {
  private static final double LOW = 500;
  private static final double HIGH = 3_000;
  private static final double SECONDS = 0.4;
  private static final double LOUDNESS = 0.25;

  /** Noise alone stays below half of this. */
  private static final double LEAST_LIKENESS = 0.15;

  private Chirp() {}

  /**
   * The tone.
   *
   * @param rate samples a second
   */
  public static Pcm at(int rate) {
    short[] samples = new short[(int) (SECONDS * rate)];
    for (int i = 0; i < samples.length; i++) {
      double t = (double) i / rate;
      double turns = LOW * t + (HIGH - LOW) * t * t / (2 * SECONDS);
      double edge = Math.sin(Math.PI * t / SECONDS);
      samples[i] =
          (short) Math.round(LOUDNESS * Short.MAX_VALUE * edge * Math.sin(2 * Math.PI * turns));
    }
    return Pcm.of(rate, samples);
  }

  /** Whether it is in this sound. */
  public static boolean isIn(Pcm heard) {
    Pcm chirp = at(heard.rate());
    double power = 0;
    for (int i = 0; i < chirp.length(); i++) {
      power += (double) chirp.at(i) * chirp.at(i);
    }
    for (int from = 0; from + chirp.length() <= heard.length(); from++) {
      double like = 0;
      double there = 1;
      for (int i = 0; i < chirp.length(); i++) {
        double sample = heard.at(from + i);
        like += sample * chirp.at(i);
        there += sample * sample;
      }
      if (Math.abs(like) >= LEAST_LIKENESS * Math.sqrt(power * there)) {
        return true;
      }
    }
    return false;
  }
}
