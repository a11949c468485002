package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenSamples;

/** Every whole number from 1 to 400, said once digit by digit and once in words. */
final class NumberFigures {
  private static final int LARGEST = 400;
  private static final int A_WAY = 200;

  private final Bench bench;
  private final Speakers speakers;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  NumberFigures(Bench bench) {
    this.bench = bench;
    this.speakers = bench.speakers();
  }

  List<Table> tables() {
    Table table =
        new Table(
            "Whole numbers 1 to 400 by plain synthetic speakers, clean",
            "Every other number, by any speaker, at a torque stage; the odd ones digit by digit, the"
                + " even ones in words: any of the ways in which the number may be said that is not"
                + " digit by digit.",
            Tally.columns("said"));
    table.row(tally(200, true).cells("digit by digit"));
    table.row(tally(201, false).cells("in words"));
    return List.of(table);
  }

  private Tally tally(long seed, boolean byDigits) {
    int count = bench.trials().count(A_WAY);
    int first = byDigits ? 1 : 2;
    return Tally.of(
        bench
            .trials()
            .run(
                A_WAY,
                seed,
                (i, random) ->
                    trial(Math.min(LARGEST, first + i * LARGEST / count), byDigits, random)));
  }

  private Result trial(int number, boolean byDigits, Random random) {
    String said = byDigits ? SpokenSamples.digits(number) : inWords(number, random);
    Mixing.Clip clip = Mixing.clean(speakers.anyPlain(random).say(said));
    List<Listener.Heard> heard =
        bench.listener().hear(clip.sound(), allowed, Integer.toString(number).length());
    return Listener.result(heard, DigitFigures.isValue(Integer.toString(number)));
  }

  /** Any way to say a number but digit by digit. */
  static String inWords(int number, Random random) {
    List<String> ways = new ArrayList<>(SpokenSamples.wordings(number));
    if (number > 9) {
      ways.removeIf(way -> SpokenSamples.isDigits(way));
    }
    return ways.get(random.nextInt(ways.size()));
  }
}
