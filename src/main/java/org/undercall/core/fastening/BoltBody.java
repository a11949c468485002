package org.undercall.core.fastening;

import java.util.List;

/**
 * The springs of a bolt in series: head, shank, free thread, engaged thread, nut.
 *
 * <p>VDI 2230 Part 1, section 5.1.1: each part gives l/(E A); the head counts as a length of 0.5 d
 * (hexagon) or 0.4 d (socket head), the engaged thread as 0.5 d on the root area, the nut as 0.4 d
 * and a tapped hole as 0.33 d on the nominal area.
 *
 * @param thread the thread
 * @param shank length of the full shank within the clamped length
 * @param freeThread length of the thread within the clamped length
 * @param ends what holds the bolt at its two ends
 */
public record BoltBody(ThreadSize thread, Length shank, Length freeThread, Ends ends) {
  private static final double ENGAGED = 0.5;

  /**
   * What holds the bolt at its two ends, as lengths in nominal diameters.
   *
   * @param head 0.5 for a hexagon head, 0.4 for a socket head
   * @param nut 0.4 for a nut, 0.33 for a tapped hole
   */
  public record Ends(double head, double nut) {
    /** A hexagon head and a nut. */
    public static final Ends HEXAGON_AND_NUT = new Ends(0.5, 0.4);

    /** A socket head and a tapped hole. */
    public static final Ends SOCKET_AND_TAPPED_HOLE = new Ends(0.4, 0.33);

    public Ends {
      Require.positive("length of a head", head, "d");
      Require.positive("length of a nut", nut, "d");
    }
  }

  /** The clamped length: shank and free thread. */
  public Length clamped() {
    return new Length(shank.millimetres() + freeThread.millimetres());
  }

  /** The compliance δS of the bolt. */
  public Compliance compliance(Elasticity material) {
    double d = thread.diameter().millimetres();
    Area nominal = Area.ofCircle(thread.diameter());
    Area root = Area.ofCircle(thread.rootDiameter());
    List<Compliance> parts =
        List.of(
            material.bar(new Length(ends.head() * d), nominal),
            material.bar(shank, nominal),
            material.bar(freeThread, root),
            material.bar(new Length(ENGAGED * d), root),
            material.bar(new Length(ends.nut() * d), nominal));
    return parts.stream().reduce(Compliance::plus).orElseThrow();
  }
}
