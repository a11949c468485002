package org.undercall.core.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The springs of a bolt in series: head, shank, free thread, engaged thread, nut.
 *
 * <p>VDI 2230 Part 1, section 5.1.1: each part gives l/(E A); the head counts as a length of 0.5 d
 * (hexagon) or 0.4 d (socket head), the engaged thread as 0.5 d on the root area, the nut as 0.4 d
 * and a tapped hole as 0.33 d on the nominal area.
 *
 * @param thread the thread
 * @param shank length of the full shank within the clamped length; empty if threaded all along
 * @param freeThread length of the thread within the clamped length
 * @param ends what holds the bolt at its two ends
 */
public record BoltBody(ThreadSize thread, Optional<Length> shank, Length freeThread, Ends ends) {
  private static final double ENGAGED = 0.5;

  public BoltBody {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(shank, "shank");
    Objects.requireNonNull(freeThread, "freeThread");
    Objects.requireNonNull(ends, "ends");
  }

  /** A bolt with a full shank. */
  public BoltBody(ThreadSize thread, Length shank, Length freeThread, Ends ends) {
    this(thread, Optional.of(shank), freeThread, ends);
  }

  /** A bolt threaded up to its head. */
  public static BoltBody fullyThreaded(ThreadSize thread, Length clamped, Ends ends) {
    return new BoltBody(thread, Optional.empty(), clamped, ends);
  }

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
    double straight = shank.map(Length::millimetres).orElse(0.0);
    return new Length(straight + freeThread.millimetres());
  }

  /** The compliance δS of the bolt. */
  public Compliance compliance(Elasticity material) {
    double d = thread.diameter().millimetres();
    Area nominal = Area.ofCircle(thread.diameter());
    Area root = Area.ofCircle(thread.rootDiameter());
    List<Compliance> parts = new ArrayList<>();
    parts.add(material.bar(new Length(ends.head() * d), nominal));
    shank.ifPresent(length -> parts.add(material.bar(length, nominal)));
    parts.add(material.bar(freeThread, root));
    parts.add(material.bar(new Length(ENGAGED * d), root));
    parts.add(material.bar(new Length(ends.nut() * d), nominal));
    return parts.stream().reduce(Compliance::plus).orElseThrow();
  }
}
