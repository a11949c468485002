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

  /**
   * Any kind of noise.
   *
   * @param decibels speech over noise; 0 for none
   */
  static Conditions any(int decibels, Noises noises, Random random) {
    List<String> kinds = List.copyOf(noises.kinds());
    return decibels == 0
        ? clean()
        : new Conditions(kinds.get(random.nextInt(kinds.size())), decibels);
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
