package org.undercall.core.check;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Variant;

/** Finds the bolt that a specification speaks of. */
final class Bolts {
  /** The radius of a ball seat over half of its outer diameter: common practice, no source. */
  private static final double BALL = 1.1;

  private Bolts() {}

  /** The bolt of the marked class; of a given class if the specification has no marking. */
  static Optional<Bolt> of(Fastener fastener, Variant variant, PropertyClass unmarked) {
    return of(fastener, variant.marking().flatMap(PropertyClass::of).orElse(unmarked));
  }

  /** The bolt of the marked class; empty if none is marked. */
  static Optional<Bolt> marked(Fastener fastener, Variant variant) {
    return variant.marking().flatMap(PropertyClass::of).flatMap(c -> of(fastener, c));
  }

  private static Optional<Bolt> of(Fastener fastener, PropertyClass strength) {
    return ThreadCatalogue.find(fastener.thread())
        .filter(strength::exists)
        .flatMap(thread -> seat(fastener, thread).map(seat -> new Bolt(thread, strength, seat)));
  }

  /** The stated seat, what is missing filled in from that of a standard hexagon. */
  private static Optional<Seat> seat(Fastener fastener, ThreadSize thread) {
    Optional<Seat> usual = Seat.hexagon(thread);
    Optional<Sizes.Ring> ring = fastener.joint().sizes().seat();
    if (ring.isEmpty() || usual.isEmpty()) {
      return usual;
    }
    double outer = or(ring.get().outer(), usual.get().bearing().millimetres());
    double inner = or(ring.get().inner(), usual.get().hole().millimetres());
    if (inner >= outer) {
      return usual;
    }
    return Optional.of(
        switch (ring.get().shape()) {
          case FLAT -> Seat.of(outer, inner);
          case CONE -> Seat.cone(outer, inner, ring.get().angle().orElseThrow().doubleValue());
          case BALL -> Seat.ball(outer, inner, outer / 2 * BALL);
        });
  }

  private static double or(Optional<BigDecimal> stated, double usual) {
    return stated.map(BigDecimal::doubleValue).orElse(usual);
  }

  /** The thread and the class in words, saying so if the class is assumed. */
  static String words(Bolt bolt, Variant variant) {
    return variant.marking().isPresent()
        ? bolt.toString()
        : bolt + " (class assumed, none is marked)";
  }
}
