package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

/** What is heard in sound that holds no command: chatter, noise, the program's own voice. */
final class FalseFigures {
  /** The phases that hold the most phrases that close something, each of another sort. */
  private static final List<Phase> PHASES =
      List.of(Phase.DO, Phase.TORQUE, Phase.READ_BACK, Phase.LOAD_READ_BACK);

  private static final List<Phase> OWN_PHASES = List.of(Phase.TORQUE, Phase.LOAD_READ_BACK);

  private static final int SHOWN = 15;

  private final Bench bench;
  private final Map<String, Integer> heard = new TreeMap<>();
  private final Map<String, Double> certain = new TreeMap<>();
  private final List<Found> strangers = new ArrayList<>();
  private final Table table =
      new Table(
          "False acceptances",
          "Sound without a command, in the word lists of the phases "
              + PHASES
              + ", with nothing else guarding it. Closing: can close a stage or step, confirm a"
              + " read-back or a load, or end the work. Changing: can change what else stands"
              + " recorded. Harmless: questions, notes, pauses, a number alone. Every clip is heard"
              + " in two of the phases (in more than a full run in all four). For the own voice the"
              + " program's guard (it does not listen while it speaks) is off.",
          List.of(
              "sound",
              "phase",
              "clips",
              "minutes",
              "harmless",
              "changing",
              "closing",
              "harmless an hour",
              "changing an hour",
              "closing an hour",
              "no phrase, an hour",
              "asked again, an hour"));

  /** So much sound, and what was falsely heard in it. */
  private record Found(double minutes, int closing, int others, int cancelling) {}

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
      strangers.add(rows("chatter", chatter, phase));
      strangers.add(rows("noise alone", noise, phase));
    }
    for (Phase phase : OWN_PHASES) {
      rows("own voice", own, phase);
    }
    double hours = strangers.stream().mapToDouble(Found::minutes).sum() / 60;
    int closing = strangers.stream().mapToInt(Found::closing).sum();
    int others = strangers.stream().mapToInt(Found::others).sum();
    int cancelling = strangers.stream().mapToInt(Found::cancelling).sum();
    Goals goals = bench.goals();
    goals.reached(
        Goal.CANCELLING,
        String.format(
            Locale.ROOT, "%d in %.1f hours, %.1f an hour", cancelling, hours, cancelling / hours));
    goals.reached(Goal.CLOSINGS, String.format(Locale.ROOT, "%d in %.1f hours", closing, hours));
    goals.reached(
        Goal.OTHERS,
        String.format(
            Locale.ROOT, "%d in %.1f hours, %.1f an hour", others, hours, others / hours));
    return List.of(table, most());
  }

  private Found rows(String label, List<Sound> files, Phase phase) {
    Set<IntentKind> allowed = PhaseWords.heard(phase);
    List<Sound> sounds = share(files, phase);
    List<List<Listener.Heard>> all =
        bench
            .trials()
            .all(
                sounds.size(),
                i ->
                    bench
                        .listener()
                        .hear(Sound.joined(Mixing.LEAD, sounds.get(i), Mixing.TAIL), allowed));
    double minutes = sounds.stream().mapToDouble(Sound::seconds).sum() / 60;
    int[] counts = new int[4];
    int asked = 0;
    int cancelling = 0;
    for (Listener.Heard one : all.stream().flatMap(List::stream).toList()) {
      counts[sort(one)]++;
      asked += isAskedAgain(one.intent()) ? 1 : 0;
      cancelling += one.intent().kind().cancelsLoad() ? 1 : 0;
      if (one.isClear()) {
        String key = one.intent().kind() + "\t" + one.phrase().text() + "\t" + label;
        heard.merge(key, 1, Integer::sum);
        certain.merge(key, one.phrase().confidence(), Math::max);
      }
    }
    List<Object> cells = new ArrayList<>(List.of(label, phase, sounds.size(), minutes));
    for (int i = 0; i < 3; i++) {
      cells.add(counts[i]);
    }
    for (int found : counts) {
      cells.add(60.0 * found / minutes);
    }
    cells.add(60.0 * asked / minutes);
    table.row(cells);
    return new Found(minutes, counts[2], counts[0] + counts[1], cancelling);
  }

  /** Every other file of a full run, the others in the next phase; more than a full run: all. */
  private List<Sound> share(List<Sound> files, Phase phase) {
    boolean all = bench.trials().count(100) > 100;
    int first = PHASES.indexOf(phase) % 2;
    return IntStream.range(0, Math.min(files.size(), bench.trials().count(files.size())))
        .filter(i -> all || i % 2 == first)
        .mapToObj(files::get)
        .toList();
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
            List.of("intent", "heard", "in", "times", "confidence up to"));
    heard.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .limit(SHOWN)
        .forEach(
            entry -> {
              String[] parts = entry.getKey().split("\t", -1);
              most.row(parts[0], parts[1], parts[2], entry.getValue(), certain.get(entry.getKey()));
            });
    return most;
  }
}
