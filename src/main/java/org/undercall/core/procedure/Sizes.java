package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * The sizes of a joint and its friction, as far as they are known. Only checked, never spoken.
 *
 * @param clamped what the bolt clamps
 * @param seat the ring under the part that is turned
 * @param friction the friction of thread and seat, if it is known more closely than by their state
 */
public record Sizes(
    Optional<Clamped> clamped, Optional<Ring> seat, Optional<FrictionKnown> friction) {
  /** Nothing is known. */
  public static final Sizes UNKNOWN =
      new Sizes(Optional.empty(), Optional.empty(), Optional.empty());

  public Sizes {
    Objects.requireNonNull(clamped, "clamped");
    Objects.requireNonNull(seat, "seat");
    Objects.requireNonNull(friction, "friction");
  }

  /**
   * The parts between head and nut, as one tube or plate; lengths in millimetres.
   *
   * @param length the clamped length
   * @param shank the length of the plain shank within it, at most the length; empty if not stated
   * @param outer their outer diameter; empty if not stated
   * @param inner their inner diameter, less than the outer; empty if not stated
   * @param material what they are made of
   */
  public record Clamped(
      BigDecimal length,
      Optional<BigDecimal> shank,
      Optional<BigDecimal> outer,
      Optional<BigDecimal> inner,
      Fastener.Joint.Material material) {
    public Clamped {
      Objects.requireNonNull(material, "material");
      if (length.signum() <= 0 || shank.filter(s -> s.compareTo(length) > 0).isPresent()) {
        throw new IllegalArgumentException("a shank within the clamped length: " + length);
      }
    }
  }

  /**
   * The ring that rubs under the head or nut; lengths in millimetres.
   *
   * @param shape how it is formed
   * @param outer its outer diameter; empty if not stated
   * @param inner its inner diameter, less than the outer; empty if not stated
   * @param angle the whole angle of a cone in degrees, more than 0, less than 180
   */
  public record Ring(
      Shape shape,
      Optional<BigDecimal> outer,
      Optional<BigDecimal> inner,
      Optional<BigDecimal> angle) {
    public Ring {
      Objects.requireNonNull(shape, "shape");
      if (shape == Shape.CONE && angle.isEmpty()) {
        throw new IllegalArgumentException("a cone has an angle");
      }
    }
  }

  /** How a seat is formed. */
  public enum Shape {
    FLAT,
    CONE,
    BALL
  }

  /**
   * The friction of thread and seat, each from its least to its most.
   *
   * @param thread in the thread
   * @param seat under the head or nut
   */
  public record FrictionKnown(Span thread, Span seat) {}

  /** A coefficient from the least, more than 0, to the most. */
  public record Span(BigDecimal least, BigDecimal most) {
    public Span {
      if (least.signum() <= 0 || least.compareTo(most) > 0) {
        throw new IllegalArgumentException("a friction that goes up: " + least + " " + most);
      }
    }
  }
}
