package org.undercall.core.term;

import java.util.Locale;
import java.util.Optional;

/**
 * Which car, which job and who, as they were given at the beginning; each may be absent.
 *
 * @param registration as on the plate
 * @param odometer in kilometres
 * @param number of the job, as the workshop counts
 * @param technician who works
 */
public record Job(
    Optional<String> registration,
    Optional<Vin> vin,
    Optional<Measure> odometer,
    Optional<String> number,
    Optional<String> technician) {
  /** Whether two registrations are the same but for blanks, hyphens and small letters. */
  public static boolean samePlate(String one, String other) {
    return plain(one).equals(plain(other));
  }

  private static String plain(String plate) {
    return plate.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
  }

  /** Nothing was given. */
  public static final Job NOT_GIVEN =
      new Job(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
