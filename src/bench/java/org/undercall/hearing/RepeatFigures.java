package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

/** Real people's values, said again until they are taken, three times at most. */
final class RepeatFigures {
  private static final int TIMES = 3;
  private static final int TRIALS = 120;
  private static final int PAUSE_MILLIS = 3_000;

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  RepeatFigures(Bench bench) {
    this.bench = bench;
  }

  /** How often a value was said, and whether it was taken right. */
  private record Outcome(int tries, Optional<Boolean> right) {}

  List<Table> tables() {
    Digits digits = Digits.of(bench.recordings().of("digits"));
    if (digits.isEmpty()) {
      System.out.println("repeats: no recordings, left out");
      return List.of();
    }
    Table table =
        new Table(
            "Values said again until they are taken, three times at most",
            "A repeat is another joining of the speaker's clips, with other noise; often the same"
                + " clip, so people will do better. Each by itself, or weighed with what was heard"
                + " before.",
            List.of(
                "noise",
                "repeats",
                "trials",
                "right at 1 %",
                "right by 2 %",
                "right by 3 %",
                "wrong %",
                "tries for each taken"));
    for (int decibels : List.of(0, 10, 5)) {
      for (boolean weighed : new boolean[] {false, true}) {
        long seed = 900L + decibels;
        List<Outcome> outcomes =
            bench
                .trials()
                .run(TRIALS, seed, (i, random) -> trial(digits, decibels, weighed, random));
        row(table, decibels == 0 ? "clean" : decibels + " dB", weighed, outcomes);
      }
    }
    return List.of(table);
  }

  private static void row(Table table, String noise, boolean weighed, List<Outcome> outcomes) {
    List<Object> cells = new ArrayList<>();
    cells.add(noise);
    cells.add(weighed ? "weighed together" : "each by itself");
    cells.add(outcomes.size());
    for (int by = 1; by <= TIMES; by++) {
      int most = by;
      int right =
          (int)
              outcomes.stream()
                  .filter(o -> o.tries() <= most && o.right().equals(Optional.of(true)))
                  .count();
      cells.add(new Share(right, outcomes.size()));
    }
    List<Outcome> taken = outcomes.stream().filter(o -> o.right().isPresent()).toList();
    int wrong = (int) taken.stream().filter(o -> !o.right().get()).count();
    cells.add(new Share(wrong, outcomes.size()));
    cells.add(
        (double) outcomes.stream().mapToInt(Outcome::tries).sum() / Math.max(1, taken.size()));
    table.row(cells);
  }

  private Outcome trial(Digits digits, int decibels, boolean weighed, Random random) {
    List<Digits.Said> said = digits.repeated(random, TIMES);
    Predicate<Intent> right = DigitFigures.isValue(said.get(0).digits());
    Conditions conditions = Conditions.any(decibels, bench.noises(), random);
    List<Sound> parts = new ArrayList<>();
    for (Digits.Said one : said) {
      Sound sound = conditions.clip(one.speech(), bench.noises(), random).sound();
      parts.add(Sound.joined(sound, Sound.silence(PAUSE_MILLIS)));
    }
    for (int tries = 1; tries <= TIMES; tries++) {
      List<Sound> heard = weighed ? parts.subList(0, tries) : parts.subList(tries - 1, tries);
      Sound all = Sound.joined(heard.toArray(Sound[]::new));
      Optional<Intent> taken =
          bench.listener().hear(all, allowed, 3).stream()
              .filter(Listener.Heard::isClear)
              .map(Listener.Heard::intent)
              .findFirst();
      if (taken.isPresent()) {
        return new Outcome(tries, Optional.of(right.test(taken.get())));
      }
    }
    return new Outcome(TIMES, Optional.empty());
  }
}
