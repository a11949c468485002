package org.undercall.core.fastening;

import java.util.Locale;

/**
 * An area, for example the stress area of a thread.
 *
 * @param squareMillimetres more than zero, in square millimetres
 */
public record Area(double squareMillimetres) implements Comparable<Area> {
  public Area {
    Require.positive("area", squareMillimetres, "mm²");
  }

  /** The area of a full circle. */
  public static Area ofCircle(Length diameter) {
    return new Area(Math.PI / 4 * diameter.millimetres() * diameter.millimetres());
  }

  /** The stress that a force makes on this area. */
  public Stress under(Force force) {
    return new Stress(force.newtons() / squareMillimetres);
  }

  @Override
  public int compareTo(Area other) {
    return Double.compare(squareMillimetres, other.squareMillimetres);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f mm²", squareMillimetres);
  }
}
