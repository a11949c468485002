package org.undercall.core.fastening;

import java.util.Map;
import java.util.Optional;

/**
 * The ring under the turned head or nut that rubs while tightening.
 *
 * @param bearing outer diameter dw of the ring
 * @param hole inner diameter dh of the ring, less than the outer
 */
public record Seat(Length bearing, Length hole) {
  private static final Map<Integer, Seat> HEXAGON =
      Map.ofEntries(
          Map.entry(4, of(5.88, 4.5)),
          Map.entry(5, of(6.88, 5.5)),
          Map.entry(6, of(8.88, 6.6)),
          Map.entry(8, of(11.63, 9)),
          Map.entry(10, of(14.63, 11)),
          Map.entry(12, of(16.63, 13.5)),
          Map.entry(14, of(19.64, 15.5)),
          Map.entry(16, of(22.49, 17.5)),
          Map.entry(18, of(25.34, 20)),
          Map.entry(20, of(28.19, 22)),
          Map.entry(22, of(31.71, 24)),
          Map.entry(24, of(33.61, 26)));

  public Seat {
    Require.larger("bearing diameter of a seat", hole, bearing);
  }

  /** A seat from its two diameters in millimetres. */
  public static Seat of(double bearing, double hole) {
    return new Seat(Length.mm(bearing), Length.mm(hole));
  }

  /**
   * The seat of a hexagon head of product grade A (ISO 4014) over a medium clearance hole (ISO
   * 273); empty for a diameter without an entry. A flanged head needs its own seat.
   */
  public static Optional<Seat> hexagon(ThreadSize thread) {
    return Optional.ofNullable(HEXAGON.get((int) thread.diameter().millimetres()));
  }

  /** The mean friction diameter DKm = (dw + dh)/2 (VDI 2230 Part 1). */
  public Length meanDiameter() {
    return new Length((bearing.millimetres() + hole.millimetres()) / 2);
  }
}
