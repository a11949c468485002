package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.WorkPhase;

/** A procedure as a table in CSV, which {@link TorqueTable} reads again. */
public final class TableText {
  private TableText() {}

  /** The table, lines above it included. */
  public static String of(Procedure procedure) {
    List<Map<Column, String>> rows = new ArrayList<>();
    for (WorkPhase phase : procedure.phases()) {
      for (Step step : phase.steps()) {
        for (Map<Column, String> row : StepText.rows(step)) {
          row.put(Column.PHASE, phase.name());
          row.put(Column.SIDE, each(phase.each()));
          rows.add(row);
        }
      }
    }
    return printed(procedure, rows);
  }

  private static String each(Each each) {
    return each == Each.SIDE ? "both" : each.name().toLowerCase(Locale.ROOT);
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

  private static List<String> withBrief(String word, String text, Optional<String> brief) {
    return brief.map(b -> List.of(word, text, b)).orElse(List.of(word, text));
  }

  private static void above(Procedure procedure, StringBuilder out) {
    Procedure.About about = procedure.about();
    line(out, List.of("title", about.title()));
    line(out, List.of("vehicle", about.vehicle()));
    line(out, List.of("author", about.author()));
    line(out, List.of("revision", about.revision()));
    line(out, withBrief("source", about.values(), about.valuesBrief()));
    for (Caution caution : procedure.cautions()) {
      line(out, withBrief("caution", caution.text(), caution.brief()));
    }
    procedure.rideHeight().ifPresent(height -> rideHeight(height, out));
    if (!procedure.loadHolds().equals(Procedure.LOAD_HOLDS)) {
      line(out, List.of("load holds", procedure.loadHolds().toMinutes() + " minutes"));
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
      tool.uncertainty().ifPresent(percent -> cells.add(StepText.number(percent) + " %"));
      line(out, cells);
    }
  }

  private static void rideHeight(RideHeight height, StringBuilder out) {
    List<String> cells = new ArrayList<>(List.of("ride height"));
    cells.add(StepText.number(height.plusMinus()));
    cells.add("mm");
    height.sides().ifPresent(sides -> cells.add("sides " + StepText.number(sides)));
    line(out, cells);
    height
        .arm()
        .ifPresent(
            arm ->
                line(
                    out,
                    List.of(
                        "ride height arm",
                        "length " + StepText.number(arm.length()),
                        "ride " + StepText.number(arm.ride()),
                        "droop " + StepText.number(arm.droop()),
                        "bump " + StepText.number(arm.bump()),
                        "preset limit " + StepText.number(arm.presetLimit()),
                        "ratio " + StepText.number(arm.ratio()))));
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
