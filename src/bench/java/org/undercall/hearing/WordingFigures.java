package org.undercall.hearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenSamples;
import org.undercall.core.intent.SpokenSamples.Phrase;

/**
 * Every wording by plain synthetic speakers: which are heard badly and should be dropped. The
 * property {@code hearing.kinds} names some kinds of intent, with commas; {@code hearing.trace}
 * prints what went wrong.
 */
final class WordingFigures {
  private static final int CLEAN = 5;
  private static final int NOISY = 7;
  private static final int DECIBELS = 10;
  private static final int WORST = 30;

  private final Bench bench;
  private final List<Conditions> noisy;

  /** A wording with its fillings, and the phases in which it may be said. */
  private record Wording(List<Phrase> fillings, List<Phase> phases) {
    Phrase filling(int index) {
      return fillings.get(index % fillings.size());
    }
  }

  /** What came of a wording. */
  private record Row(String words, Tally clean, Tally noise, String instead) {
    double right() {
      return clean.share(Result.RIGHT).share() + noise.share(Result.RIGHT).share() / 10;
    }
  }

  /** One trial. */
  private record Trial(Result result, String heard) {}

  WordingFigures(Bench bench) {
    this.bench = bench;
    this.noisy =
        Conditions.noisy(bench.noises()).stream().filter(c -> c.decibels() == DECIBELS).toList();
  }

  List<Table> tables() {
    List<Row> rows = new ArrayList<>();
    long seed = 900;
    for (Wording wording : wordings()) {
      rows.add(row(wording, seed));
      seed += 2;
    }
    rows.sort(Comparator.comparingDouble(Row::right));
    Table table =
        new Table(
            "Wordings, worst first",
            "Each wording "
                + bench.trials().count(CLEAN)
                + " times clean and "
                + bench.trials().count(NOISY)
                + " times in any noise at 10 dB, by any plain speaker, in the word list of any"
                + " phase. The worst "
                + WORST
                + " of "
                + rows.size()
                + ".",
            List.of("wording, for example", "clean, right %", "10 dB, right %", "heard instead"));
    for (Row row : rows.subList(0, Math.min(WORST, rows.size()))) {
      table.row(
          row.words(),
          row.clean().share(Result.RIGHT),
          row.noise().share(Result.RIGHT),
          row.instead());
    }
    return List.of(table);
  }

  private static List<Wording> wordings() {
    List<Wording> all = new ArrayList<>();
    for (IntentKind kind : IntentKind.values()) {
      List<Phase> phases =
          Arrays.stream(Phase.values()).filter(p -> PhaseWords.heard(p).contains(kind)).toList();
      if (!phases.isEmpty() && kind != IntentKind.NOTE_TEXT && isWanted(kind)) {
        SpokenSamples.phrases(kind).forEach(fillings -> all.add(new Wording(fillings, phases)));
      }
    }
    return all;
  }

  private static boolean isWanted(IntentKind kind) {
    String wanted = System.getProperty("hearing.kinds", "");
    return wanted.isBlank() || List.of(wanted.split(",", -1)).contains(kind.name());
  }

  private Row row(Wording wording, long seed) {
    List<Trial> clean =
        bench
            .trials()
            .run(
                CLEAN,
                seed,
                (i, random) -> trial(wording.filling(i), wording, Conditions.clean(), random));
    List<Trial> noise =
        bench
            .trials()
            .run(
                NOISY,
                seed + 1,
                (i, random) ->
                    trial(wording.filling(i), wording, noisy.get(i % noisy.size()), random));
    String instead =
        clean.stream()
            .filter(t -> t.result() != Result.RIGHT)
            .map(Trial::heard)
            .distinct()
            .limit(4)
            .collect(Collectors.joining("; "));
    return new Row(wording.filling(0).words(), tally(clean), tally(noise), instead);
  }

  private static Tally tally(List<Trial> trials) {
    return Tally.of(trials.stream().map(Trial::result).toList());
  }

  private Trial trial(Phrase phrase, Wording wording, Conditions conditions, Random random) {
    Phase phase = wording.phases().get(random.nextInt(wording.phases().size()));
    Speaker speaker = bench.speakers().anyPlain(random);
    Mixing.Clip clip = conditions.clip(speaker.say(phrase.words()), bench.noises(), random);
    List<Listener.Heard> heard = bench.listener().hear(clip.sound(), PhaseWords.heard(phase));
    Result result = Listener.result(heard, intent -> PhraseFigures.same(intent, phrase.intent()));
    String words =
        heard.stream()
            .map(
                h ->
                    h.phrase().text()
                        + String.format(java.util.Locale.ROOT, " %.2f", h.phrase().confidence()))
            .collect(Collectors.joining(" | "));
    if (result != Result.RIGHT && System.getProperty("hearing.trace") != null) {
      System.out.println(
          "trace: "
              + conditions
              + " "
              + phase
              + " ["
              + speaker
              + "] said "
              + phrase.words()
              + " heard "
              + words);
    }
    return new Trial(result, words);
  }
}
