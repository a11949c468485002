package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.Torque;

/**
 * The long form of the torque equation: T = F (p P + t d2 µG + DKm/2 µK).
 *
 * <p>VDI 2230 Part 1, equation for MA; ISO 16047. The thread and the seat may have different
 * friction; one value for both is the usual assumption of the published tables.
 *
 * @param bolt the bolt
 * @param law the numbers p and t
 */
public record LongForm(Bolt bolt, TorqueLaw law) {
  public LongForm {
    Objects.requireNonNull(bolt, "bolt");
    Objects.requireNonNull(law, "law");
  }

  /** The long form as VDI 2230 prints it. */
  public static LongForm of(Bolt bolt) {
    return new LongForm(bolt, TorqueLaw.VDI_2230);
  }

  /** The torque that makes a preload, with thread and seat friction. */
  public Torque torque(Force preload, Friction thread, Friction seat) {
    return Units.newtonMetres(preload.inKilonewtons() * arm(thread, seat).millimetres());
  }

  /** The preload that a torque makes, with thread and seat friction. */
  public Force preload(Torque torque, Friction thread, Friction seat) {
    return Force.kilonewtons(torque.inNewtonMetres() / arm(thread, seat).millimetres());
  }

  /**
   * The range of preloads that a torque makes over a range of friction, the same at both places.
   */
  public Range<Force> preload(Torque torque, Range<Friction> friction) {
    return friction.map(f -> preload(torque, f, f));
  }

  /** The range of torques that make a preload over a range of friction. */
  public Range<Torque> torque(Force preload, Range<Friction> friction) {
    return friction.map(f -> torque(preload, f, f));
  }

  /** The part of the torque that reaches the thread, MG, and twists the bolt. */
  public Torque threadTorque(Force preload, Friction thread) {
    return Units.newtonMetres(preload.inKilonewtons() * (pitchArm() + threadArm(thread)));
  }

  /** Where the torque goes, as shares of one. */
  public Shares shares(Friction thread, Friction seat) {
    double whole = arm(thread, seat).millimetres();
    return new Shares(pitchArm() / whole, threadArm(thread) / whole, seatArm(seat) / whole);
  }

  /** The torque per preload, as a length. */
  public Length arm(Friction thread, Friction seat) {
    return new Length(pitchArm() + threadArm(thread) + seatArm(seat));
  }

  /**
   * Where the tightening torque goes, as shares of one.
   *
   * @param pitch stretches the bolt
   * @param thread lost to friction in the thread
   * @param seat lost to friction under the head or nut
   */
  public record Shares(double pitch, double thread, double seat) {}

  private double pitchArm() {
    return law.pitch() * bolt.thread().pitch().millimetres();
  }

  private double threadArm(Friction thread) {
    return law.thread() * bolt.thread().pitchDiameter().millimetres() * thread.coefficient();
  }

  private double seatArm(Friction seat) {
    return bolt.seat().frictionDiameter().millimetres() / 2 * seat.coefficient();
  }
}
