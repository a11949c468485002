package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Refused;

/**
 * A bolt as far as tightening it goes.
 *
 * @param thread its thread
 * @param strength its property class
 * @param seat the seat under the part that is turned
 */
public record Bolt(ThreadSize thread, PropertyClass strength, Seat seat) {
  public Bolt {
    Objects.requireNonNull(seat, "seat");
    if (!strength.exists(thread)) {
      throw new Refused(
          "FAS-011", "property class", strength + " for " + thread, "a class up to this diameter");
    }
  }

  /**
   * A bolt with a standard hexagon head.
   *
   * @param designation for example {@code M12x1.5}
   * @param marking for example {@code 10.9}
   * @throws IllegalArgumentException FAS-010 for an unknown thread, FAS-012 for an unknown class,
   *     FAS-013 if there is no standard seat for the diameter
   */
  public static Bolt hexagon(String designation, String marking) {
    ThreadSize thread = ThreadSize.of(designation);
    PropertyClass strength =
        PropertyClass.of(new HeadMarking(marking))
            .orElseThrow(() -> new Refused("FAS-012", "property class", marking, "4.6 to 12.9"));
    Seat seat =
        Seat.hexagon(thread)
            .orElseThrow(
                () -> new Refused("FAS-013", "seat", "none for " + thread, "its diameters"));
    return new Bolt(thread, strength, seat);
  }

  /** The same bolt with another seat, for example under a flanged head. */
  public Bolt with(Seat other) {
    return new Bolt(thread, strength, other);
  }

  @Override
  public String toString() {
    return thread + " " + strength;
  }
}
