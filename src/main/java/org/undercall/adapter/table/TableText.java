package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.WorkPhase;

/**
 * A procedure as a table in CSV, which {@link TorqueTable} reads again.
 *
 * @param csv the table, lines above it included
 * @param left what the table cannot hold, in words
 */
public record TableText(String csv, List<String> left) {
  public TableText {
    left = List.copyOf(left);
  }

  /** Writes a procedure. */
  public static TableText of(Procedure procedure) {
    List<Map<Column, String>> rows = new ArrayList<>();
    List<String> left = new ArrayList<>();
    procedure
        .rideHeight()
        .flatMap(RideHeight::arm)
        .ifPresent(arm -> left.add("the arm of the ride height"));
    procedure
        .rideHeight()
        .flatMap(RideHeight::sides)
        .ifPresent(sides -> left.add("how far left and right may lie apart"));
    if (!procedure.loadHolds().equals(Procedure.LOAD_HOLDS)) {
      left.add("how long a confirmed load holds");
    }
    procedure.tools().stream()
        .filter(tool -> tool.uncertainty().isPresent())
        .forEach(tool -> left.add("the uncertainty of " + tool.id()));
    for (WorkPhase phase : procedure.phases()) {
      for (Step step : phase.steps()) {
        for (Map<Column, String> row : StepText.rows(step)) {
          row.put(Column.PHASE, phase.name());
          row.put(Column.SIDE, each(phase.each()));
          rows.add(row);
        }
        if (hasAdaptor(step)) {
          left.add("the adaptor of step " + step.head().id());
        }
        if (anyAngle(step, angle -> angle.finalTorque().isPresent())) {
          left.add("the final torque of step " + step.head().id());
        }
        if (anyAngle(step, angle -> angle.beyondYield().isPresent())) {
          left.add("whether step " + step.head().id() + " reaches yield");
        }
        if (step instanceof Step.Fasten f && leaves(f.fastener().joint().sizes())) {
          left.add("the sizes or the friction of step " + step.head().id());
        }
      }
    }
    return new TableText(printed(procedure, rows), left);
  }

  private static boolean leaves(Sizes sizes) {
    boolean apart = sizes.friction().filter(f -> !f.thread().equals(f.seat())).isPresent();
    return apart || sizes.clamped().isPresent() || sizes.seat().isPresent();
  }

  private static boolean anyAngle(Step step, Predicate<Stage.AngleStage> like) {
    return step instanceof Step.Fasten fasten
        && fasten.fastener().variants().stream()
            .flatMap(v -> v.stages().stream())
            .anyMatch(s -> s instanceof Stage.AngleStage angle && like.test(angle));
  }

  private static String each(Each each) {
    return each == Each.SIDE ? "both" : each.name().toLowerCase(Locale.ROOT);
  }

  private static boolean hasAdaptor(Step step) {
    return step instanceof Step.Fasten fasten
        && fasten.fastener().variants().stream()
            .flatMap(v -> v.stages().stream())
            .anyMatch(s -> s instanceof Stage.TorqueStage torque && torque.dialled().isPresent());
  }

  private static String printed(Procedure procedure, List<Map<Column, String>> rows) {
    Set<Column> columns = EnumSet.noneOf(Column.class);
    rows.forEach(row -> columns.addAll(row.keySet()));
    StringBuilder out = new StringBuilder();
    above(procedure, out);
    line(out, columns.stream().map(Column::label).toList());
    for (Map<Column, String> row : rows) {
      line(out, columns.stream().map(c -> row.getOrDefault(c, "")).toList());
    }
    return out.toString();
  }

  private static void above(Procedure procedure, StringBuilder out) {
    Procedure.About about = procedure.about();
    line(out, List.of("title", about.title()));
    line(out, List.of("vehicle", about.vehicle()));
    line(out, List.of("author", about.author()));
    line(out, List.of("revision", about.revision()));
    line(out, List.of("source", about.values()));
    for (String caution : procedure.cautions()) {
      line(out, List.of("caution", caution));
    }
    if (procedure.rideHeight().isPresent()) {
      String plusMinus = StepText.number(procedure.rideHeight().get().plusMinus());
      line(out, List.of("ride height", plusMinus, "mm"));
    }
    for (Tool tool : procedure.tools()) {
      List<String> cells = new ArrayList<>();
      cells.add("tool");
      cells.add(tool.id());
      cells.add(StepText.number(tool.least().amount()));
      cells.add(StepText.number(tool.most().amount()));
      cells.add(tool.most().unit().symbol());
      tool.calibrated().ifPresent(day -> cells.add(day.toString()));
      if (tool.kind() == Tool.Kind.INDICATING) {
        cells.add("indicating");
      }
      line(out, cells);
    }
  }

  /** A cell that a spreadsheet would take for a formula gets an apostrophe, which is read away. */
  static void line(StringBuilder out, List<String> cells) {
    List<String> safe = cells.stream().map(c -> c.matches("[=+@\\-].*") ? "'" + c : c).toList();
    out.append(CSVFormat.RFC4180.format(safe.toArray())).append("\r\n");
  }

  /** A row to be filled. */
  static Map<Column, String> row() {
    return new EnumMap<>(Column.class);
  }
}
