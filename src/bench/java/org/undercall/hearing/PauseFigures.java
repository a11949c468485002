package org.undercall.hearing;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;

/** Real people's values of three digits with a pause before the second or the third. */
final class PauseFigures {
  private static final List<Integer> PAUSES = List.of(100, 300, 500, 700, 900, 1_200, 1_600);
  private static final int A_PAUSE = 60;

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  PauseFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    Digits digits = Digits.of(bench.recordings().of("digits"));
    if (digits.isEmpty()) {
      System.out.println("pauses: no recordings, left out");
      return List.of();
    }
    Table table =
        new Table(
            "Values of three digits with a pause in them, clean",
            "As above, with one pause before the second or the third digit; with 0.75 s and more"
                + " the value is read back before it counts. Cut counts as wrong.",
            Tally.columns("pause in ms"));
    for (int pause : PAUSES) {
      List<Result> results =
          bench.trials().run(A_PAUSE, 400L + pause, (i, random) -> trial(digits, pause, random));
      table.row(Tally.of(results).cells(Integer.toString(pause)));
    }
    return List.of(table);
  }

  private Result trial(Digits digits, int pause, Random random) {
    Digits.Said said = digits.threeDigits(random, 1 + random.nextInt(2), pause);
    Mixing.Clip clip = Conditions.clean().clip(said.speech(), bench.noises(), random);
    return Listener.result(
        bench.listener().hear(clip.sound(), allowed, 3), DigitFigures.isValue(said.digits()));
  }
}
