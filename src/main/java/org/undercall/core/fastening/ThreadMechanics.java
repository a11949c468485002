package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * The torque equation without linearising: T = F (d2/2 tan(φ + ρ') + DKm/2 µK).
 *
 * <p>Helix of the thread as an inclined plane; φ is its lead angle, ρ' the friction angle on flanks
 * of 30 degrees. VDI 2230 Part 1, section 5.4.2, before its simplification.
 */
public final class ThreadMechanics {
  private static final double FLANK = Math.toRadians(30);

  private ThreadMechanics() {}

  /** The lead angle φ of the thread at the pitch diameter. */
  public static Rotation leadAngle(ThreadSize thread) {
    double circumference = Math.PI * thread.pitchDiameter().millimetres();
    return Rotation.radians(Math.atan(thread.pitch().millimetres() / circumference));
  }

  /** The friction angle ρ' in the thread. */
  public static Rotation frictionAngle(Friction friction) {
    return Rotation.radians(Math.atan(friction.coefficient() / Math.cos(FLANK)));
  }

  /** The torque that makes a preload. */
  public static Torque torque(Bolt bolt, Force preload, Friction thread, Friction seat) {
    double angle = leadAngle(bolt.thread()).inRadians() + frictionAngle(thread).inRadians();
    double inThread = bolt.thread().pitchDiameter().millimetres() / 2 * Math.tan(angle);
    double underHead = bolt.seat().frictionDiameter().millimetres() / 2 * seat.coefficient();
    return Units.newtonMetres(preload.inKilonewtons() * (inThread + underHead));
  }
}
