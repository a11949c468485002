package org.undercall.hearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenSamples;
import org.undercall.core.intent.SpokenSamples.Phrase;

/** Every phrase by synthetic speakers, each in the word list of a phase in which it counts. */
final class PhraseFigures {
  private static final int A_GROUP = 60;
  private static final int A_CELL = 8;
  private static final int WORST = 12;

  private final Bench bench;
  private final Speakers speakers;
  private final List<Case> cases = new ArrayList<>();
  private final Map<String, Integer> confusions = new TreeMap<>();
  private int harmful;
  private int trialsMade;

  /** A wording with its fillings, and the phases in which it may be said. */
  private record Case(List<Phrase> fillings, List<Phase> phases) {}

  /** One trial: what was said, what came of it, and what was heard instead. */
  private record Trial(Phrase said, Result result, List<Listener.Heard> heard) {}

  PhraseFigures(Bench bench) {
    this.bench = bench;
    this.speakers = bench.speakers();
    for (IntentKind kind : IntentKind.values()) {
      List<Phase> phases =
          Arrays.stream(Phase.values()).filter(p -> PhaseWords.heard(p).contains(kind)).toList();
      if (!phases.isEmpty() && kind != IntentKind.NOTE_TEXT) {
        SpokenSamples.phrases(kind).forEach(fillings -> cases.add(new Case(fillings, phases)));
      }
    }
  }

  List<Table> tables() {
    Table table =
        new Table(
            "Phrases by synthetic speakers",
            "Any of the "
                + cases.size()
                + " wordings of all intents, with any sample value in it, in the word list of any"
                + " phase in which it counts. In noise: plain speakers only (the first three"
                + " groups).",
            Tally.columns("speakers"));
    long seed = 100;
    Tally plain = new Tally();
    for (Speaker.Group group : speakers.groups()) {
      List<Trial> trials =
          bench
              .trials()
              .run(A_GROUP, seed++, (i, r) -> trial(speakers.any(group, r), Conditions.clean(), r));
      trials.forEach(this::note);
      String label = group.title() + " (" + speakers.count(group) + "), clean";
      Tally tally = Tally.of(trials.stream().map(Trial::result).toList());
      table.row(tally.cells(label));
      if (group.isPlain()) {
        plain.addAll(tally);
      }
    }
    NoiseTables noisy = new NoiseTables();
    for (Conditions conditions : Conditions.noisy(bench.noises())) {
      bench
          .trials()
          .run(A_CELL, seed++, (i, r) -> trial(speakers.anyPlain(r), conditions, r))
          .stream()
          .peek(this::note)
          .forEach(trial -> noisy.add(conditions, trial.result()));
    }
    noisy.addLevels(table);
    Goals goals = bench.goals();
    goals.reached(Goal.PHRASES, plain.share(Result.RIGHT));
    goals.reached(Goal.PHRASES_10, noisy.at(10).share(Result.RIGHT));
    goals.reached(Goal.PHRASES_5, noisy.at(5).share(Result.RIGHT));
    goals.reached(Goal.CONFUSION, harmful + " of " + trialsMade);
    return List.of(
        table,
        noisy.byKind(
            "Phrases in noise: heard right, %", "The same trials.", bench.noises(), Result.RIGHT),
        noisy.byKind(
            "Phrases in noise: heard wrong, %", "The same trials.", bench.noises(), Result.WRONG),
        worst());
  }

  private Table worst() {
    Table table =
        new Table(
            "Phrases heard as something else, most frequent first",
            "Over all the trials above; in "
                + harmful
                + " of them another kind of intent was heard that changes the state.",
            List.of("said", "heard", "times"));
    confusions.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .limit(WORST)
        .forEach(
            entry -> {
              String[] pair = entry.getKey().split("\t", -1);
              table.row(pair[0], pair[1], entry.getValue());
            });
    return table;
  }

  private Trial trial(Speaker speaker, Conditions conditions, Random random) {
    Case one = cases.get(random.nextInt(cases.size()));
    Phrase phrase = one.fillings().get(random.nextInt(one.fillings().size()));
    Phase phase = one.phases().get(random.nextInt(one.phases().size()));
    Mixing.Clip clip = conditions.clip(speaker.say(phrase.words()), bench.noises(), random);
    List<Listener.Heard> heard = bench.listener().hear(clip.sound(), PhaseWords.heard(phase));
    return new Trial(phrase, Listener.result(heard, i -> same(i, phrase.intent())), heard);
  }

  private void note(Trial trial) {
    trialsMade++;
    if (trial.result() != Result.WRONG) {
      return;
    }
    boolean changes = false;
    for (Listener.Heard heard : trial.heard()) {
      if (heard.isClear() && !same(heard.intent(), trial.said().intent())) {
        String pair = trial.said().words() + "\t" + heard.phrase().text();
        confusions.merge(pair, 1, Integer::sum);
        boolean otherKind = heard.intent().kind() != trial.said().intent().kind();
        changes |= otherKind && heard.intent().kind().changesState();
      }
    }
    harmful += changes ? 1 : 0;
  }

  /** Whether two intents mean the same; how a number was said does not matter. */
  static boolean same(Intent heard, Intent said) {
    if (heard instanceof Intent.OfNumber h && said instanceof Intent.OfNumber s) {
      return h.kind() == s.kind()
          && h.number().value().compareTo(s.number().value()) == 0
          && h.unit().equals(s.unit());
    }
    return heard.equals(said);
  }
}
