package org.undercall.core.check;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.Seat;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Sizes;

/** The joint of a bolt: as stated, or one that is assumed. */
final class Joints {
  /** The width of plates, in bearing diameters. */
  private static final double WIDE = 2;

  /** A free thread is never shorter, in diameters. */
  private static final double LEAST_THREAD = 0.1;

  private static final double LONG = 8;
  private static final double SHORT = 2;
  private static final double USUAL = 4;

  /**
   * The free thread of a long joint in diameters: what a bolt of ISO 4014 leaves free, and more.
   */
  private static final double LONG_FREE = 1.7;

  /** Below M12, cylinder heads are held by bolts with so much free thread, in millimetres. */
  private static final double HEAD_BOLT_FREE = 25;

  private static final double HEAD_BOLT_BELOW = 12;

  private Joints() {}

  /** The joint that is stated; empty if none is. */
  static Optional<Joint> stated(Bolt bolt, Fastener fastener) {
    return fastener.joint().sizes().clamped().map(clamped -> stated(bolt, fastener, clamped));
  }

  private static Joint stated(Bolt bolt, Fastener fastener, Sizes.Clamped clamped) {
    double length = clamped.length().doubleValue();
    double shank = clamped.shank().map(BigDecimal::doubleValue).orElse(length / 2);
    double least = Math.min(LEAST_THREAD * bolt.thread().diameter().millimetres(), length / 2);
    boolean tapped = fastener.joint().tapped().isPresent();
    Seat seat = seat(bolt, clamped);
    double outer =
        clamped
            .outer()
            .map(BigDecimal::doubleValue)
            .orElse(WIDE * bolt.seat().bearing().millimetres());
    PressureCone parts =
        new PressureCone(
            seat,
            Length.mm(length),
            Length.mm(Math.max(outer, 1.01 * seat.hole().millimetres())),
            tapped ? PressureCone.Kind.TAPPED_HOLE : PressureCone.Kind.THROUGH_BOLT);
    BoltBody body = body(bolt, length, Math.max(length - shank, least), tapped);
    return Joint.of(bolt, body, parts, Elasticity.STEEL, elasticity(clamped.material()));
  }

  /** The seat over the stated hole, if it leaves one. */
  private static Seat seat(Bolt bolt, Sizes.Clamped clamped) {
    double bearing = bolt.seat().bearing().millimetres();
    double inner =
        clamped.inner().map(BigDecimal::doubleValue).orElse(bolt.seat().hole().millimetres());
    return Seat.of(bearing, Math.min(inner, 0.99 * bearing));
  }

  private static Elasticity elasticity(Fastener.Joint.Material material) {
    return switch (material) {
      case STEEL -> Elasticity.STEEL;
      case CAST_IRON -> Elasticity.GREY_IRON;
      case ALUMINIUM -> Elasticity.ALUMINIUM;
    };
  }

  /** The longest that is plausible where none is stated, with the most free thread. */
  static Joint longest(Bolt bolt) {
    double d = bolt.thread().diameter().millimetres();
    return assumed(bolt, LONG, d < HEAD_BOLT_BELOW ? HEAD_BOLT_FREE : LONG_FREE * d);
  }

  /** The shortest that is plausible where none is stated. */
  static Joint shortest(Bolt bolt) {
    return assumed(bolt, SHORT, SHORT / 2 * bolt.thread().diameter().millimetres());
  }

  /** The stated one, or one of four diameters. */
  static Joint usual(Bolt bolt, Fastener fastener) {
    return stated(bolt, fastener).orElseGet(() -> of(bolt, USUAL));
  }

  /** One of so many diameters between plates of steel, half of it shank. */
  static Joint of(Bolt bolt, double diameters) {
    return assumed(bolt, diameters, diameters / 2 * bolt.thread().diameter().millimetres());
  }

  private static Joint assumed(Bolt bolt, double diameters, double freeThread) {
    double length = diameters * bolt.thread().diameter().millimetres();
    PressureCone plates =
        new PressureCone(
            bolt.seat(),
            Length.mm(length),
            bolt.seat().bearing().times(WIDE),
            PressureCone.Kind.THROUGH_BOLT);
    return Joint.ofSteel(bolt, body(bolt, length, Math.min(freeThread, length), false), plates);
  }

  private static BoltBody body(Bolt bolt, double length, double freeThread, boolean tapped) {
    BoltBody.Ends ends = tapped ? new BoltBody.Ends(0.5, 0.33) : BoltBody.Ends.HEXAGON_AND_NUT;
    double shank = length - freeThread;
    return shank > 0
        ? new BoltBody(bolt.thread(), Length.mm(shank), Length.mm(freeThread), ends)
        : BoltBody.fullyThreaded(bolt.thread(), Length.mm(length), ends);
  }
}
