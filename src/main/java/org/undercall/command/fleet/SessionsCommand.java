package org.undercall.command.fleet;

import java.io.PrintWriter;
import java.time.LocalDate;
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
import picocli.CommandLine.Spec;

/** Lists the sessions of a folder, the one begun last first. */
@Command(
    name = "sessions",
    description = "List the sessions of a folder; a damaged one is listed with its code.",
    mixinStandardHelpOptions = true)
public final class SessionsCommand implements Callable<Integer> {
  /** The day it began; for a damaged session that in the name of its folder. */
  private static final String DAY = "left(coalesce(nullif(s.first_at, ''), f.session), 10)";

  private static final String QUERY =
      "SELECT f.session, coalesce(s.state, 'damaged') AS state, s.title AS procedure, s.revision,"
          + " f.vehicle, s.first_at AS started, s.last_at AS last, s.working_ms, s.n_events AS"
          + " events, (SELECT string_agg(d.step || ': ' || d.what || coalesce(' ' || d.detail, ''),"
          + " '; ' ORDER BY d.step, d.what) FROM due_fact d WHERE d.session = f.session) AS due,"
          + " f.damage FROM file_fact f LEFT JOIN session_fact s ON s.session = f.session"
          + " WHERE (? = '' OR contains(lower(coalesce(s.title, '')), ?))"
          + " AND (? = '' OR contains(lower(coalesce(f.vehicle, '')), ?))"
          + " AND (? = '' OR "
          + DAY
          + " >= ?) AND (? = '' OR "
          + DAY
          + " <= ?)"
          + " AND (? = '' OR coalesce(s.state, 'damaged') = ?)"
          + " AND (NOT ? OR EXISTS (SELECT 1 FROM due_fact d WHERE d.session = f.session))"
          + " ORDER BY s.first_ms DESC NULLS LAST, f.session DESC";

  /** How a session stands. */
  public enum State {
    OPEN,
    COMPLETE,
    DAMAGED
  }

  @Spec private CommandSpec spec;
  @Mixin private FleetOptions options;

  @Option(names = "--csv", description = "Print CSV instead of text.")
  private boolean csv;

  @Option(
      names = "--procedure",
      paramLabel = "WORDS",
      description = "Only with these in its title.")
  private String procedure = "";

  @Option(
      names = "--vehicle",
      paramLabel = "WORDS",
      description = "Only with these in its vehicle.")
  private String vehicle = "";

  @Option(names = "--from", paramLabel = "DATE", description = "Only begun on this day or later.")
  private LocalDate from;

  @Option(names = "--to", paramLabel = "DATE", description = "Only begun on this day or before.")
  private LocalDate to;

  @Option(names = "--state", paramLabel = "STATE", description = "Only open, complete or damaged.")
  private State state;

  @Option(names = "--due", description = "Only with items put off, not tightened or handed over.")
  private boolean due;

  /** Made by the command line reader. */
  public SessionsCommand() {}

  @Override
  public Integer call() throws FleetFault {
    if (options.json && csv) {
      throw new ParameterException(
          spec.commandLine(), "found --json and --csv, expected one of them");
    }
    PrintWriter out = spec.commandLine().getOut();
    try (Fleet fleet = options.open(spec.commandLine().getErr())) {
      Grid grid = list(fleet);
      if (options.json) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("indexMade", fleet.made());
        root.put("sessions", GridOut.objects(grid));
        out.print(GridOut.json(root));
      } else {
        out.print(csv ? GridOut.csv(grid) : text(grid, fleet));
      }
      out.flush();
      return 0;
    }
  }

  private Grid list(Fleet fleet) throws FleetFault {
    String title = procedure.toLowerCase(Locale.ROOT);
    String car = vehicle.toLowerCase(Locale.ROOT);
    String first = from == null ? "" : from.toString();
    String last = to == null ? "" : to.toString();
    String stands = state == null ? "" : state.name().toLowerCase(Locale.ROOT);
    return fleet.query(
        QUERY, title, title, car, car, first, first, last, last, stands, stands, due);
  }

  private static String text(Grid grid, Fleet fleet) throws FleetFault {
    Lines lines = new Lines();
    for (int i = 0; i < grid.size(); i++) {
      String began = grid.text(i, "started").replace('T', ' ') + " ".repeat(16);
      String head = began.substring(0, 16) + "  " + pad(grid.text(i, "state")) + "  ";
      String title = grid.text(i, "procedure") + ", revision " + grid.text(i, "revision");
      lines.add(head + title + "; " + grid.text(i, "vehicle"), " ".repeat(head.length()));
      lines.add("  " + grid.text(i, "session"), "  ");
      for (String words : List.of(grid.text(i, "damage"), grid.text(i, "due"))) {
        if (!words.isBlank()) {
          lines.add("    " + words, "    ");
        }
      }
    }
    lines.add("Sessions: " + grid.size() + ", read anew: " + fleet.read() + ".", "");
    lines.add("Index made " + fleet.made() + "; it is a cache and may be deleted.", "");
    return lines.toString();
  }

  private static String pad(String state) {
    return String.format(Locale.ROOT, "%-8s", state);
  }
}
