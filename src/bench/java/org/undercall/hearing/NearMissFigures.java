package org.undercall.hearing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.decision.TorqueWork;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenSamples;

/** Values that are not the specification, and how often one is taken for it all the same. */
final class NearMissFigures {
  private static final int HEARINGS = 700;
  private static final int LARGEST = 400;
  private static final List<Integer> LEVELS = List.of(20, 10, 5);

  private final Bench bench;
  private final Digits wide;
  private final Digits narrow;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);
  private final Map<NearMiss, Count> byMiss = new EnumMap<>(NearMiss.class);
  private final Count all = new Count();
  private final Count right = new Count();

  private static final class Count {
    private int trials;
    private int accepted;
    private int closed;

    void add(TorqueWork.Effect effect) {
      trials++;
      accepted += effect.accepted() ? 1 : 0;
      closed += effect.closed() ? 1 : 0;
    }

    void addTo(Table table, String label) {
      table.row(
          label, trials, accepted, new Share(accepted, trials), closed, new Share(closed, trials));
    }
  }

  /** A value that was said, and everything heard. */
  private record Hearing(int said, String words, List<Listener.Heard> all) {
    List<Intent> heard() {
      return all.stream().map(Listener.Heard::intent).toList();
    }
  }

  NearMissFigures(Bench bench) {
    this.bench = bench;
    this.wide = Digits.of(bench.recordings().of("digits"));
    this.narrow = Digits.of(bench.recordings().of("digits-narrowband"));
  }

  List<Table> tables() {
    List<Hearing> hearings = bench.trials().run(HEARINGS, 300, this::hearing);
    for (Hearing hearing : hearings) {
      right.add(TorqueWork.effect(hearing.said(), hearing.heard()));
      for (NearMiss miss : NearMiss.values()) {
        for (int specified : miss.of(hearing.said())) {
          TorqueWork.Effect effect = TorqueWork.effect(specified, hearing.heard());
          byMiss.computeIfAbsent(miss, m -> new Count()).add(effect);
          all.add(effect);
          if (effect.accepted()) {
            System.out.println("hearing: taken for " + specified + ": " + told(hearing));
          }
        }
      }
    }
    Table table =
        new Table(
            "A value that is not the specification, taken for it",
            hearings.size()
                + " values were said: three in ten by real people (digits, full and narrow band),"
                + " the others by plain synthetic speakers, as digits or words, with or without"
                + " unit, alone or in a phrase that closes the stage; half of them clean, half in"
                + " any noise at 20, 10 or 5 dB. Each was then judged by the program's own rules at"
                + " every stage whose torque differs from what was said in one of these ways. A"
                + " value accepted alone closes nothing: the reply says it matches, and a closing phrase"
                + " must follow.",
            List.of(
                "the specification",
                "trials",
                "value accepted",
                "accepted %",
                "stage closed at once",
                "closed %"));
    byMiss.forEach((miss, count) -> count.addTo(table, miss.title()));
    all.addTo(table, "all near misses");
    bench
        .goals()
        .reached(
            Goal.NEAR_MISS,
            all.accepted
                + " of "
                + all.trials
                + " ("
                + hearings.size()
                + " values said), "
                + all.closed
                + " closed a stage at once");
    right.addTo(table, "for comparison: is what was said");
    return List.of(table);
  }

  private static String told(Hearing hearing) {
    String heard =
        hearing.all().stream()
            .map(
                h ->
                    String.format(
                        Locale.ROOT, "%s %.2f", h.phrase().text(), h.phrase().confidence()))
            .collect(Collectors.joining(" | "));
    return "said " + hearing.words() + ", heard " + heard;
  }

  private Hearing hearing(int index, Random random) {
    int said;
    String words;
    Speech speech;
    int tenth = index % 10;
    if (tenth < 3) {
      Digits.Said value = (tenth == 0 ? narrow : wide).threeDigits(random);
      said = Integer.parseInt(value.digits());
      words = value.digits() + " by a person";
      speech = value.speech();
    } else {
      said = 5 + random.nextInt(LARGEST - 4);
      words = words(said, random);
      speech = bench.speakers().anyPlain(random).say(words);
    }
    Conditions conditions = conditions(random);
    Mixing.Clip clip = conditions.clip(speech, bench.noises(), random);
    return new Hearing(
        said, words + ", " + conditions, bench.listener().hear(clip.sound(), allowed));
  }

  private static String words(int said, Random random) {
    String number =
        random.nextBoolean() ? SpokenSamples.digits(said) : NumberFigures.inWords(said, random);
    List<String> ways =
        List.of("", "", "torque reached ", "tightened to ", "wrench clicked at ", "it reads ");
    String way = ways.get(random.nextInt(ways.size()));
    return way + number + (random.nextInt(3) == 0 ? " newton meters" : "");
  }

  private Conditions conditions(Random random) {
    if (random.nextBoolean()) {
      return Conditions.clean();
    }
    List<String> kinds = new ArrayList<>(bench.noises().kinds());
    return new Conditions(
        kinds.get(random.nextInt(kinds.size())), LEVELS.get(random.nextInt(LEVELS.size())));
  }
}
