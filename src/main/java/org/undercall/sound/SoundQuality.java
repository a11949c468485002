package org.undercall.sound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How good the sound of a phrase is.
 *
 * @param decibels from the quiet parts to the loud ones: about the ratio of speech to noise
 * @param narrow whether it holds next to nothing above 4.5 kHz, as over a narrow radio link
 */
public record SoundQuality(double decibels, boolean narrow) {
  private static final double LOUD_SHARE = 0.95;
  private static final double QUIET_SHARE = 0.15;

  /** The quietest a frame counts, about the last bit: -90 dB of full scale. */
  private static final double FLOOR = -90;

  /** Below this the loudest high part against the loudest whole is next to nothing. */
  private static final double NARROW_DECIBELS = -50;

  private static final double CUT_HERTZ = 4_500;
  private static final int TAPS = 101;
  private static final double[] HIGH_PASS = highPass();

  /**
   * The quality of a phrase with the sound before and after it.
   *
   * @param frames in order; at least one
   */
  public static SoundQuality of(List<Frame> frames) {
    List<Double> levels = new ArrayList<>();
    double high = FLOOR;
    for (Frame frame : frames) {
      LevelMeter meter = new LevelMeter();
      meter.add(frame);
      levels.add(Math.max(FLOOR, meter.level().rms()));
      high = Math.max(high, decibels(filtered(frame)));
    }
    Collections.sort(levels);
    double loudest = levels.get(levels.size() - 1);
    return new SoundQuality(
        at(levels, LOUD_SHARE) - at(levels, QUIET_SHARE), high - loudest < NARROW_DECIBELS);
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }

  private static double decibels(double[] samples) {
    double sum = 0;
    for (double sample : samples) {
      sum += sample * sample;
    }
    double mean = samples.length == 0 ? 0 : sum / samples.length;
    return Math.max(FLOOR, 10 * Math.log10(Math.max(mean, 1e-12)));
  }

  /** The high part, without the ends that the filter does not reach. */
  private static double[] filtered(Frame frame) {
    double[] high = new double[Math.max(0, frame.samples() - TAPS + 1)];
    for (int i = 0; i < high.length; i++) {
      for (int tap = 0; tap < TAPS; tap++) {
        high[i] += HIGH_PASS[tap] * frame.sample(i + tap) / 32_768;
      }
    }
    return high;
  }

  /** A windowed-sinc high pass (Blackman window), the textbook design. */
  private static double[] highPass() {
    double[] taps = new double[TAPS];
    int middle = TAPS / 2;
    double cut = CUT_HERTZ / Frames.RATE;
    for (int i = 0; i < TAPS; i++) {
      double x = i - middle;
      double low = x == 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * x) / (Math.PI * x);
      double phase = 2 * Math.PI * i / (TAPS - 1);
      double window = 0.42 - 0.5 * Math.cos(phase) + 0.08 * Math.cos(2 * phase);
      taps[i] = (x == 0 ? 1 : 0) - low * window;
    }
    return taps;
  }
}
