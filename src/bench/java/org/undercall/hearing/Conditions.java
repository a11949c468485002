package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * What lies over the speech.
 *
 * @param noise the kind of noise; {@link #CLEAN} for none
 * @param decibels speech over noise
 */
record Conditions(String noise, int decibels) {
  static final String CLEAN = "clean";
  static final List<Integer> LEVELS = List.of(20, 15, 10, 5, 0);

  static Conditions clean() {
    return new Conditions(CLEAN, 0);
  }

  /** Every kind of noise at every level. */
  static List<Conditions> noisy(Noises noises) {
    List<Conditions> all = new ArrayList<>();
    for (String kind : noises.kinds()) {
      LEVELS.forEach(level -> all.add(new Conditions(kind, level)));
    }
    return all;
  }

  boolean isClean() {
    return noise.equals(CLEAN);
  }

  Mixing.Clip clip(Speech speech, Noises noises, Random random) {
    return isClean()
        ? Mixing.clean(speech)
        : Mixing.noisy(speech, noises.any(noise, random), decibels, random);
  }
}
