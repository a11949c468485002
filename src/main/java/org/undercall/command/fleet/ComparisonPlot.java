package org.undercall.command.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.drawing.SidePair;
import org.undercall.adapter.drawing.StepRow;
import org.undercall.adapter.drawing.StepsPlot;
import org.undercall.adapter.fleet.FleetCode;
import org.undercall.port.Fault;

/** A comparison as a picture. */
final class ComparisonPlot {
  private static final String NOTE =
      "Box: quartiles and median, line: shortest to longest. Slow: beyond Tukey's fence, from five"
          + " sessions on; no verdict. As called, not measured by this program.";

  private ComparisonPlot() {}

  /**
   * Draws it.
   *
   * @throws Fault FLT-006 if the file cannot be written
   */
  static void write(Path file, Measure measure, Map<Tables.Name, Grid> tables) throws Fault {
    List<StepRow> rows = rows(tables.get(Tables.Name.STEPS));
    boolean one = !measure.subject().isEmpty();
    List<SidePair> pairs = pairs(tables.get(Tables.Name.SIDES), one ? "" : "median_");
    String title = measure.words().replace("\n", " ");
    try {
      Files.writeString(file, StepsPlot.of(title, NOTE, rows, pairs));
    } catch (IOException e) {
      throw new Fault(
          FleetCode.PLOT_NOT_WRITTEN,
          "--plot " + file,
          "a file that cannot be written (" + Fault.kind(e) + ")",
          "a folder that exists and may be written to");
    }
  }

  /** Steps in their order, but the second side of a step right after the first. */
  private static List<StepRow> rows(Grid steps) {
    Map<String, Integer> places = new HashMap<>();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      places.putIfAbsent(base(steps.text(i, "step")), i);
      order.add(i);
    }
    order.sort(
        Comparator.<Integer>comparingInt(i -> places.get(base(steps.text(i, "step"))))
            .thenComparing(i -> steps.text(i, "step")));
    return order.stream().map(i -> row(steps, i)).toList();
  }

  private static String base(String step) {
    return step.replaceFirst("/.*", "");
  }

  private static StepRow row(Grid steps, int i) {
    Optional<StepRow.Spread> spread =
        steps.number(i, "median_ms").isEmpty()
            ? Optional.empty()
            : Optional.of(
                new StepRow.Spread(
                    steps.whole(i, "sessions"),
                    millis(steps, i, "least_ms"),
                    millis(steps, i, "q1_ms"),
                    millis(steps, i, "median_ms"),
                    millis(steps, i, "q3_ms"),
                    millis(steps, i, "most_ms")));
    return new StepRow(
        steps.text(i, "step").replace("/", ", "),
        steps.number(i, "this_ms").map(Number::doubleValue),
        spread,
        steps.text(i, "verdict").equals("slow"));
  }

  private static List<SidePair> pairs(Grid sides, String kind) {
    List<SidePair> pairs = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      double left = millis(sides, i, "left_" + kind + "ms");
      double right = millis(sides, i, "right_" + kind + "ms");
      pairs.add(
          new SidePair(
              sides.text(i, "step") + (kind.isEmpty() ? unclosed(sides, i) : ""),
              left,
              right,
              words(left, right)));
    }
    return pairs;
  }

  private static String words(double left, double right) {
    if (left == right) {
      return "the same";
    }
    String longer = GridOut.time(Optional.of(Math.abs(right - left)));
    return String.format(Locale.ROOT, "%s %s longer", right > left ? "right" : "left", longer);
  }

  private static String unclosed(Grid sides, int i) {
    StringBuilder words = new StringBuilder();
    for (String side : List.of("left", "right")) {
      String state = sides.text(i, side + "_state");
      words.append(state.equals("closed") ? "" : ", " + side + " " + state);
    }
    return words.toString();
  }

  private static double millis(Grid grid, int row, String column) {
    return grid.number(row, column).orElseThrow().doubleValue();
  }
}
