package org.undercall.core.check;

import java.util.Optional;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Variant;

/** Finds the bolt that a specification speaks of. */
final class Bolts {
  private Bolts() {}

  /** The bolt of the marked class; of a given class if the specification has no marking. */
  static Optional<Bolt> of(Fastener fastener, Variant variant, PropertyClass unmarked) {
    PropertyClass strength = variant.marking().flatMap(PropertyClass::of).orElse(unmarked);
    return ThreadCatalogue.find(fastener.thread())
        .filter(strength::exists)
        .flatMap(thread -> Seat.hexagon(thread).map(seat -> new Bolt(thread, strength, seat)));
  }

  /** The thread and the class in words, saying so if the class is assumed. */
  static String words(Bolt bolt, Variant variant) {
    return variant.marking().isPresent()
        ? bolt.toString()
        : bolt + " (class assumed, none is marked)";
  }
}
