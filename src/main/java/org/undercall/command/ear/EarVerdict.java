package org.undercall.command.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.undercall.core.intent.SoundLevels;

/**
 * What to make of a check of the ear.
 *
 * @param phrases what came of each phrase
 */
record EarVerdict(List<CheckedPhrase> phrases) {
  /** So many of the ten must be heard right; a rule of thumb, no source. */
  private static final int LEAST_RIGHT = 8;

  /** So many may be taken for something else; a rule of thumb, no source. */
  private static final int MOST_OTHER = 1;

  /** With less than this between voice and noise some phrases must be repeated, in decibels. */
  private static final double GOOD_DISTANCE = 20;

  /**
   * What half the way to the microphone gives, in decibels: sound pressure goes with 1/distance.
   */
  private static final double HALF_THE_WAY = 6;

  EarVerdict {
    phrases = List.copyOf(phrases);
  }

  /** Whether one can work with this ear. */
  boolean usable() {
    return count(CheckedPhrase.Result.RIGHT) >= LEAST_RIGHT
        && count(CheckedPhrase.Result.OTHER) <= MOST_OTHER;
  }

  /** How many phrases have a result. */
  long count(CheckedPhrase.Result result) {
    return phrases.stream().filter(p -> p.result() == result).count();
  }

  /** The middle speech level, in dBFS. */
  OptionalDouble speech() {
    return median(SoundLevels::speech);
  }

  /** The middle noise level, in dBFS. */
  OptionalDouble noise() {
    return median(SoundLevels::noise);
  }

  /** How far the voice is above the noise, in decibels, the middle of all phrases. */
  OptionalDouble distance() {
    return median(SoundLevels::distance);
  }

  /** The largest share of clipped samples of a phrase. */
  OptionalDouble clipped() {
    return phrases.stream()
        .flatMap(p -> p.levels().stream())
        .mapToDouble(SoundLevels::clipped)
        .max();
  }

  /** What should be changed, one sentence each; empty if nothing. */
  List<String> advice() {
    List<String> advice = new ArrayList<>();
    if (count(CheckedPhrase.Result.NOT_HEARD) == phrases.size()) {
      advice.add("Nothing was heard: try undercall microphones --check 5.");
    }
    if (clipped().orElse(0) > SoundLevels.MOST_CLIPPED) {
      advice.add("The microphone is overdriven: turn it down or speak less close.");
    }
    if (speech().orElse(0) < SoundLevels.LEAST_SPEECH) {
      advice.add("Your voice is too quiet: move the microphone closer or turn it up.");
    }
    double distance = distance().orElse(Double.POSITIVE_INFINITY);
    if (distance < GOOD_DISTANCE) {
      advice.add(
          String.format(
              Locale.ROOT,
              "Noise %.0f dB below your voice, %.0f wanted: expect %s. %s",
              distance,
              GOOD_DISTANCE,
              distance < SoundLevels.LEAST_DISTANCE ? "many repeats" : "repeats",
              distance < GOOD_DISTANCE - HALF_THE_WAY
                  ? "Wear a headset, its microphone two fingers from the corner of the mouth."
                  : "Halve the way to the microphone, that gives about 6 dB."));
      advice.add("Turning the microphone up does not help: the noise grows with the voice.");
    }
    if (missed(CheckPhrase.Sort.NUMBER_WORDS) > 0) {
      advice.add("Say numbers digit by digit.");
    }
    if (missed(CheckPhrase.Sort.DIGITS) > 1) {
      advice.add("Digits are misheard: a short pause before and after a value helps.");
    }
    return advice;
  }

  private long missed(CheckPhrase.Sort sort) {
    return phrases.stream()
        .filter(p -> p.phrase().sort() == sort)
        .filter(p -> !p.heard().isEmpty())
        .filter(p -> p.result() != CheckedPhrase.Result.RIGHT || p.tries() > 1)
        .count();
  }

  private OptionalDouble median(ToDoubleFunction<SoundLevels> level) {
    double[] sorted =
        phrases.stream().flatMap(p -> p.levels().stream()).mapToDouble(level).sorted().toArray();
    return sorted.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(sorted[sorted.length / 2]);
  }
}
