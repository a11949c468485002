package org.undercall.core.fastening;

import java.util.EnumSet;
import java.util.Optional;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleOutcome.Missing;
import org.undercall.core.fastening.AngleOutcome.NotKnown;
import org.undercall.core.fastening.AngleOutcome.Reach;

/**
 * The preload from a torque stage and an angle stage.
 *
 * <p>Torque stage: long form (VDI 2230 Part 1). Angle stage: turn, pitch and the compliances of the
 * joint. Yield: combined stress with plastic torsion at the onset of yield (VDI 2230 Part 1, ν =
 * 1). Beyond yield the preload is taken as the yield preload; hardening raises it a little.
 */
public final class AngleTightening {
  private AngleTightening() {}

  /**
   * What to expect over a range of friction, the same in thread and seat.
   *
   * @param job the tightening
   * @param friction the range of friction; empty if it is not known
   */
  public static AngleOutcome expect(AngleJob job, Optional<Range<Friction>> friction) {
    EnumSet<Missing> missing = EnumSet.noneOf(Missing.class);
    if (job.joint().isEmpty()) {
      missing.add(Missing.JOINT_SIZES);
    }
    if (friction.isEmpty()) {
      missing.add(Missing.FRICTION);
    }
    return missing.isEmpty() ? expected(job, friction.get()) : new NotKnown(missing);
  }

  private static Expected expected(AngleJob job, Range<Friction> friction) {
    Course slippery = Course.of(job, friction.low());
    Course rough = Course.of(job, friction.high());
    boolean all = slippery.atYield() && rough.atYield();
    boolean some = slippery.atYield() || rough.atYield();
    Reach partly = some ? Reach.MAY_REACH_YIELD : Reach.BELOW_YIELD;
    return new Expected(
        all ? Reach.ABOUT_YIELD : partly,
        Range.between(slippery.preload(), rough.preload()),
        Range.between(slippery.snug(), rough.snug()),
        Range.between(slippery.yieldPreload(), rough.yieldPreload()),
        Range.between(slippery.angleToYield(), rough.angleToYield()));
  }

  /** The preload with one friction; never above the yield preload. Empty without a known joint. */
  public static Optional<Force> preload(AngleJob job, Friction friction) {
    return job.joint().map(j -> Course.of(job, friction).preload());
  }

  /** One tightening with one friction. */
  private record Course(Force snug, Force preload, Force yieldPreload, Rotation angleToYield) {

    static Course of(AngleJob job, Friction friction) {
      JointStiffness joint = job.joint().orElseThrow();
      Force yield = Assembly.atYield(job.bolt()).preload(friction);
      Force snug =
          Force.least(LongForm.of(job.bolt()).preload(job.snug(), friction, friction), yield);
      Force gain = joint.gain(job.bolt().thread(), job.turn());
      Force elastic = new Force(snug.newtons() + gain.newtons());
      Force missing = new Force(yield.newtons() - snug.newtons());
      return new Course(
          snug, Force.least(elastic, yield), yield, joint.turnFor(job.bolt().thread(), missing));
    }

    boolean atYield() {
      return preload.compareTo(yieldPreload) >= 0;
    }
  }
}
