package org.undercall.command.fleet;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.FleetFault;
import org.undercall.adapter.fleet.Grid;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares a session with earlier ones of its procedure, and left with right. */
@Command(
    name = "compare",
    description = "Compare a session with earlier ones of its procedure, and left with right.",
    mixinStandardHelpOptions = true)
public final class CompareCommand implements Callable<Integer> {
  private static final int MOST = 10;

  @Spec private CommandSpec spec;
  @Mixin private FleetOptions options;

  @Parameters(
      arity = "0..*",
      paramLabel = "SESSION",
      description = "Names of sessions: one is held against earlier ones, of several the last.")
  private List<String> names = List.of();

  @Option(names = "--procedure", paramLabel = "NAME", description = "All sessions of this title.")
  private String procedure = "";

  @Option(
      names = "--csv",
      arity = "0..1",
      paramLabel = "TABLE",
      fallbackValue = "STEPS",
      description = "Print CSV: steps (if no table is named), sides, values, refusals or phrases.")
  private Tables.Name csv;

  /** Made by the command line reader. */
  public CompareCommand() {}

  @Override
  public Integer call() throws FleetFault {
    if (names.isEmpty() == procedure.isEmpty() || (options.json && csv != null)) {
      throw new ParameterException(
          spec.commandLine(), "expected sessions or --procedure, and one of --json and --csv");
    }
    PrintWriter out = spec.commandLine().getOut();
    try (Fleet fleet = options.open(spec.commandLine().getErr())) {
      Measure measure = Measure.of(fleet, names, procedure);
      Map<Tables.Name, Grid> tables = Tables.of(fleet, measure);
      if (csv != null) {
        out.print(GridOut.csv(tables.get(csv)));
      } else {
        out.print(options.json ? json(measure, tables) : text(measure, tables));
      }
      out.flush();
      return 0;
    }
  }

  private static String json(Measure measure, Map<Tables.Name, Grid> tables) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("session", measure.subject());
    root.put("sessions", measure.base().size());
    root.put("measure", measure.words());
    tables.forEach((n, t) -> root.put(n.name().toLowerCase(Locale.ROOT), GridOut.objects(t)));
    return GridOut.json(root);
  }

  private static String text(Measure measure, Map<Tables.Name, Grid> tables) {
    StringBuilder text = new StringBuilder();
    add(text, measure.words());
    add(text, "Time at work in minutes and seconds; slow is beyond Tukey's fence.");
    add(text, form("step", "this", "median", "quartiles", "sessions", ""));
    Grid steps = tables.get(Tables.Name.STEPS);
    for (int i = 0; i < steps.size(); i++) {
      String spread =
          GridOut.time(steps.number(i, "q1_ms")) + "-" + GridOut.time(steps.number(i, "q3_ms"));
      add(
          text,
          form(
              steps.text(i, "step"),
              GridOut.time(steps.number(i, "this_ms")),
              GridOut.time(steps.number(i, "median_ms")),
              spread,
              steps.text(i, "sessions"),
              steps.text(i, "verdict")));
    }
    for (Tables.Name name : Tables.Name.values()) {
      if (name != Tables.Name.STEPS) {
        plain(text, name.title(), tables.get(name));
      }
    }
    return text.toString();
  }

  private static String form(String step, String own, String median, String spread, String... n) {
    return String.format(
        Locale.ROOT,
        "%-30s %7s %7s %13s %8s %s",
        GridOut.cut(step, 30),
        own,
        median,
        spread,
        n[0],
        n[1]);
  }

  private static void plain(StringBuilder text, String title, Grid grid) {
    add(text, "");
    add(text, title + (grid.size() > MOST ? ", the first " + MOST + " of " + grid.size() : ""));
    Grid shown = grid.first(MOST);
    for (int i = 0; i < shown.size(); i++) {
      StringBuilder line = new StringBuilder(" ");
      for (String column : shown.columns()) {
        boolean time = column.endsWith("_ms");
        String value = time ? GridOut.time(shown.number(i, column)) : shown.text(i, column);
        String label = column.replace("_ms", "").replace('_', ' ');
        line.append(' ').append(label).append(' ').append(value).append(';');
      }
      add(text, line.toString());
    }
  }

  private static void add(StringBuilder text, String line) {
    text.append(GridOut.cut(line.stripTrailing(), 80)).append('\n');
  }
}
