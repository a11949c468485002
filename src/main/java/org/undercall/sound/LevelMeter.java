package org.undercall.sound;

/**
 * Measures how loud sound is. A constant offset, as a cheap microphone or a bad ground can give, is
 * not heard and counts for nothing: of each frame its mean is taken away first.
 */
public final class LevelMeter {
  /** The level of digital silence, in dBFS. */
  public static final double SILENCE = -120;

  private static final double FULL = 32_768;

  private long samples;
  private long clipped;
  private double squares;
  private int peak;

  /** Takes a frame into the measure. */
  public void add(Frame frame) {
    double sum = 0;
    for (int i = 0; i < frame.samples(); i++) {
      int value = frame.sample(i);
      int size = Math.abs(value);
      sum += value;
      squares += (double) value * value;
      peak = Math.max(peak, size);
      clipped += size >= 32_767 ? 1 : 0;
    }
    samples += frame.samples();
    squares = Math.max(0, squares - sum * sum / Math.max(1, frame.samples()));
  }

  /** The level of all frames so far. */
  public Level level() {
    if (samples == 0) {
      return new Level(SILENCE, SILENCE, 0);
    }
    return new Level(
        decibels(Math.sqrt(squares / samples)), decibels(peak), (double) clipped / samples);
  }

  private static double decibels(double amplitude) {
    return amplitude == 0 ? SILENCE : 20 * Math.log10(amplitude / FULL);
  }
}
