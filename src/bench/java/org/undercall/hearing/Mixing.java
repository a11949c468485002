package org.undercall.hearing;

import java.util.Random;

/** Puts speech into a clip as a microphone would give it: silence or noise before, in and after. */
final class Mixing {
  /** Before the first word: 0.3 s. */
  static final Sound LEAD = Sound.silence(300);

  /** After the last word, longer than the recogniser needs to notice the end: 1.5 s. */
  static final Sound TAIL = Sound.silence(1_500);

  private Mixing() {}

  /**
   * A clip and where the speech in it ends.
   *
   * @param endOfSpeech in samples
   */
  record Clip(Sound sound, int endOfSpeech) {}

  /** Speech in silence. */
  static Clip clean(Speech speech) {
    Sound sound = Sound.joined(LEAD, speech.sound(), TAIL);
    return new Clip(sound, LEAD.length() + speech.sound().length());
  }

  /**
   * Speech in noise from the beginning to the end of the clip.
   *
   * @param decibels the ratio of the speech's RMS over its active part to the noise's RMS over the
   *     clip
   * @param random chooses where the noise begins; it is repeated if it is too short
   */
  static Clip noisy(Speech speech, Sound noise, double decibels, Random random) {
    Clip clean = clean(speech);
    int length = clean.sound().length();
    Sound bed = bed(noise, length, random);
    double noiseRms = Speech.rms(bed, 0, length);
    double gain = speech.activeRms() / Math.max(1, noiseRms) / Math.pow(10, decibels / 20);
    double[] mixed = new double[length];
    double peak = 0;
    for (int i = 0; i < length; i++) {
      mixed[i] = clean.sound().samples()[i] + gain * bed.samples()[i];
      peak = Math.max(peak, Math.abs(mixed[i]));
    }
    double down = Math.min(1, Short.MAX_VALUE / Math.max(1, peak));
    short[] samples = new short[length];
    for (int i = 0; i < length; i++) {
      samples[i] = (short) Math.round(mixed[i] * down);
    }
    return new Clip(new Sound(samples), clean.endOfSpeech());
  }

  private static Sound bed(Sound noise, int length, Random random) {
    short[] samples = new short[length];
    int at = random.nextInt(noise.length());
    for (int i = 0; i < length; i++) {
      samples[i] = noise.samples()[(at + i) % noise.length()];
    }
    return new Sound(samples);
  }
}
