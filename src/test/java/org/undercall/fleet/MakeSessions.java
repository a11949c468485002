package org.undercall.fleet;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Recorded;
import org.undercall.port.Fault;

/**
 * Makes many sessions of the demonstration procedures; the same seed gives the same bytes. Nobody
 * did them, and their values are invented.
 */
public final class MakeSessions {
  private static final List<String> PROCEDURES =
      List.of("demo-lateral-link", "light-van-rear-axle");
  private static final OffsetDateTime FIRST = OffsetDateTime.parse("2025-01-07T07:30:00+01:00");
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);

  private MakeSessions() {}

  /** Makes them. Arguments: how many, the folder, the seed. */
  public static void main(String[] args) throws IOException, Fault {
    long events = make(Integer.parseInt(args[0]), Path.of(args[1]), Long.parseLong(args[2]));
    System.out.printf(Locale.ROOT, "%s sessions, %,d events%n", args[0], events);
  }

  /** Makes them and counts their events. */
  static long make(int sessions, Path folder, long seed) throws IOException, Fault {
    SplittableRandom random = new SplittableRandom(seed);
    OffsetDateTime start = FIRST;
    long events = 0;
    for (int i = 0; i < sessions; i++) {
      String name = PROCEDURES.get(random.nextInt(4) == 0 ? 0 : 1);
      Path file = Path.of("shared", "procedures", name + ".json");
      LoadedProcedure loaded = ProcedureFile.load(file);
      List<Recorded> log = new MadeSession(loaded, start, random.split()).work();
      events += log.stream().mapToLong(d -> d.events().size()).sum();
      byte[] procedure = loaded.wholeBytes();
      WrittenLog.write(folder.resolve(STAMP.format(start) + "-" + name), procedure, log);
      start = start.plusSeconds(600 + random.nextInt(6000));
    }
    return events;
  }
}
