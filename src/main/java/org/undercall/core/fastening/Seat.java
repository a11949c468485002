package org.undercall.core.fastening;

import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.Refused;

/**
 * The ring under the turned head or nut that rubs while tightening: flat, conical or a ball.
 *
 * <p>On a cone the flanks carry F/sin α between them, α being half of the cone's angle, so the same
 * force rubs 1/sin α times as much as on a flat ring: twice as much on a 60° cone. A wedge's plain
 * statics; VDI 2230 has flat seats only. A ball is taken as the cone that touches it at the mean
 * diameter of the ring. Where on the ring the contact truly is cannot be seen.
 *
 * @param bearing outer diameter dw of the ring
 * @param hole inner diameter dh of the ring, less than the outer
 * @param half half of the cone's angle, more than zero; 90° for a flat ring
 */
public record Seat(Length bearing, Length hole, Rotation half) {
  private static final double FLAT = 90;

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
    Require.positive("half angle of a seat", half.degrees(), "°");
    if (half.degrees() > FLAT) {
      throw new Refused("FAS-015", "half angle of a seat", half.toString(), "at most 90°");
    }
  }

  /** A seat from its two diameters in millimetres. */
  public static Seat of(double bearing, double hole) {
    return cone(bearing, hole, 2 * FLAT);
  }

  /**
   * A conical seat, as under many wheel bolts.
   *
   * @param bearing its largest diameter of contact in millimetres
   * @param hole its least diameter of contact in millimetres
   * @param whole the whole angle of the cone in degrees, such as 60
   */
  public static Seat cone(double bearing, double hole, double whole) {
    return new Seat(Length.mm(bearing), Length.mm(hole), Rotation.degrees(whole / 2));
  }

  /**
   * A ball seat.
   *
   * @param bearing its largest diameter of contact in millimetres
   * @param hole its least diameter of contact in millimetres
   * @param radius the radius of the ball in millimetres, more than half of the bearing diameter
   */
  public static Seat ball(double bearing, double hole, double radius) {
    Require.larger("radius of a ball seat", Length.mm(bearing / 2), Length.mm(radius));
    double normal = Math.asin((bearing + hole) / 4 / radius);
    return new Seat(
        Length.mm(bearing), Length.mm(hole), Rotation.degrees(FLAT - Math.toDegrees(normal)));
  }

  /**
   * The seat of a hexagon head of product grade A (ISO 4014) over a medium clearance hole (ISO
   * 273); empty for a diameter without an entry. A flanged head needs its own seat.
   */
  public static Optional<Seat> hexagon(ThreadSize thread) {
    return Optional.ofNullable(HEXAGON.get((int) thread.diameter().millimetres()));
  }

  /** The diameter of a flat ring that rubs as much: DKm/sin α. */
  public Length frictionDiameter() {
    return flat() ? meanDiameter() : meanDiameter().times(1 / Math.sin(half.inRadians()));
  }

  /** Whether the ring is flat. */
  public boolean flat() {
    return half.degrees() == FLAT;
  }

  /** The area of the ring, seen along the bolt. */
  public Area area() {
    double whole = Area.ofCircle(bearing).squareMillimetres();
    return new Area(whole - Area.ofCircle(hole).squareMillimetres());
  }

  /** The mean friction diameter DKm = (dw + dh)/2 (VDI 2230 Part 1). */
  public Length meanDiameter() {
    return new Length((bearing.millimetres() + hole.millimetres()) / 2);
  }
}
