package org.undercall.command.fleet;

import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.FleetFault;
import org.undercall.adapter.fleet.Limits;
import org.undercall.command.option.SessionsOption;
import org.undercall.port.Time;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which sessions, and what may be used for them. */
final class FleetOptions {
  @Mixin private SessionsOption sessions;

  @Option(names = "--no-index", description = "Keep no index in the folder of sessions.")
  private boolean noIndex;

  @Option(
      names = "--memory",
      paramLabel = "MB",
      defaultValue = "512",
      description = "Memory of the engine in megabytes (default: ${DEFAULT-VALUE}).")
  private int memory;

  @Option(
      names = "--threads",
      paramLabel = "N",
      defaultValue = "2",
      description = "Threads of the engine (default: ${DEFAULT-VALUE}).")
  private int threads;

  @Option(names = "--json", description = "Print JSON instead of text.")
  boolean json;

  /** Opens the index; what went other than usual is printed. */
  Fleet open(PrintWriter err) throws FleetFault {
    String now =
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(Time.ofMachine().now().wall().withNano(0));
    Limits limits = new Limits(Math.max(64, memory), Math.max(1, threads));
    Fleet fleet =
        Fleet.open(
            sessions.folder(), !noIndex, limits, now, new SessionExaminer(sessions.folder()));
    fleet.notices().forEach(err::println);
    err.flush();
    return fleet;
  }
}
