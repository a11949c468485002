package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;

/**
 * What is denied, doubted or asked, and calls of danger: how often a denial is believed to be what
 * it denies, and how often a call of danger is obeyed at once. The property {@code hearing.trace}
 * prints what was believed or missed.
 */
final class DenialFigures {
  /** Denying words that are put at every place of every closing phrase. */
  private static final List<String> DENYING =
      List.of("not", "never", "isn't", "hasn't", "almost", "nearly", "half", "not yet", "only");

  private static final List<Spoken> NATURAL =
      List.of(
          new Spoken("torque hasn't been reached", Phase.TORQUE),
          new Spoken("is torque reached", Phase.TORQUE),
          new Spoken("when torque is reached", Phase.TORQUE),
          new Spoken("wrench has not clicked", Phase.TORQUE),
          new Spoken("wrench didn't click", Phase.TORQUE),
          new Spoken("the wrench never clicked", Phase.TORQUE),
          new Spoken("not tightened to torque", Phase.TORQUE),
          new Spoken("angle only half turned", Phase.ANGLE),
          new Spoken("angle was not turned", Phase.ANGLE),
          new Spoken("check hasn't passed", Phase.CHECK),
          new Spoken("doesn't look good to me", Phase.CHECK),
          new Spoken("step isn't completed yet", Phase.DO),
          new Spoken("i am not finished with this step", Phase.DO),
          new Spoken("that is not correct", Phase.READ_BACK),
          new Spoken("that is incorrect", Phase.READ_BACK),
          new Spoken("you didn't hear me right", Phase.READ_BACK),
          new Spoken("left side is not at ride height", Phase.LOAD_READ_BACK),
          new Spoken("right side isn't at ride height yet", Phase.LOAD_READ_BACK),
          new Spoken("wheels do not carry the car", Phase.GATE),
          new Spoken("car is not on its wheels", Phase.GATE),
          new Spoken("suspension doesn't hang free", Phase.GATE),
          new Spoken("used bolt fitted", Phase.HARDWARE),
          new Spoken("old nut fitted", Phase.HARDWARE),
          new Spoken("no new hardware fitted", Phase.HARDWARE));

  private static final int A_CELL = 300;
  private static final int A_TRUE_CELL = 150;
  private static final List<Integer> LEVELS = List.of(10, 5);

  private final Bench bench;
  private final boolean trace = System.getProperty("hearing.trace") != null;

  /** A phrase said in a phase. */
  private record Spoken(String words, Phase phase) {}

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
            "Denials, doubts, questions and calls of danger",
            "Every closing phrase without a number with a denying word at any of its places, and "
                + NATURAL.size()
                + " other wordings, by plain synthetic speakers, in the phase where the phrase"
                + " closes; calls that cancel a load in any phase; and the closing phrases as they"
                + " are.",
            List.of("said", "trials", "closing", "denied", "cancels", "other", "asked", "silent"));
    rows(table, "closing phrases as they are", closing(), A_TRUE_CELL, 7_300);
    rows(table, "danger, jack and car", danger(), A_CELL, 7_200);
    rows(table, "denied closing phrases", inserted(), A_CELL, 7_000);
    rows(table, "natural denials", NATURAL, A_CELL, 7_100);
    return List.of(table);
  }

  private void rows(Table table, String label, List<Spoken> phrases, int count, long seed) {
    row(table, label + ", clean", phrases, count, seed, 0);
    for (int level : LEVELS) {
      row(table, label + ", " + level + " dB", phrases, count, seed + level, level);
    }
  }

  private void row(
      Table table, String label, List<Spoken> phrases, int count, long seed, int level) {
    List<Came> all = bench.trials().run(count, seed, (i, random) -> trial(phrases, level, random));
    List<Object> cells = new ArrayList<>(List.of(label, all.size()));
    for (Came came : Came.values()) {
      cells.add(all.stream().filter(came::equals).count());
    }
    table.row(cells.toArray());
  }

  private Came trial(List<Spoken> phrases, int level, Random random) {
    Spoken said = phrases.get(random.nextInt(phrases.size()));
    List<String> kinds = List.copyOf(bench.noises().kinds());
    Conditions conditions =
        level == 0
            ? Conditions.clean()
            : new Conditions(kinds.get(random.nextInt(kinds.size())), level);
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

  private static List<Spoken> closing() {
    List<Spoken> all = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : PhaseWords.heard(phase)) {
        if (kind.closes()) {
          Phrasebook.wordings(kind).stream()
              .map(w -> w.replace("<side>", "left side"))
              .filter(w -> !w.contains("<"))
              .forEach(w -> all.add(new Spoken(w, phase)));
        }
      }
    }
    return all;
  }

  private static List<Spoken> inserted() {
    List<Spoken> all = new ArrayList<>();
    for (Spoken phrase : closing()) {
      List<String> words = List.of(phrase.words().split(" ", -1));
      for (String denying : DENYING) {
        for (int at = 0; at <= words.size(); at++) {
          List<String> with = new ArrayList<>(words);
          with.add(at, denying);
          all.add(new Spoken(String.join(" ", with), phrase.phase()));
        }
      }
    }
    return all;
  }

  private static List<Spoken> danger() {
    List<Spoken> all = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : PhaseWords.heard(phase)) {
        if (kind.cancelsLoad()) {
          Phrasebook.wordings(kind).forEach(w -> all.add(new Spoken(w, phase)));
        }
      }
    }
    return all;
  }
}
