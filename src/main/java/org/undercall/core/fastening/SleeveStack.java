package org.undercall.core.fastening;

import java.util.List;
import org.undercall.core.term.Refused;

/**
 * Clamped parts that are tubes one behind the other, such as the inner sleeve of a bush between two
 * bracket walls.
 *
 * <p>Each tube carries the load over its whole section: l/(E A). That holds where the load comes in
 * over the whole end, as through a thick washer as wide as the tube. Under a head or nut, a tube
 * wider than the seat gives more than that: take a {@link ConeStack}, the rule of VDI 2230.
 *
 * @param sleeves the tubes, at least one
 */
public record SleeveStack(List<Sleeve> sleeves) implements ClampedParts {
  public SleeveStack {
    sleeves = List.copyOf(sleeves);
    if (sleeves.isEmpty()) {
      throw new Refused("FAS-030", "clamped parts", "no sleeve", "one or more");
    }
  }

  /**
   * One tube.
   *
   * @param length its length in the direction of the bolt
   * @param outer its outer diameter
   * @param inner its inner diameter, less than the outer
   */
  public record Sleeve(Length length, Length outer, Length inner) {
    public Sleeve {
      Require.larger("outer diameter of a sleeve", inner, outer);
    }

    /** A tube from its sizes in millimetres. */
    public static Sleeve of(double length, double outer, double inner) {
      return new Sleeve(Length.mm(length), Length.mm(outer), Length.mm(inner));
    }

    /** The area of its section. */
    public Area section() {
      double whole = Area.ofCircle(outer).squareMillimetres();
      return new Area(whole - Area.ofCircle(inner).squareMillimetres());
    }
  }

  @Override
  public Compliance compliance(Elasticity material) {
    return sleeves.stream()
        .map(s -> material.bar(s.length(), s.section()))
        .reduce(Compliance::plus)
        .orElseThrow();
  }

  @Override
  public Length clamped() {
    return new Length(sleeves.stream().mapToDouble(s -> s.length().millimetres()).sum());
  }
}
