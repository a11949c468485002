package org.undercall.core.writing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.reply.Wanted;

/** Lays the answers out as a table of torques: lines above it, and a row for each step or class. */
final class Rows {
  private static final Pattern WITH_UNIT = Pattern.compile("([0-9.,]+) ?(.*)");

  /** Words that stand for another one in the table. */
  private static final Map<String, String> IN_TABLE = Map.of("on", "yes", "off", "no", "deg", "°");

  /** What every class of a fastener has for itself. */
  private static final Set<Wanted> OF_CLASS =
      Set.of(Wanted.STAGE, Wanted.MARKING, Wanted.BEYOND_YIELD);

  private static final Pattern ANGLE = Pattern.compile("[0-9][^+]*?(?:°|deg).*");
  private static final Pattern STAGES = Pattern.compile(" \\+ ");

  private final List<Map<String, String>> rows = new ArrayList<>();
  private final Map<String, String> phase = new LinkedHashMap<>();
  private List<Map<String, String>> step = new ArrayList<>();

  private Rows() {}

  static List<Map<String, String>> of(Draft draft) {
    Rows all = new Rows();
    draft.given().forEach(all::take);
    all.close();
    return List.copyOf(all.rows);
  }

  private void take(Given one) {
    switch (one.wanted()) {
      case PHASE, SIDE -> phase.put(one.wanted().heading(), one.text());
      case KIND -> {
        close();
        if (!one.text().equals("phase") && !one.text().equals("done")) {
          Map<String, String> row = new LinkedHashMap<>(phase);
          row.put(one.wanted().heading(), one.text());
          step.add(row);
        }
      }
      case MORE_MARKINGS -> another(one);
      case MORE_STAGES, NOTE -> more(one);
      default -> put(one);
    }
  }

  private void put(Given one) {
    if (!step.isEmpty() && !one.wanted().heading().isEmpty() && !one.isNone()) {
      String cell = cell(one);
      List<Map<String, String>> to =
          OF_CLASS.contains(one.wanted()) ? step.subList(step.size() - 1, step.size()) : step;
      to.forEach(row -> row.put(one.wanted().heading(), cell));
    }
  }

  /** What stands in the table; of several angles it is the last that is asked about. */
  private String cell(Given one) {
    return switch (one.wanted()) {
      case WHEELS, UNIT -> IN_TABLE.getOrDefault(one.text(), one.text());
      case BEYOND_YIELD -> "- + ".repeat(angles(step.get(step.size() - 1)) - 1) + one.text();
      default -> one.text();
    };
  }

  /** A further stage of the class at hand, or a further caution of all its rows. */
  private void more(Given one) {
    if (!one.isNone()) {
      boolean stage = one.wanted() == Wanted.MORE_STAGES;
      String between = stage ? " + " : " | ";
      List<Map<String, String>> to = stage ? step.subList(step.size() - 1, step.size()) : step;
      to.forEach(row -> row.merge(one.wanted().heading(), one.text(), (a, b) -> a + between + b));
    }
  }

  private void another(Given one) {
    if (!one.isNone()) {
      Map<String, String> row = new LinkedHashMap<>(step.get(0));
      row.put(one.wanted().heading(), one.text());
      row.remove(Wanted.STAGE.heading());
      row.remove(Wanted.BEYOND_YIELD.heading());
      step.add(row);
    }
  }

  /** Whether the last stage of the class at hand turns on by an angle. */
  static boolean endsTurning(Draft draft) {
    return draft.given().stream()
        .filter(one -> one.wanted() == Wanted.STAGE || one.wanted() == Wanted.MORE_STAGES)
        .filter(one -> !one.isNone())
        .reduce((first, second) -> second)
        .filter(one -> ANGLE.matcher(one.text().strip()).matches())
        .isPresent();
  }

  private static int angles(Map<String, String> row) {
    String stages = row.getOrDefault(Wanted.STAGE.heading(), "");
    return (int) STAGES.splitAsStream(stages).filter(s -> ANGLE.matcher(s).matches()).count();
  }

  private void close() {
    rows.addAll(step);
    step = new ArrayList<>();
  }

  static List<List<String>> head(Draft draft) {
    List<List<String>> head = new ArrayList<>();
    List<String> tool = new ArrayList<>();
    for (Given one : draft.given()) {
      String word = one.wanted().heading();
      switch (one.wanted()) {
        case TITLE, VEHICLE, AUTHOR, REVISION, SOURCE -> head.add(List.of(word, one.text()));
        case CAUTION, MORE_CAUTIONS -> {
          if (!one.isNone()) {
            head.add(List.of(word, one.text()));
          }
        }
        case TOOL, MORE_TOOLS, TOOL_LEAST, TOOL_MOST -> tool.add(one.text());
        case CALIBRATED -> {
          head.add(tool(tool, one.text()));
          tool.clear();
        }
        case UNCERTAINTY -> {
          if (!one.isNone()) {
            List<String> line = new ArrayList<>(head.remove(head.size() - 1));
            line.add(one.text().replaceFirst(" ?%?$", " %"));
            head.add(List.copyOf(line));
          }
        }
        case HEIGHT_TOLERANCE -> head.add(List.of("ride height", one.text()));
        default -> {}
      }
    }
    return List.copyOf(head);
  }

  /** A wrench: name, least, most, unit, day. A unit that is stated twice is left out once. */
  private static List<String> tool(List<String> tool, String calibrated) {
    Matcher least = WITH_UNIT.matcher(tool.get(1));
    String number = least.matches() ? least.group(1) : tool.get(1);
    String unit = least.matches() && !least.group(2).isEmpty() ? least.group(2) : "no unit";
    String most = tool.get(2).endsWith(unit) ? cut(tool.get(2), unit) : tool.get(2);
    return List.of("tool", tool.get(0), number, most, unit, calibrated);
  }

  private static String cut(String text, String unit) {
    return text.substring(0, text.length() - unit.length()).strip();
  }
}
