package org.undercall.core.fastening;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * A stack of tolerances by drawing lots (Monte Carlo), to see how likely the ends are.
 *
 * <p>Every cause is drawn by itself and evenly between its ends, or normally with its ends at two
 * standard deviations, cut off at three. The same seed gives the same result. Shares this small are
 * uncertain by about their root over the root of the count. Cannot see: the true distributions,
 * which nobody publishes for a workshop; the shares are what follows if those assumed are right.
 *
 * @param count how many joints were drawn
 * @param middle the preloads between which 95 of 100 lie
 * @param median the preload that half of them exceed
 * @param yields the share that reaches yield
 * @param loose the share below the wanted preload
 */
public record ToleranceTrial(
    int count, Range<Force> middle, Force median, double yields, double loose) {
  private static final int MOST = 10_000_000;

  /** How a cause is spread between its ends. */
  public enum Spread {
    UNIFORM,
    /** The ends are two standard deviations away, as with an expanded uncertainty with k = 2. */
    NORMAL
  }

  /**
   * What is assumed for the drawing.
   *
   * @param friction how friction is spread
   * @param rest how torque, tool and angle are spread
   * @param together whether thread and seat always lie at the same place of their ranges, as with
   *     one lubricant on both; else each by itself
   * @param count how many joints to draw, 100 or more
   * @param seed where the lots start
   */
  public record Assumed(Spread friction, Spread rest, boolean together, int count, long seed) {
    public Assumed {
      if (count < 100 || count > MOST) {
        throw new Refused("FAS-018", "joints to draw", count + "", "100 to " + MOST);
      }
    }

    /** Everything spread normally, thread and seat apart, 20 000 joints. */
    public static final Assumed USUAL = new Assumed(Spread.NORMAL, Spread.NORMAL, false, 20_000, 1);
  }

  /** Draws joints. */
  public static ToleranceTrial of(ToleranceStack stack, Assumed assumed, Force wanted) {
    Lots lots = new Lots(assumed.seed());
    Bolt bolt = stack.joint().bolt();
    JointStiffness springs = stack.joint().stiffness();
    double[] preloads = new double[assumed.count()];
    int yields = 0;
    int loose = 0;
    for (int i = 0; i < preloads.length; i++) {
      double place = place(assumed.friction(), lots);
      double other = assumed.together() ? place : place(assumed.friction(), lots);
      Friction thread = friction(stack.thread(), place);
      Friction seat = friction(stack.seat(), other);
      Force preload = drawn(stack, assumed.rest(), lots).preload(bolt, springs, thread, seat);
      preloads[i] = preload.newtons();
      yields += preload.compareTo(Assembly.atYield(bolt).preload(thread)) >= 0 ? 1 : 0;
      loose += preload.compareTo(wanted) < 0 ? 1 : 0;
    }
    Arrays.sort(preloads);
    return new ToleranceTrial(
        preloads.length,
        new Range<>(at(preloads, 0.025), at(preloads, 0.975)),
        at(preloads, 0.5),
        (double) yields / preloads.length,
        (double) loose / preloads.length);
  }

  private static Tightening drawn(ToleranceStack stack, Spread rest, Lots lots) {
    Range<Torque> ends = stack.set();
    double set =
        between(ends.low().inNewtonMetres(), ends.high().inNewtonMetres(), place(rest, lots));
    double error = stack.tool().share() * place(rest, lots);
    double turned = place(rest, lots);
    Optional<Rotation> angle =
        stack
            .turn()
            .map(t -> Rotation.degrees(between(t.low().degrees(), t.high().degrees(), turned)));
    return new Tightening(Units.newtonMetres(set / (1 + error)), angle);
  }

  /** A place in a range: -1 at its low end, 1 at its high end; a normal one goes up to 1.5. */
  private static double place(Spread spread, Lots lots) {
    if (spread == Spread.UNIFORM) {
      return lots.even();
    }
    double deviations = lots.normal();
    while (Math.abs(deviations) > 3) {
      deviations = lots.normal();
    }
    return deviations / 2;
  }

  private static double between(double low, double high, double place) {
    return (low + high) / 2 + (high - low) / 2 * place;
  }

  /** Friction beyond a low end is kept above a quarter of it, so that it stays friction. */
  private static Friction friction(Range<Friction> range, double place) {
    double low = range.low().coefficient();
    return Friction.of(Math.max(low / 4, between(low, range.high().coefficient(), place)));
  }

  private static Force at(double[] sorted, double share) {
    return new Force(sorted[(int) (share * sorted.length)]);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "95 of 100 from %s, %.1f %% reach yield, %.1f %% are loose",
        middle,
        yields * 100,
        loose * 100);
  }
}
