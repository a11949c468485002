package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

/** What is heard in sound that holds no command: chatter, noise, the program's own voice. */
final class FalseFigures {
  /** The phases that hold the most phrases that close something, each of another sort. */
  private static final List<Phase> PHASES =
      List.of(Phase.DO, Phase.TORQUE, Phase.READ_BACK, Phase.LOAD_READ_BACK);

  private static final int SHOWN = 15;

  private final Bench bench;
  private final Map<String, Integer> heard = new TreeMap<>();
  private final Table table =
      new Table(
          "False acceptances",
          "Sound without a command, in the word lists of the phases "
              + PHASES
              + ", with nothing else guarding it. Closing: can close a stage or step, confirm a"
              + " read-back or a load, or end the work. Changing: can change what else stands"
              + " recorded. Harmless: questions, notes, pauses, a number alone. For the own voice"
              + " the program's guard (it does not listen while it speaks) is off.",
          List.of(
              "sound",
              "phase",
              "minutes",
              "harmless",
              "changing",
              "closing",
              "harmless an hour",
              "changing an hour",
              "closing an hour",
              "no phrase, an hour",
              "asked again, an hour"));

  FalseFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    List<Sound> chatter =
        bench.recordings().mixed("chatter").stream().map(Recordings.Recording::sound).toList();
    List<Sound> noise =
        bench.recordings().mixed("noise").stream()
            .filter(Noises::isNoise)
            .map(Recordings.Recording::sound)
            .toList();
    List<Sound> own = OwnVoice.sentences();
    for (Phase phase : PHASES) {
      rows("chatter, " + chatter.size() + " files", chatter, phase);
      rows("noise alone, " + noise.size() + " files", noise, phase);
      rows("own voice, " + own.size() + " sentences", own, phase);
    }
    return List.of(table, most());
  }

  private void rows(String label, List<Sound> sounds, Phase phase) {
    Set<IntentKind> allowed = PhaseWords.heard(phase);
    int count = bench.trials().count(sounds.size());
    List<List<Listener.Heard>> all =
        bench
            .trials()
            .run(
                sounds.size(),
                1,
                (i, random) ->
                    bench
                        .listener()
                        .hear(Sound.joined(Mixing.LEAD, sounds.get(i), Mixing.TAIL), allowed));
    double minutes = sounds.stream().limit(count).mapToDouble(Sound::seconds).sum() / 60;
    int[] counts = new int[4];
    int asked = 0;
    for (Listener.Heard one : all.stream().flatMap(List::stream).toList()) {
      counts[sort(one)]++;
      asked += isAskedAgain(one.intent()) ? 1 : 0;
      if (one.isClear()) {
        heard.merge(
            one.intent().kind() + "\t" + one.phrase().text() + "\t" + label, 1, Integer::sum);
      }
    }
    List<Object> cells = new ArrayList<>(List.of(label, phase, minutes));
    for (int i = 0; i < 3; i++) {
      cells.add(counts[i]);
    }
    for (int found : counts) {
      cells.add(60.0 * found / minutes);
    }
    cells.add(60.0 * asked / minutes);
    table.row(cells);
  }

  /** Whether the program would answer with a question. */
  private static boolean isAskedAgain(Intent intent) {
    return intent instanceof Intent.Unclear unclear && unclear.reason().isClose();
  }

  /** 0 harmless, 1 changing, 2 closing, 3 no phrase. */
  private static int sort(Listener.Heard one) {
    IntentKind kind = one.intent().kind();
    if (!one.isClear()) {
      return 3;
    }
    if (kind.closes()) {
      return 2;
    }
    return kind.changesState() ? 1 : 0;
  }

  private Table most() {
    Table most =
        new Table(
            "What was heard there, most frequent first",
            "The " + SHOWN + " most frequent false acceptances of the table above.",
            List.of("intent", "heard", "in", "times"));
    heard.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .limit(SHOWN)
        .forEach(
            entry -> {
              String[] parts = entry.getKey().split("\t", -1);
              most.row(parts[0], parts[1], parts[2], entry.getValue());
            });
    return most;
  }
}
