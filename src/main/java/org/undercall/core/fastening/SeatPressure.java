package org.undercall.core.fastening;

/**
 * The pressure of a head or nut on the part under it: p = F/A (VDI 2230 Part 1, section 5.5.4).
 *
 * <p>The area is that of the ring, also for a cone, where force and area grow alike. The pressure
 * is taken as even; at the rim of the hole it is higher. Above the limit the seat creeps and the
 * preload falls.
 *
 * @param pressure the mean pressure
 * @param limit the largest that the material bears
 */
public record SeatPressure(Stress pressure, Stress limit) {

  /** The pressure of a preload on a material. */
  public static SeatPressure of(Seat seat, Force preload, SeatMaterial material) {
    return new SeatPressure(seat.area().under(preload), material.limit());
  }

  /** The limit over the pressure; less than one is too little. */
  public double safety() {
    return limit.megapascals() / pressure.megapascals();
  }

  /** Whether the material bears it. */
  public boolean bears() {
    return pressure.compareTo(limit) <= 0;
  }
}
