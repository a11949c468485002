package org.undercall.command.fleet;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.command.option.SessionsOption;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which sessions. */
final class FleetOptions {
  @Mixin private SessionsOption sessions;

  @Option(names = "--no-index", description = "Keep no index in the folder of sessions.")
  private boolean noIndex;

  @Option(names = "--json", description = "Print JSON instead of text.")
  boolean json;

  /** The time to be written into a new index. */
  static String now() {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(Time.ofMachine().now().wall().withNano(0));
  }

  /** Opens the index; what went other than usual is printed. */
  Fleet open(PrintWriter err) throws Fault {
    Path folder = sessions.folder();
    Fleet fleet = Fleet.open(folder, !noIndex, now(), new SessionExaminer(folder));
    fleet.notices().forEach(err::println);
    err.flush();
    return fleet;
  }
}
