package org.undercall.hearing;

import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.undercall.core.intent.Intent;

/** From the end of speech to the phrase, for what is said most. */
final class DelayFigures {
  private static final int A_ROW = 30;
  private static final int DECIBELS = 10;

  private final Bench bench;
  private final Said said;
  private final Table table =
      new Table(
          "From the end of speech to the phrase",
          "Torque stage. The end of speech is the last block of 10 ms within 30 dB of the loudest,"
              + " plus 40 ms; the sound comes as fast as it would live, one clip after the other,"
              + " and the machine's clock counts. Seconds. Real values: three digits; in words: 121"
              + " to 399. In noise: all kinds, each as often as another.",
          List.of("said", "timed", "later than 1.5 s", "right %", "median", "95th", "longest"));

  private interface Saying {
    Said.Spoken by(Random random);
  }

  DelayFigures(Bench bench) {
    this.bench = bench;
    this.said = new Said(bench.speakers());
  }

  Table table() {
    Digits digits = Digits.of(bench.recordings().of("digits"));
    if (!digits.isEmpty()) {
      bench
          .goals()
          .reached(
              Goal.DELAY_VALUES,
              rows("real people's values", 501, random -> real(digits, random)).shown() + " s");
    }
    bench.goals().reached(Goal.DELAY, rows("fixed phrases", 502, said::fixed).shown() + " s");
    rows("values in words", 503, random -> said.inWords(0, random));
    rows("torque reached", 504, said::open);
    return table;
  }

  private static Said.Spoken real(Digits digits, Random random) {
    Digits.Said value = digits.threeDigits(random);
    Predicate<Intent> right = DigitFigures.isValue(value.digits());
    return new Said.Spoken(value.speech(), right);
  }

  /** Two rows; gives the clean one. */
  private Delays rows(String label, long seed, Saying saying) {
    Delays clean = row(label + ", clean", seed, saying, List.of(Conditions.clean()));
    row(
        label + ", " + DECIBELS + " dB",
        seed,
        saying,
        Conditions.noisy(bench.noises()).stream().filter(c -> c.decibels() == DECIBELS).toList());
    return clean;
  }

  private Delays row(String label, long seed, Saying saying, List<Conditions> conditions) {
    Listener listener = bench.listener();
    Delays delays =
        Delays.of(
            bench
                .trials()
                .oneByOne()
                .run(
                    A_ROW,
                    seed,
                    (i, random) -> {
                      Said.Spoken spoken = saying.by(random);
                      Mixing.Clip clip =
                          conditions
                              .get(i % conditions.size())
                              .clip(spoken.speech(), bench.noises(), random);
                      return Delays.trial(listener, clip, spoken.right());
                    }));
    table.row(
        label,
        delays.timed(),
        delays.late(),
        delays.right(),
        delays.at(0.5),
        delays.at(0.95),
        delays.at(1));
    return delays;
  }
}
