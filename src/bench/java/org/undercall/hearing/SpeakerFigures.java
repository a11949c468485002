package org.undercall.hearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;

/**
 * Real people's values, speaker by speaker. Speakers differ more than noises, so the intervals are
 * those of other speakers: speakers are drawn again, not trials (bootstrap, 2,000 times).
 */
final class SpeakerFigures {
  private static final int A_SPEAKER = 8;
  private static final int DRAWS = 2_000;

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  SpeakerFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    Table table =
        new Table(
            "Values of three digits, by speaker",
            "Each speaker counts once; in brackets what 95 % of as many other speakers would come"
                + " to (bootstrap by speaker). Then the shares of single speakers, in order.",
            List.of("sound", "speakers", "right %", "wrong or cut %", "right %, each speaker"));
    row(table, "digits", 0, "full band, clean", 31);
    row(table, "digits", 10, "full band, any noise 10 dB below", 32);
    row(table, "digits-narrowband", 0, "narrow band, clean", 33);
    return List.of(table);
  }

  private void row(Table table, String set, int decibels, String label, long seed) {
    Digits digits = Digits.of(bench.recordings().of(set));
    if (digits.isEmpty()) {
      return;
    }
    int each = bench.trials().count(A_SPEAKER);
    List<Result> all =
        bench
            .trials()
            .all(
                digits.size() * each,
                i -> trial(digits, i / each, decibels, Trials.random(seed, i)));
    double[] right = new double[digits.size()];
    double[] wrong = new double[digits.size()];
    for (int i = 0; i < all.size(); i++) {
      right[i / each] += all.get(i) == Result.RIGHT ? 100.0 / each : 0;
      boolean bad = all.get(i) == Result.WRONG || all.get(i) == Result.CUT;
      wrong[i / each] += bad ? 100.0 / each : 0;
    }
    double[] sorted = right.clone();
    Arrays.sort(sorted);
    List<String> shares = new ArrayList<>();
    for (double share : sorted) {
      shares.add(String.format(Locale.ROOT, "%.0f", share));
    }
    table.row(label, digits.size(), interval(right), interval(wrong), String.join(" ", shares));
  }

  private Result trial(Digits digits, int speaker, int decibels, Random random) {
    Digits.Said said = digits.threeDigits(random, speaker);
    Conditions conditions = Conditions.any(decibels, bench.noises(), random);
    Mixing.Clip clip = conditions.clip(said.speech(), bench.noises(), random);
    return Listener.result(
        bench.listener().hear(clip.sound(), allowed, 3), DigitFigures.isValue(said.digits()));
  }

  private static String interval(double[] shares) {
    Random random = new Random(7);
    double[] means = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double sum = 0;
      for (int j = 0; j < shares.length; j++) {
        sum += shares[random.nextInt(shares.length)];
      }
      means[i] = sum / shares.length;
    }
    Arrays.sort(means);
    return String.format(
        Locale.ROOT,
        "%.1f (%.1f-%.1f)",
        Arrays.stream(shares).average().orElse(0),
        means[DRAWS / 40],
        means[DRAWS - DRAWS / 40]);
  }
}
