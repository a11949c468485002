package org.undercall.core.check;

import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.ToleranceStack;
import org.undercall.core.fastening.ToleranceTrial;
import org.undercall.core.procedure.Stage.TorqueStage;

/**
 * How many of many tightenings go wrong: torque, wrench, angle and friction drawn evenly between
 * their ends, thread and seat alike, from a fixed seed, so that the same procedure always gives the
 * same shares.
 *
 * @param stack everything that varies
 */
record Spread(ToleranceStack stack) {
  private static final ToleranceTrial.Assumed EVEN =
      new ToleranceTrial.Assumed(
          ToleranceTrial.Spread.UNIFORM, ToleranceTrial.Spread.UNIFORM, true, 10_000, 2230);

  private static final double HARDLY = 0.001;

  static Spread of(
      Joint joint,
      Rubs rubs,
      TorqueStage torque,
      Optional<Range<Rotation>> turn,
      Deviation wrench) {
    return new Spread(
        new ToleranceStack(
            joint,
            new Range<>(torque.least(), torque.most()),
            turn,
            wrench,
            rubs.thread(),
            rubs.seat()));
  }

  /** The share that yields, in words. */
  String yielded() {
    return words(yields(), "would yield");
  }

  /** Whether hardly any yields: fewer than one in a thousand. */
  boolean hardlyYields() {
    return yields() < HARDLY;
  }

  private double yields() {
    return ToleranceTrial.of(stack, EVEN, new Force(0)).yields();
  }

  /** The share that stays under a part of the yield preload, in words. */
  String loose(double part) {
    Force yield = Assembly.atYield(stack.joint().bolt()).preload(stack.thread().high());
    Force wanted = new Force(part * yield.newtons());
    return words(ToleranceTrial.of(stack, EVEN, wanted).loose(), "would stay loose");
  }

  private static String words(double share, String what) {
    return share < HARDLY
        ? "fewer than 1 in 1000 " + what
        : String.format(Locale.ROOT, "%.1f %% of them %s", share * 100, what);
  }
}
