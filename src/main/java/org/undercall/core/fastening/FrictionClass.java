package org.undercall.core.fastening;

import java.util.Optional;
import org.undercall.core.procedure.Lubrication;

/**
 * The friction classes of VDI 2230 Part 1, table A5: what a state of thread and seat can bring.
 *
 * <p>Class letters, ends and states were read in two suppliers' printings of the table. A: bright,
 * phosphated, galvanised or zinc flake with solid lubricants (MoS2, graphite, PTFE) in lacquers or
 * pastes, waxes. B: the same surfaces with greases, oils, or as delivered. C: bright as delivered
 * (slightly oiled), galvanised or zinc flake without lubricant, adhesive. D: hot-dip galvanised
 * without lubricant, austenitic steel with oil. E: austenitic steel and aluminium without. Class E
 * is open upwards in the table; its upper end here, 0.45, is an assumption.
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
   * The range of friction to expect in a state of thread and seat.
   *
   * <ul>
   *   <li>Dry: C up to E, since the coating decides (bare or zinc C, hot-dip D, austenitic E).
   *   <li>Oiled: B.
   *   <li>Greased: A up to B. The table has plain grease in B; that a workshop's grease may hold
   *       solid lubricants, and so be of class A, is common practice, no source.
   *   <li>Paste: A. The table names such pastes in class B too, and in C on austenitic steel.
   *   <li>Threadlocker: C, where the table has "adhesive". A maker's own figure is better.
   *   <li>As delivered or unstated: B or C, so both.
   * </ul>
   */
  public static Optional<Range<Friction>> expect(Lubrication state) {
    return Optional.of(
        switch (state) {
          case DRY -> C.upTo(E);
          case OILED -> B.range();
          case GREASED -> A.upTo(B);
          case PASTE -> A.range();
          case THREADLOCKER -> C.range();
          case AS_DELIVERED, UNSTATED -> B.upTo(C);
        });
  }
}
