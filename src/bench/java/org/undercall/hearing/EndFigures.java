package org.undercall.hearing;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import org.undercall.adapter.activity.Activities;
import org.undercall.listen.Attention;
import org.undercall.listen.QuickEnd;
import org.undercall.listen.Waits;

/** Ways to notice the end of a phrase: how soon, and how often a phrase is cut in two. */
final class EndFigures {
  private static final int A_SET = 60;

  /** Waits to compare with the program's own. */
  private static final Map<String, Waits> TRIED =
      Map.of(
          "shorter waits: 90, 120, 240, 360 ms", new Waits(90, 120, 240, 360, 420, 600),
          "longer waits: 240, 300, 480, 600 ms", new Waits(240, 300, 480, 600, 600, 750),
          "never by unchanged words in noise",
              new Waits(180, 180, 420, 540, Waits.NEVER, Waits.NEVER),
          "whole phrases only, no numbers",
              new Waits(180, Waits.NEVER, Waits.NEVER, Waits.NEVER, 420, Waits.NEVER));

  private final Bench bench;
  private final Said said;

  private interface Saying {
    Said.Spoken by(Random random);
  }

  EndFigures(Bench bench) {
    this.bench = bench;
    this.said = new Said(bench.speakers());
  }

  List<Table> tables() {
    Table table =
        new Table(
            "Ways to notice the end of a phrase",
            "Plain synthetic speakers, clean, torque stage. Delays in seconds from the end of"
                + " speech until the phrase is reported: median and 95th percentile. Values: 121 to"
                + " 399 in words. The waits are those after a whole phrase, a whole number, a number"
                + " that may take a last digit, and a phrase that may take a value. With a pause:"
                + " silence of so many milliseconds after the hundreds (one hundred ... seventy"
                + " five), after the tens (one hundred seventy ... five), before the last of three"
                + " digits (one seven ... five), before decimals (one seven five ... point five),"
                + " and before a value (torque reached ... one seventy five).",
            List.of(
                "end by",
                "fixed phrases",
                "torque reached",
                "values",
                "values right %",
                "hundreds 300, right %",
                "hundreds 500, right %",
                "tens 300, right %",
                "digits 400, right %",
                "decimals 150, right %",
                "value 400, right %"));
    row(table, "the recogniser alone", Attention::byRecogniser);
    row(table, "the program: 180, 180, 420, 540 ms", Attention::standard);
    TRIED.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(tried -> row(table, tried.getKey(), () -> attention(tried.getValue())));
    row(
        table,
        "the program, speech by loudness alone",
        () -> new Attention(Activities.byLoudness(), new QuickEnd(Waits.STANDARD)));
    return List.of(table);
  }

  private static Attention attention(Waits waits) {
    return new Attention(Activities.best(), new QuickEnd(waits));
  }

  private void row(Table table, String label, Supplier<Attention> attention) {
    Listener listener = new Listener(bench.maker(), attention);
    Delays values = trials(listener, 802, random -> said.inWords(0, random));
    table.row(
        label,
        trials(listener, 801, said::fixed).shown(),
        trials(listener, 805, said::open).shown(),
        values.shown(),
        values.right(),
        trials(listener, 803, random -> said.inWords(300, random)).right(),
        trials(listener, 804, random -> said.inWords(500, random)).right(),
        trials(listener, 806, random -> said.tens(300, random)).right(),
        trials(listener, 807, random -> said.lastDigit(400, random)).right(),
        trials(listener, 808, random -> said.decimals(150, random)).right(),
        trials(listener, 809, random -> said.value(400, random)).right());
  }

  private Delays trials(Listener listener, long seed, Saying saying) {
    return Delays.of(
        bench
            .trials()
            .run(
                A_SET,
                seed,
                (i, random) -> {
                  Said.Spoken spoken = saying.by(random);
                  return Delays.trial(listener, Mixing.clean(spoken.speech()), spoken.right());
                }));
  }
}
