package org.undercall.core.check;

import java.util.Locale;
import java.util.Random;
import java.util.function.DoublePredicate;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Units;

/**
 * How many of many tightenings go wrong: torque and friction drawn evenly between their ends, from
 * a fixed seed, so that the same procedure always gives the same shares.
 *
 * @param bolt the bolt
 * @param rubs its friction, in thread and seat alike between their ends
 * @param torque what the torque can be, in newton metres
 */
record Spread(Bolt bolt, Rubs rubs, TorqueRules.Span torque) {
  private static final int DRAWS = 10_000;
  private static final long SEED = 2230;

  /** The share that yields, in words. */
  String yielded() {
    return words(share(part -> part >= 1), "would yield");
  }

  /** The share that stays under a part of the yield preload, in words. */
  String loose(double part) {
    return words(share(p -> p < part), "would stay loose");
  }

  private double share(DoublePredicate wrong) {
    Random random = new Random(SEED);
    int count = 0;
    for (int i = 0; i < DRAWS; i++) {
      double drawn = torque.low() + random.nextDouble() * (torque.high() - torque.low());
      Rubs one = rubs.at(random.nextDouble());
      count += wrong.test(one.most(bolt, Units.newtonMetres(drawn))) ? 1 : 0;
    }
    return (double) count / DRAWS;
  }

  private static String words(double share, String what) {
    return share < 0.001
        ? "fewer than 1 in 1000 " + what
        : String.format(Locale.ROOT, "%.1f %% of them %s", share * 100, what);
  }
}
