package org.undercall.core.decision;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.undercall.core.intent.IntentKind;

/** The page on the behaviour, made from the table, the rules and the ways that were taken. */
final class BehaviourPage {
  private static final Map<Phase, String> PHASES =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(Phase.BRIEFING, "the cautions wait to be understood"),
              Map.entry(Phase.JOB_READ_BACK, "something about the job was read back"),
              Map.entry(Phase.DO, "a do step"),
              Map.entry(Phase.CHECK, "the check question of a do step"),
              Map.entry(Phase.MEASURE, "a value is to be measured and called"),
              Map.entry(Phase.HARDWARE, "new hardware is to be fitted"),
              Map.entry(Phase.MARKING, "the head marking is to be read out"),
              Map.entry(Phase.GATE, "the fastener needs a load condition that is not confirmed"),
              Map.entry(Phase.BY_HAND, "the fastener is to be run in by hand, of a set all"),
              Map.entry(Phase.RUN_DOWN, "the torque a nut needs to run down is to be called"),
              Map.entry(Phase.BEGUN, "an angle was broken off: how far it is turned is to be said"),
              Map.entry(Phase.TROUBLE, "something went wrong and is not settled"),
              Map.entry(Phase.TORQUE, "a torque stage"),
              Map.entry(Phase.ANGLE, "an angle stage"),
              Map.entry(Phase.WAITING, "a wait step"),
              Map.entry(Phase.LOAD, "a load step"),
              Map.entry(Phase.HAND_OVER, "a hand-over item"),
              Map.entry(Phase.READ_BACK, "a value, a marking or the end was read back"),
              Map.entry(Phase.LOAD_READ_BACK, "a load condition waits for the side"),
              Map.entry(
                  Phase.WITNESS, "the work is done; a second person who saw it names himself"),
              Map.entry(Phase.WITNESS_READ_BACK, "what he saw waits for his answer"),
              Map.entry(Phase.NOTING, "the next words are a note"),
              Map.entry(Phase.ON_HOLD, "the work is held"),
              Map.entry(Phase.SHIFT_CHANGE, "the work was handed over, the next one names himself"),
              Map.entry(Phase.ALL_CLOSED, "every step is closed"),
              Map.entry(Phase.CLOSED_STEP, "the step at hand is closed, others are open"),
              Map.entry(Phase.ENDED, "the session has ended")));

  /** The phases as the diagram groups them. */
  private static final Map<String, List<Phase>> GROUPS = groups();

  private BehaviourPage() {}

  private static Map<String, List<Phase>> groups() {
    Map<String, List<Phase>> groups = new LinkedHashMap<>();
    groups.put("before the work", List.of(Phase.BRIEFING, Phase.JOB_READ_BACK));
    groups.put("other steps", List.of(Phase.DO, Phase.CHECK, Phase.MEASURE, Phase.WAITING));
    groups.put("load and hand over", List.of(Phase.LOAD, Phase.HAND_OVER));
    groups.put(
        "a fastener",
        List.of(
            Phase.HARDWARE,
            Phase.MARKING,
            Phase.GATE,
            Phase.BY_HAND,
            Phase.RUN_DOWN,
            Phase.BEGUN,
            Phase.TROUBLE,
            Phase.TORQUE,
            Phase.ANGLE));
    groups.put("a second person", List.of(Phase.WITNESS, Phase.WITNESS_READ_BACK));
    groups.put("read back first", List.of(Phase.READ_BACK, Phase.LOAD_READ_BACK));
    groups.put(
        "aside", List.of(Phase.NOTING, Phase.ON_HOLD, Phase.SHIFT_CHANGE, Phase.CLOSED_STEP));
    groups.put("the end", List.of(Phase.ALL_CLOSED, Phase.ENDED));
    return groups;
  }

  static String text() {
    return "# What the program does with each intent in each phase\n\n"
        + "Made from the table, the rules and random runs; do not edit by hand.\n\n"
        + "A row is an intent, a column a phase, a cell the word of a rule. An empty cell is not"
        + " listened for; if such an intent comes all the same, it is refused and logged."
        + " What can be said for an intent stands in [phrases.md](phrases.md).\n\n"
        + matrix()
        + "\n## Phases\n\n"
        + phases()
        + "\n## Rules\n\n"
        + rules()
        + "\n## From phase to phase\n\n"
        + diagram();
  }

  private static String matrix() {
    StringBuilder text = new StringBuilder("| intent |");
    for (Phase phase : Phase.values()) {
      text.append(' ').append(phase.code()).append(" |");
    }
    text.append("\n|---|").append(":-:|".repeat(Phase.values().length)).append('\n');
    for (IntentKind kind : IntentKind.values()) {
      text.append("| ").append(words(kind)).append(" |");
      for (Phase phase : Phase.values()) {
        Rule rule = Table.rule(phase, kind);
        text.append(' ').append(rule.heard() ? rule.word() : "").append(" |");
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static String phases() {
    StringBuilder text = new StringBuilder("| code | phase | waits for |\n|---|---|---|\n");
    for (Phase phase : Phase.values()) {
      text.append(
          String.format(
              Locale.ROOT, "| %s | %s | %s |\n", phase.code(), words(phase), PHASES.get(phase)));
    }
    return text.toString();
  }

  private static String rules() {
    StringBuilder text = new StringBuilder("| rule | what it does | outcomes |\n|---|---|---|\n");
    for (Rule rule : Rule.all()) {
      String outcomes =
          rule.outcomes().stream().sorted().map(BehaviourPage::words).collect(joined());
      text.append(
          String.format(
              Locale.ROOT, "| `%s` | %s | %s |\n", rule.word(), rule.sentence(), outcomes));
    }
    return text.toString();
  }

  private static String diagram() {
    Ways ways = Ways.taken();
    StringBuilder text = new StringBuilder();
    text.append("Every way that ").append(String.format(Locale.ROOT, "%,d", Ways.INTENTS));
    text.append(" random intents took on random procedures. `next step` stands for whatever step");
    text.append(" comes then. Left out are answers that stay in their phase, and what works alike");
    text.append(" in most phases: ");
    text.append(Ways.EVERYWHERE.stream().map(BehaviourPage::words).collect(joined()));
    text.append(
        ", a load that changes or that is confirmed while another step is at hand, and a restart."
            + "\n\n```mermaid\nstateDiagram-v2\n");
    text.append("    next_step: next step\n");
    GROUPS.forEach(
        (name, phases) -> {
          String id = name.replace(' ', '_');
          text.append(String.format(Locale.ROOT, "    state \"%s\" as %s {\n", name, id));
          for (Phase phase : phases) {
            text.append(String.format(Locale.ROOT, "        %s: %s\n", phase.code(), words(phase)));
          }
          text.append("    }\n");
        });
    text.append("    [*] --> BRF\n");
    ways.ways()
        .forEach(
            (way, kinds) -> {
              String label = kinds.stream().map(BehaviourPage::words).collect(joined());
              text.append("    ").append(way).append(label.isEmpty() ? "" : ": " + label);
              text.append('\n');
            });
    return text.append("    END --> [*]\n```\n").toString();
  }

  /** Every phase has its line above. */
  static Set<Phase> described() {
    return PHASES.keySet();
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static java.util.stream.Collector<CharSequence, ?, String> joined() {
    return Collectors.joining(", ");
  }

  /** Every phase of the diagram; one that stands in two groups is there twice. */
  static List<Phase> grouped() {
    return GROUPS.values().stream().flatMap(List::stream).sorted().toList();
  }

  static Set<Phase> all() {
    return Arrays.stream(Phase.values()).collect(Collectors.toSet());
  }
}
