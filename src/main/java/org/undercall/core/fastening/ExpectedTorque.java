package org.undercall.core.fastening;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * The torque a wrench should show while a bolt is turned on from its torque stage.
 *
 * <p>T(θ) = (0.16 P + 0.58 d2 µ + DKm/2 µ) F(θ), with F from the torque stage growing by P
 * θ/360/(δS + δP) up to yield, and T never less than that of the torque stage. The band takes both
 * ends of friction, joints softer and stiffer by a share, yield from the least of the class to that
 * times a spread, and the error of what is read. Shares and spread are choices of this program
 * ({@link YieldControlled#SPREAD} for the yield). A reading outside is a hint to look, never a
 * proof; one inside proves nothing either.
 *
 * @param joint the joint
 * @param snug the torque of the torque stage
 * @param friction the range of friction, the same in thread and seat
 * @param tool the error of the torque read
 * @param softness how much the stiffness may differ either way, as a share below one
 */
public record ExpectedTorque(
    Joint joint, Torque snug, Range<Friction> friction, Deviation tool, double softness) {
  /** Gaps and the roughness of the springs, without better knowledge: a fifth either way. */
  public static final double SOFTNESS = 0.2;

  public ExpectedTorque {
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(snug, "snug");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(tool, "tool");
    if (!(softness >= 0 && softness < 1)) {
      throw new Refused("FAS-019", "difference of stiffness", softness + "", "0 or more, below 1");
    }
  }

  /** What a reading hints at. */
  public enum Hint {
    /** Yielded early, a bolt of a lower class, a thread that strips, a gap that closes. */
    TOO_SOFT,
    EXPECTED,
    /** Cross-threaded, dirty or dry thread, a bolt that has bottomed out. */
    TOO_HARD
  }

  /**
   * One point for drawing.
   *
   * @param turn the angle after the torque stage
   * @param torque the band at it
   */
  public record Point(Rotation turn, Range<Torque> torque) {}

  /** The band after an angle, zero or more. */
  public Range<Torque> after(Rotation turn) {
    Require.notNegative("angle", turn.degrees(), "°");
    double low = Math.min(at(turn, friction.low(), false), at(turn, friction.high(), false));
    double high = Math.max(at(turn, friction.low(), true), at(turn, friction.high(), true));
    return new Range<>(
        Units.newtonMetres(low * (1 - tool.share())),
        Units.newtonMetres(high * (1 + tool.share())));
  }

  /** The band from the torque stage up to an angle, in equal steps. */
  public List<Point> points(Rotation upTo, int steps) {
    Require.positive("steps", steps, "(no unit)");
    return IntStream.rangeClosed(0, steps)
        .mapToObj(i -> Rotation.degrees(upTo.degrees() * i / steps))
        .map(turn -> new Point(turn, after(turn)))
        .toList();
  }

  /** What a torque read after an angle hints at. */
  public Hint judge(Torque reading, Rotation turn) {
    Range<Torque> band = after(turn);
    if (reading.compareTo(band.low()) < 0) {
      return Hint.TOO_SOFT;
    }
    return reading.compareTo(band.high()) > 0 ? Hint.TOO_HARD : Hint.EXPECTED;
  }

  private double at(Rotation turn, Friction f, boolean high) {
    LongForm form = LongForm.of(joint.bolt());
    double stiffness = high ? 1 + softness : 1 - softness;
    double gain = joint.stiffness().gain(joint.bolt().thread(), turn).newtons() * stiffness;
    double elastic = form.preload(snug, f, f).newtons() + gain;
    double spread = high ? YieldControlled.SPREAD : 1;
    double yield = Assembly.atYield(joint.bolt()).preload(f).newtons() * spread;
    double torque = form.torque(new Force(Math.min(elastic, yield)), f, f).inNewtonMetres();
    return Math.max(snug.inNewtonMetres(), torque);
  }
}
