package org.undercall.core.intent;

import java.util.Optional;
import org.undercall.core.term.HearingTrouble;

/**
 * How loud a phrase was, and what was around it.
 *
 * @param speech the level while words were spoken, in dBFS
 * @param noise the level around them, in dBFS
 * @param clipped the share of samples at full scale while words were spoken, from 0 to 1
 */
public record SoundLevels(double speech, double noise, double clipped) {
  /** Up to this share of samples at full scale does no harm; a rule of thumb, no source. */
  public static final double MOST_CLIPPED = 0.005;

  /** Speech below this is too quiet, in dBFS; a rule of thumb, no source. */
  public static final double LEAST_SPEECH = -50;

  /**
   * With less than this between voice and noise, in decibels, values must often be said again:
   * measured with recordings of people, about a third of the values at 10 dB.
   */
  public static final double LEAST_DISTANCE = 10;

  /** How far the voice is above the noise, in decibels. */
  public double distance() {
    return speech - noise;
  }

  /** What makes it hard to understand, the gravest first; empty if the levels show nothing. */
  public Optional<HearingTrouble> trouble() {
    if (clipped > MOST_CLIPPED) {
      return Optional.of(HearingTrouble.OVERDRIVEN);
    }
    if (speech < LEAST_SPEECH) {
      return Optional.of(HearingTrouble.TOO_QUIET);
    }
    return distance() < LEAST_DISTANCE ? Optional.of(HearingTrouble.TOO_LOUD) : Optional.empty();
  }
}
