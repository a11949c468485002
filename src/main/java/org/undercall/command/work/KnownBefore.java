package org.undercall.command.work;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import org.undercall.core.reply.Lesson;

/**
 * What technicians know from earlier sessions, in a file. A line has a name and the day and names
 * of what was learned last; another one for each procedure that was worked to its end has the name,
 * a slash, the procedure's checksum, and the day. Who is not named knows nothing.
 *
 * @param file which may be absent
 * @param today on which lines older than {@link #FORGOTTEN_AFTER_DAYS} no longer count
 */
record KnownBefore(Path file, LocalDate today) {
  /** A choice of this program. */
  static final int FORGOTTEN_AFTER_DAYS = 30;

  /**
   * What a technician knows before a job.
   *
   * @param procedure the checksum of its procedure
   */
  Set<Lesson> of(Optional<String> technician, String procedure) {
    Set<Lesson> known = EnumSet.noneOf(Lesson.class);
    if (technician.isPresent()) {
      Properties all = read();
      String line = all.getProperty(technician.get(), "");
      Lesson.named(line).stream().filter(Lesson::carried).forEach(known::add);
      if (all.containsKey(key(technician.get(), procedure))) {
        known.add(Lesson.TITLES);
        known.add(Lesson.SET);
      }
    }
    return known;
  }

  /**
   * Keeps what a technician knows after a job. What stood in the file stays if that fails.
   *
   * @param done whether it was worked to its end
   */
  void keep(Optional<String> technician, Set<Lesson> known, String procedure, boolean done) {
    if (technician.isEmpty()) {
      return;
    }
    Properties all = read();
    Set<Lesson> carried = EnumSet.noneOf(Lesson.class);
    known.stream().filter(Lesson::carried).forEach(carried::add);
    all.setProperty(technician.get(), today + " " + Lesson.names(carried));
    if (done) {
      all.setProperty(key(technician.get(), procedure), today.toString());
    }
    new KeptLines(file).write(all, "what each technician knows from earlier sessions");
  }

  private static String key(String technician, String procedure) {
    return technician + "/" + procedure;
  }

  /** The lines that still count; a file that cannot be read has none. */
  private Properties read() {
    Properties all = new KeptLines(file).read();
    all.values().removeIf(line -> !counts(line.toString()));
    return all;
  }

  private boolean counts(String line) {
    try {
      LocalDate day = LocalDate.parse(line.split(" ", 2)[0]);
      return !day.isAfter(today) && day.plusDays(FORGOTTEN_AFTER_DAYS).isAfter(today);
    } catch (DateTimeException e) {
      return false;
    }
  }
}
