package org.undercall.core.fastening;

import java.util.Optional;
import org.undercall.core.procedure.Lubrication;

/**
 * The friction classes of VDI 2230 Part 1, table A5: what a state of thread and seat can bring.
 *
 * <p>The class letters and ends were taken from a secondary reading of the table. Class E is open
 * upwards in the table; its upper end here, 0.45, is an assumption.
 */
public enum FrictionClass {
  A(0.04, 0.10),
  B(0.08, 0.16),
  C(0.14, 0.24),
  D(0.20, 0.35),
  E(0.30, 0.45);

  private final double low;
  private final double high;

  FrictionClass(double low, double high) {
    this.low = low;
    this.high = high;
  }

  /** The range of friction of the class. */
  public Range<Friction> range() {
    return new Range<>(Friction.of(low), Friction.of(high));
  }

  /** The range over two classes and everything between them. */
  public Range<Friction> upTo(FrictionClass higher) {
    return new Range<>(Friction.of(low), Friction.of(higher.high));
  }

  /**
   * The range of friction to expect in a state of thread and seat. Dry is class C, oil and grease
   * class B. As delivered or unstated it may be either, so both. Empty for threadlocker: it depends
   * on the product, and no published range is at hand.
   */
  public static Optional<Range<Friction>> expect(Lubrication state) {
    return switch (state) {
      case DRY -> Optional.of(C.range());
      case OILED, GREASED -> Optional.of(B.range());
      case AS_DELIVERED, UNSTATED -> Optional.of(B.upTo(C));
      case THREADLOCKER -> Optional.empty();
    };
  }
}
