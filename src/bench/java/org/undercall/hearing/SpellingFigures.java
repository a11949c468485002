package org.undercall.hearing;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.term.SpellingAlphabet;
import org.undercall.port.Fault;

/**
 * How well registrations and parts of identification numbers are understood that synthetic speakers
 * spell before the cautions: right at once, read back wrong, or asked for again. Chance letters and
 * digits. Prints a line for each length and level of noise.
 *
 * <p>Arguments: how many of each. The recordings' noises are needed, as for all measurements.
 */
final class SpellingFigures {
  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
  private static final String IN_A_VIN = "ABCDEFGHJKLMNPRSTUVWXYZ0123456789";

  private final Bench bench;

  private SpellingFigures(Bench bench) {
    this.bench = bench;
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException, Fault {
    int count = Integer.parseInt(args[0]);
    Recordings recordings = Recordings.find().orElseThrow();
    SpeedFigures speed = new SpeedFigures();
    try (SpeechModel model = speed.load()) {
      Trials trials = new Trials(2, 1);
      Bench bench =
          new Bench(
              model,
              recordings,
              Noises.of(recordings),
              Speakers.find(),
              trials,
              speed,
              new Goals());
      SpellingFigures figures = new SpellingFigures(bench);
      for (int decibels : List.of(0, 20, 10)) {
        figures.row("registration", ALL, 7, count, decibels);
        figures.row("vehicle number", IN_A_VIN, 6, count, decibels);
        figures.row("vehicle number", IN_A_VIN, 4, count, decibels);
      }
    }
  }

  private void row(String field, String characters, int length, int count, int decibels) {
    Map<String, Integer> outcomes = new TreeMap<>();
    bench
        .trials()
        .run(
            count,
            1000L * length + decibels,
            (i, r) -> hear(field, characters, length, decibels, r))
        .forEach(outcome -> outcomes.merge(outcome, 1, Integer::sum));
    String level = decibels == 0 ? "clean" : decibels + " dB";
    System.out.println(field + ", " + length + " characters, " + level + ": " + outcomes);
  }

  private String hear(String field, String characters, int length, int decibels, Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append(characters.charAt(random.nextInt(characters.length())));
    }
    Speech speech =
        bench
            .speakers()
            .anyPlain(random)
            .say(field + " " + SpellingAlphabet.spelled(text.toString()));
    Conditions conditions = Conditions.any(decibels, bench.noises(), random);
    return bench
        .listener()
        .hear(
            conditions.clip(speech, bench.noises(), random).sound(),
            PhaseWords.heard(Phase.BRIEFING))
        .stream()
        .map(heard -> heard.intent())
        .filter(Intent.OfJob.class::isInstance)
        .map(intent -> ((Intent.OfJob) intent).text().contentEquals(text) ? "right" : "wrong")
        .findFirst()
        .orElse("asked again");
  }
}
