package org.undercall.sound;

import java.util.List;

/** How good the sound of a phrase is. */
public final class SoundQuality {
  private static final double LOUD_SHARE = 0.95;
  private static final double QUIET_SHARE = 0.15;

  /** The quietest a frame counts, about the last bit: -90 dB of full scale. */
  private static final double FLOOR = -90;

  private SoundQuality() {}

  /**
   * From the quiet parts of a phrase to the loud ones, in decibels: about the ratio of speech to
   * noise.
   *
   * @param frames with the sound before and after it, in order; at least one
   */
  public static double decibels(List<Frame> frames) {
    List<Double> levels = frames.stream().map(SoundQuality::level).sorted().toList();
    return at(levels, LOUD_SHARE) - at(levels, QUIET_SHARE);
  }

  private static double level(Frame frame) {
    LevelMeter meter = new LevelMeter();
    meter.add(frame);
    return Math.max(FLOOR, meter.level().rms());
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }
}
