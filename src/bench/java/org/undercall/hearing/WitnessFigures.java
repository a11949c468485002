package org.undercall.hearing;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.term.PersonName;
import org.undercall.core.term.SpellingAlphabet;
import org.undercall.port.Fault;

/**
 * How well the names of witnesses are understood that synthetic speakers spell, out of a list of
 * invented names: named and confirmed as the right one, as another one, or asked for again; and
 * what becomes of names that are on no list. Prints a line for each way and level of noise.
 *
 * <p>Arguments: how many of each. The recordings' noises are needed, as for all measurements.
 */
final class WitnessFigures {
  /** Invented; no two have the same initials, first name or surname. */
  private static final List<String> NAMES =
      List.of(
          "Anna Berg",
          "Carl Dorn",
          "Eva Falk",
          "Gus Holm",
          "Ida Jung",
          "Kim Lind",
          "Max Nord",
          "Ole Prinz",
          "Quin Roth",
          "Siv Tell",
          "Udo Vik",
          "Wim York");

  private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private final Bench bench;

  private WitnessFigures(Bench bench) {
    this.bench = bench;
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException, Fault {
    int count = Integer.parseInt(args[0]);
    Recordings recordings = Recordings.find().orElseThrow();
    SpeedFigures speed = new SpeedFigures();
    try (SpeechModel model = speed.load()) {
      Bench bench =
          new Bench(
              model,
              recordings,
              Noises.of(recordings),
              Speakers.find(),
              new Trials(2, 1),
              speed,
              new Goals());
      WitnessFigures figures = new WitnessFigures(bench);
      for (int decibels : List.of(0, 20)) {
        figures.row("initials", count, decibels, true);
        figures.row("first name", count, decibels, true);
        figures.row("nobody, two letters", count, decibels, false);
        figures.row("nobody, four letters", count, decibels, false);
      }
    }
  }

  private void row(String way, int count, int decibels, boolean known) {
    Map<String, Integer> outcomes = new TreeMap<>();
    bench
        .trials()
        .run(
            count,
            1000L * way.length() + decibels,
            (i, r) -> known ? named(way, decibels, r) : nobody(way, decibels, r))
        .forEach(outcome -> outcomes.merge(outcome, 1, Integer::sum));
    String level = decibels == 0 ? "clean" : decibels + " dB";
    System.out.println(way + ", " + level + ": " + outcomes);
  }

  /** One of the list names himself and confirms: only both together close a step. */
  private String named(String way, int decibels, Random random) {
    String name = NAMES.get(random.nextInt(NAMES.size()));
    String[] words = name.split(" ", -1);
    String spelled =
        way.equals("initials")
            ? words[0].substring(0, 1) + words[1].substring(0, 1)
            : words[0].toUpperCase(java.util.Locale.ROOT);
    Speaker speaker = bench.speakers().anyPlain(random);
    Optional<String> called = hear(speaker, "witness ", spelled, Phase.WITNESS, decibels, random);
    if (called.isEmpty()) {
      return "not named: asked again or refused";
    }
    Optional<String> seen =
        hear(speaker, "witnessed by ", spelled, Phase.WITNESS_READ_BACK, decibels, random);
    if (!seen.equals(called)) {
      return called.get().equals(name)
          ? "named right, confirmation refused"
          : "named wrong, refused";
    }
    return called.get().equals(name) ? "right" : "ANOTHER PERSON";
  }

  /** A name that is on no list. */
  private String nobody(String way, int decibels, Random random) {
    StringBuilder spelled = new StringBuilder();
    int length = way.contains("two") ? 2 : 4;
    while (spelled.length() < length || !PersonName.meant(spelled.toString(), NAMES).isEmpty()) {
      spelled.setLength(spelled.length() < length ? spelled.length() : 0);
      spelled.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    Speaker speaker = bench.speakers().anyPlain(random);
    return hear(speaker, "witness ", spelled.toString(), Phase.WITNESS, decibels, random)
        .map(name -> "TAKEN FOR SOMEBODY")
        .orElse("refused");
  }

  /** The one name of the list that was heard; empty if none or several were. */
  private Optional<String> hear(
      Speaker speaker, String phrase, String spelled, Phase phase, int decibels, Random random) {
    Speech speech = speaker.say(phrase + SpellingAlphabet.spelled(spelled));
    Conditions conditions = Conditions.any(decibels, bench.noises(), random);
    Set<IntentKind> allowed = PhaseWords.heard(phase);
    return bench
        .listener()
        .hear(conditions.clip(speech, bench.noises(), random).sound(), allowed)
        .stream()
        .map(Listener.Heard::intent)
        .filter(Intent.OfWitness.class::isInstance)
        .map(intent -> PersonName.meant(((Intent.OfWitness) intent).name(), NAMES))
        .filter(meant -> meant.size() == 1)
        .map(meant -> meant.get(0))
        .findFirst();
  }
}
