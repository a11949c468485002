package org.undercall.adapter.log;

import java.util.Optional;

/**
 * How a log stands to the sum file beside it.
 *
 * @param kind how
 * @param lines whole lines the log has
 * @param covered lines the sum file was made for, as far as it says
 * @param sum the sum of the log as it is, ready for its next line
 */
record SumState(Kind kind, long lines, long covered, RunningSum sum) {

  /** How a log can stand to its sum file. */
  enum Kind {
    /** The sum is that of the whole log. */
    SAME,
    /** The sum is that of a beginning of the log that ends with a line. */
    BEHIND,
    /** The log is shorter than what the sum was made for. */
    CUT,
    /** The log is long enough, and no beginning of it has the sum. */
    OTHER,
    /** The file is there and has another form. */
    UNREADABLE,
    /** There is no file. */
    ABSENT
  }

  /**
   * Compares a log with the text of its sum file. Bytes after the last line feed do not count.
   *
   * @param log the bytes of the log
   * @param text the text of the sum file; empty if there is none
   */
  static SumState of(byte[] log, Optional<String> text) {
    Optional<SumFile.Said> said = text.flatMap(SumFile::parse);
    RunningSum all = new RunningSum();
    all.add(log, 0, end(log), lines(log));
    if (said.isEmpty()) {
      return new SumState(text.isPresent() ? Kind.UNREADABLE : Kind.ABSENT, all.lines(), 0, all);
    }
    if (matches(all, said.get())) {
      return new SumState(Kind.SAME, all.lines(), all.lines(), all);
    }
    long covered = beginning(log, said.get());
    if (covered >= 0) {
      return new SumState(Kind.BEHIND, all.lines(), covered, all);
    }
    boolean shorter = said.get().lines() > all.lines() || said.get().bytes() > all.bytes();
    return new SumState(shorter ? Kind.CUT : Kind.OTHER, all.lines(), said.get().lines(), all);
  }

  /** How many lines the beginning has that was summed; -1 if none was. */
  private static long beginning(byte[] log, SumFile.Said said) {
    RunningSum sum = new RunningSum();
    long covered = matches(sum, said) ? 0 : -1;
    int start = 0;
    for (int i = 0; i < log.length; i++) {
      if (log[i] == '\n') {
        sum.add(log, start, i + 1, 1);
        start = i + 1;
        covered = matches(sum, said) ? sum.lines() : covered;
      }
    }
    return covered;
  }

  private static int end(byte[] log) {
    int end = log.length;
    while (end > 0 && log[end - 1] != '\n') {
      end--;
    }
    return end;
  }

  private static long lines(byte[] log) {
    long lines = 0;
    for (byte b : log) {
      lines += b == '\n' ? 1 : 0;
    }
    return lines;
  }

  private static boolean matches(RunningSum sum, SumFile.Said said) {
    return said.sha256().equals(sum.hex());
  }

  /**
   * Whether the log may be gone on with as if nothing happened: a crash between a line and its sum
   * leaves the file one line behind, or absent after the first line.
   */
  boolean usual() {
    return kind == Kind.SAME || kind == Kind.BEHIND || (kind == Kind.ABSENT && lines <= 1);
  }

  /** Lines that the sum file counts and the log does not have. */
  long gone() {
    return kind == Kind.CUT ? Math.max(0, covered - lines) : 0;
  }
}
