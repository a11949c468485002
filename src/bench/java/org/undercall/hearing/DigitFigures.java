package org.undercall.hearing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

/** Real people's values of three digits, in the word list of a torque stage. */
final class DigitFigures {
  private static final int CLEAN = 150;
  private static final int A_CELL = 10;
  private static final int NARROW = 60;

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  DigitFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    Digits wide = Digits.of(bench.recordings().of("digits"));
    Digits narrow = Digits.of(bench.recordings().of("digits-narrowband"));
    if (wide.isEmpty() || narrow.isEmpty()) {
      System.out.println("digits: no recordings, left out");
      return List.of();
    }
    Table table =
        new Table(
            "Values of three digits by real people",
            "Single digits of one speaker joined with pauses of 80 to 150 ms, heard in the word"
                + " list of a torque stage. Per cent with 95 % Wilson intervals. Full band: "
                + wide.counted()
                + "; narrow band (8 kHz): "
                + narrow.counted()
                + ". The trials reuse few files, so the intervals are too narrow for new speakers.",
            Tally.columns("sound"));
    Tally clean = Tally.of(trials(wide, CLEAN, 1, Conditions.clean()));
    table.row(clean.cells("full band, clean"));
    NoiseTables noisy = new NoiseTables();
    long seed = 10;
    for (Conditions conditions : Conditions.noisy(bench.noises())) {
      trials(wide, A_CELL, seed++, conditions).forEach(r -> noisy.add(conditions, r));
    }
    noisy.addLevels(table);
    bench.goals().reached(Goal.VALUES, reached(clean));
    bench.goals().reached(Goal.VALUES_10, reached(noisy.at(10)));
    bench.goals().reached(Goal.VALUES_5, reached(noisy.at(5)));
    table.row(Tally.of(trials(narrow, NARROW, 2, Conditions.clean())).cells("narrow band, clean"));
    List<Table> tables = new ArrayList<>(List.of(table));
    tables.add(
        noisy.byKind(
            "Values in noise: heard right, %", "The same trials.", bench.noises(), Result.RIGHT));
    tables.add(
        noisy.byKind(
            "Values in noise: heard wrong, %", "The same trials.", bench.noises(), Result.WRONG));
    return tables;
  }

  private static String reached(Tally tally) {
    return tally.share(Result.RIGHT) + ", wrong " + tally.share(Result.WRONG);
  }

  private List<Result> trials(Digits digits, int full, long seed, Conditions conditions) {
    Listener listener = bench.listener();
    return bench
        .trials()
        .run(full, seed, (i, random) -> trial(digits, listener, conditions, random));
  }

  private Result trial(Digits digits, Listener listener, Conditions conditions, Random random) {
    Digits.Said said = digits.threeDigits(random);
    Mixing.Clip clip = conditions.clip(said.speech(), bench.noises(), random);
    return Listener.result(listener.hear(clip.sound(), allowed, 3), isValue(said.digits()));
  }

  /** Whether an intent calls just this value, and nothing more. */
  static Predicate<Intent> isValue(String digits) {
    BigDecimal value = new BigDecimal(digits);
    return intent ->
        intent instanceof Intent.OfNumber number
            && number.kind() == IntentKind.VALUE_CALLED
            && number.number().value().compareTo(value) == 0;
  }
}
