package org.undercall.command.fleet;

import java.util.Locale;
import java.util.Map;

/** A comparison as text of at most 80 columns. */
final class ComparisonText {
  private static final int MOST = 10;
  private static final int NAME = 30;

  private final Lines lines = new Lines();

  private ComparisonText() {}

  static String of(Measure measure, Map<Tables.Name, Grid> tables) {
    ComparisonText text = new ComparisonText();
    measure.words().lines().forEach(line -> text.lines.add(line, ""));
    text.lines.add("Time at work in minutes and seconds; slow is beyond Tukey's fence.", "");
    text.steps(tables.get(Tables.Name.STEPS));
    for (Tables.Name name : Tables.Name.values()) {
      if (name != Tables.Name.STEPS) {
        text.plain(name.title(), tables.get(name));
      }
    }
    return text.lines.toString();
  }

  private void steps(Grid steps) {
    row("step", "this", "median", "quartiles", "sessions", "");
    for (int i = 0; i < steps.size(); i++) {
      row(
          steps.text(i, "step"),
          GridOut.time(steps.number(i, "this_ms")),
          GridOut.time(steps.number(i, "median_ms")),
          GridOut.time(steps.number(i, "q1_ms")) + "-" + GridOut.time(steps.number(i, "q3_ms")),
          steps.text(i, "sessions"),
          steps.text(i, "verdict"));
    }
  }

  /** A long name has a line of its own. */
  private void row(String step, String... cells) {
    boolean aside = step.length() > NAME;
    if (aside) {
      lines.add(step, "  ");
    }
    String form = "%-" + NAME + "s %7s %7s %13s %8s %s";
    Object[] all = {aside ? "" : step, cells[0], cells[1], cells[2], cells[3], cells[4]};
    lines.add(String.format(Locale.ROOT, form, all), "  ");
  }

  private void plain(String title, Grid grid) {
    lines.add("", "");
    lines.add(title + (grid.size() > MOST ? ", the first " + MOST + " of " + grid.size() : ""), "");
    Grid shown = grid.first(MOST);
    for (int i = 0; i < shown.size(); i++) {
      StringBuilder line = new StringBuilder(" ");
      for (String column : shown.columns()) {
        if (column.endsWith("_state") && shown.text(i, column).equals("closed")) {
          continue;
        }
        boolean time = column.endsWith("_ms");
        String value = time ? GridOut.time(shown.number(i, column)) : shown.text(i, column);
        String label = column.replace("_ms", "").replace('_', ' ');
        line.append(' ').append(label).append(' ').append(value).append(';');
      }
      lines.add(line.toString(), "      ");
    }
  }
}
