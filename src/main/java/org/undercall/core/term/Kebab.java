package org.undercall.core.term;

import java.util.Locale;

/**
 * The names of constants as words of the file formats: {@code RIDE_HEIGHT} is {@code ride-height}.
 */
public final class Kebab {
  private Kebab() {}

  /** The word of a constant: small letters, a hyphen between its parts. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The constant of a word.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static <E extends Enum<E>> E read(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
