package org.undercall.listen;

import org.undercall.adapter.activity.Activity;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.Level;
import org.undercall.sound.LevelMeter;

/**
 * Notices that somebody spoke over the voice and that no phrase came of it. It is shown every frame
 * of the sound that is left without the voice. One thread uses it.
 */
public final class Residue implements AutoCloseable {
  /** The least speech that is answered for: a word of two syllables. */
  private static final int LEAST_MILLIS = 390;

  /** So long after the last of it no phrase comes any more. */
  private static final int QUIET_MILLIS = 900;

  /** What is left of the own voice is quieter, in decibels of full scale. */
  private static final double LEAST_LEVEL = -48;

  private final Activity activity;
  private int spokenMillis;
  private int quietMillis;
  private boolean speech;
  private double level;

  /** Uses this detector and closes it. */
  public Residue(Activity activity) {
    this.activity = activity;
  }

  /** A phrase was heard, or the sound before does not count. */
  public void forget() {
    spokenMillis = 0;
    quietMillis = 0;
  }

  /**
   * Takes a frame.
   *
   * @param over whether the voice sounds meanwhile
   * @return whether something was said and not heard
   */
  public boolean take(Frame frame, boolean over) {
    int millis = frame.samples() * 1000 / Frames.RATE;
    level = level(frame).rms();
    speech = activity.isSpeech(frame.sound()) && level >= LEAST_LEVEL;
    if (speech && (over || spokenMillis > 0)) {
      spokenMillis += millis;
      quietMillis = 0;
    } else if (spokenMillis > 0) {
      quietMillis += millis;
    }
    if (quietMillis < QUIET_MILLIS) {
      return false;
    }
    boolean enough = spokenMillis >= LEAST_MILLIS;
    forget();
    return enough;
  }

  /** Whether the frame that was taken last holds speech. */
  boolean isSpeech() {
    return speech;
  }

  /** How loud it is, in decibels of full scale. */
  double level() {
    return level;
  }

  private static Level level(Frame frame) {
    LevelMeter meter = new LevelMeter();
    meter.add(frame);
    return meter.level();
  }

  @Override
  public void close() {
    activity.close();
  }
}
