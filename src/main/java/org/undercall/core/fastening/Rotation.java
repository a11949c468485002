package org.undercall.core.fastening;

import java.util.Locale;
import org.undercall.core.term.Angle;

/**
 * A signed angle, for example the twist of a bush; an angle stage is a positive one.
 *
 * @param degrees signed, in degrees
 */
public record Rotation(double degrees) implements Comparable<Rotation> {
  public Rotation {
    Require.finite("angle", degrees, "°");
  }

  /** A rotation given in degrees. */
  public static Rotation degrees(double degrees) {
    return new Rotation(degrees);
  }

  /** The rotation of an angle stage. */
  public static Rotation of(Angle angle) {
    return new Rotation(angle.degrees().doubleValue());
  }

  /** A rotation given in radians. */
  public static Rotation radians(double radians) {
    return new Rotation(Math.toDegrees(radians));
  }

  /** The rotation in radians. */
  public double inRadians() {
    return Math.toRadians(degrees);
  }

  /** This rotation less another one. */
  public Rotation minus(Rotation other) {
    return new Rotation(degrees - other.degrees);
  }

  /** The size without the sign. */
  public Rotation size() {
    return new Rotation(Math.abs(degrees));
  }

  @Override
  public int compareTo(Rotation other) {
    return Double.compare(degrees, other.degrees);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f°", degrees);
  }
}
