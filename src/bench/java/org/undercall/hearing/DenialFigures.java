package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

/**
 * Phrases near those that close something, and calls of danger: how often a denial or another word
 * is not noticed, and how often a call of danger is obeyed at once. The property {@code
 * hearing.trace} prints what was believed or missed.
 */
final class DenialFigures {
  private static final int A_TRUE_CELL = 200;
  private static final int A_DANGER_CELL = 300;
  private static final int DENIED_CELL = 1_000;
  private static final int A_NATURAL_CELL = 300;
  private static final int A_NEAR_CELL = 8_000;
  private static final int SESSIONS = 80;
  private static final List<Integer> LEVELS = List.of(0, 10, 5);

  private final Bench bench;
  private final boolean trace = System.getProperty("hearing.trace") != null;

  /** What came of one: believed, asked again, understood as denied, or left alone. */
  private enum Came {
    CLOSING,
    DENIED,
    CANCELS,
    OTHER,
    ASKED,
    SILENT
  }

  DenialFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    Table table =
        new Table(
            "Near phrases and calls of danger",
            "By plain synthetic speakers, in the phase where the phrase closes something: the"
                + " closing phrases without a number as they are; with a denying word at any of"
                + " their places; "
                + NearPhrases.NATURAL.size()
                + " other wordings of denials; and with any of "
                + NearPhrases.OTHERS.size()
                + " other words put in or in place of a word, or a word left out. Calls that cancel"
                + " a load in any phase. 0 dB stands for clean.",
            List.of("said", "trials", "closing", "denied", "cancels", "other", "asked", "silent"));
    rows(table, "closing phrases as they are", NearPhrases.closing(), A_TRUE_CELL, 7_300);
    List<Share> danger =
        rows(table, "danger, jack and car", NearPhrases.danger(), A_DANGER_CELL, 7_200);
    Share denied =
        all(rows(table, "denied closing phrases", NearPhrases.denied(), DENIED_CELL, 7_000));
    Share natural = all(rows(table, "natural denials", NearPhrases.NATURAL, A_NATURAL_CELL, 7_100));
    Share near = all(rows(table, "other near phrases", NearPhrases.near(), A_NEAR_CELL, 7_400));
    Goals goals = bench.goals();
    goals.reached(Goal.DENIED, all(List.of(denied, natural)).counted());
    goals.reached(Goal.NEAR, near.counted());
    goals.reached(Goal.DANGER, danger.get(0));
    goals.reached(Goal.DANGER_10, danger.get(1));
    return List.of(table, atWork());
  }

  private Table atWork() {
    Table table =
        new Table(
            "Natural denials at work",
            "Each session has one plain synthetic speaker and one phase of the demonstration's"
                + " procedure. 0 dB stands for clean.",
            List.of("level", "sessions", "denials said", "decisions that closed something"));
    DeniedWork work = new DeniedWork(bench);
    for (int level : LEVELS) {
      List<DeniedWork.Came> all =
          bench
              .trials()
              .run(SESSIONS, 7_500 + level, (i, random) -> work.session(i, level, random));
      table.row(
          level + " dB",
          all.size(),
          all.stream().mapToInt(DeniedWork.Came::said).sum(),
          all.stream().mapToInt(DeniedWork.Came::closing).sum());
    }
    return table;
  }

  private static Share all(List<Share> parts) {
    return new Share(
        parts.stream().mapToInt(Share::count).sum(), parts.stream().mapToInt(Share::total).sum());
  }

  /** A row a level; gives how many closed something, or for danger how many cancelled a load. */
  private List<Share> rows(
      Table table, String label, List<NearPhrases.Spoken> phrases, int count, long seed) {
    List<Share> shares = new ArrayList<>();
    for (int level : LEVELS) {
      List<Came> all =
          bench.trials().run(count, seed + level, (i, random) -> trial(phrases, level, random));
      List<Object> cells = new ArrayList<>(List.of(label + ", " + level + " dB", all.size()));
      for (Came came : Came.values()) {
        cells.add(all.stream().filter(came::equals).count());
      }
      table.row(cells.toArray());
      Came wanted = label.startsWith("danger") ? Came.CANCELS : Came.CLOSING;
      shares.add(new Share((int) all.stream().filter(wanted::equals).count(), all.size()));
    }
    return shares;
  }

  private Came trial(List<NearPhrases.Spoken> phrases, int level, Random random) {
    NearPhrases.Spoken said = phrases.get(random.nextInt(phrases.size()));
    Conditions conditions = Conditions.any(level, bench.noises(), random);
    Speaker speaker = bench.speakers().anyPlain(random);
    Mixing.Clip clip = conditions.clip(speaker.say(said.words()), bench.noises(), random);
    List<Listener.Heard> heard =
        bench.listener().hear(clip.sound(), PhaseWords.heard(said.phase()));
    Came came = came(heard);
    if (trace) {
      System.out.println("trace: " + came + " " + conditions + " " + said + told(heard));
    }
    return came;
  }

  private static Came came(List<Listener.Heard> heard) {
    Set<IntentKind> kinds =
        heard.stream().map(Listener.Heard::intent).map(Intent::kind).collect(Collectors.toSet());
    if (kinds.stream().anyMatch(IntentKind::closes)) {
      return Came.CLOSING;
    }
    if (kinds.contains(IntentKind.DENIED)) {
      return Came.DENIED;
    }
    if (kinds.stream().anyMatch(IntentKind::cancelsLoad)) {
      return Came.CANCELS;
    }
    if (heard.stream().anyMatch(Listener.Heard::isClear)) {
      return Came.OTHER;
    }
    boolean close =
        heard.stream()
            .map(Listener.Heard::intent)
            .anyMatch(i -> i instanceof Intent.Unclear u && u.reason().isClose());
    return close ? Came.ASKED : Came.SILENT;
  }

  private static String told(List<Listener.Heard> heard) {
    return heard.stream()
        .map(
            h ->
                String.format(
                    Locale.ROOT,
                    " | %s %.2f %s",
                    h.phrase().text(),
                    h.phrase().confidence(),
                    h.intent().kind()))
        .collect(Collectors.joining());
  }
}
