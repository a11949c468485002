package org.undercall.command.fleet;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.port.Fault;
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

  @Option(
      names = "--plot",
      paramLabel = "FILE.svg",
      description = "Also draw the times of the steps to an SVG file.")
  private Path plot;

  /** Made by the command line reader. */
  public CompareCommand() {}

  @Override
  public Integer call() throws Fault {
    if (names.isEmpty() == procedure.isEmpty() || (options.json && csv != null)) {
      throw new ParameterException(
          spec.commandLine(), "expected sessions or --procedure, and one of --json and --csv");
    }
    PrintWriter out = spec.commandLine().getOut();
    try (Fleet fleet = options.open(spec.commandLine().getErr())) {
      Measure measure = Measure.of(fleet, names, procedure);
      Map<Tables.Name, Grid> tables = Tables.of(fleet, measure);
      if (plot != null) {
        ComparisonPlot.write(plot, measure, tables);
      }
      if (csv != null) {
        out.print(GridOut.csv(tables.get(csv)));
      } else {
        out.print(options.json ? json(measure, tables) : ComparisonText.of(measure, tables));
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
}
