package org.undercall.command.fleet;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.port.Fault;
import org.undercall.text.Shown;
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

  @Option(
      names = "--car",
      paramLabel = "ID",
      description =
          "What is open of the car with this registration or VIN: due, put off, found, missing; with"
              + " what was done since.")
  private String car;

  /** Made by the command line reader. */
  public SessionsCommand() {}

  @Override
  public Integer call() throws Fault {
    if (options.json && csv) {
      throw new ParameterException(
          spec.commandLine(), "found --json and --csv, expected one of them");
    }
    PrintWriter out = spec.commandLine().getOut();
    try (Fleet fleet = options.open(spec.commandLine().getErr())) {
      Grid grid = car == null ? list(fleet) : OfCar.of(fleet, car);
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

  private Grid list(Fleet fleet) throws Fault {
    List<Listed> listed = new ArrayList<>();
    fleet.each(
        row -> {
          Listed one = Listed.of(row);
          if (wanted(one)) {
            listed.add(one);
          }
        });
    listed.sort(Listed.LAST_FIRST);
    return new Grid(Listed.COLUMNS, listed.stream().map(Listed::cells).toList());
  }

  private boolean wanted(Listed one) {
    return one.title().toLowerCase(Locale.ROOT).contains(procedure.toLowerCase(Locale.ROOT))
        && one.vehicle().toLowerCase(Locale.ROOT).contains(vehicle.toLowerCase(Locale.ROOT))
        && (from == null || one.day().compareTo(from.toString()) >= 0)
        && (to == null || one.day().compareTo(to.toString()) <= 0)
        && (state == null || one.state().equals(state.name().toLowerCase(Locale.ROOT)))
        && (!due || one.due().isPresent());
  }

  private String text(Grid grid, Fleet fleet) throws Fault {
    if (car != null) {
      return grid.size() == 0
          ? "No session names the car " + Shown.plain(car) + ".\n"
          : OfCar.text(grid);
    }
    Lines lines = new Lines();
    for (int i = 0; i < grid.size(); i++) {
      String began = grid.text(i, "started").replace('T', ' ') + " ".repeat(16);
      String head =
          began.substring(0, 16)
              + "  "
              + pad(Listed.shown(grid.text(i, "state"), grid.text(i, "verdict")))
              + "  ";
      String title = grid.text(i, "procedure") + ", revision " + grid.text(i, "revision");
      lines.add(head + title + "; " + grid.text(i, "vehicle"), " ".repeat(head.length()));
      lines.add("  " + grid.text(i, "session"), "  ");
      String marks = Listed.marks(grid.text(i, "record"), grid.text(i, "verdict"));
      for (String words : List.of(marks, grid.text(i, "damage"), grid.text(i, "due"))) {
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
