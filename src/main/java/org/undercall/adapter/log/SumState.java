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
    RunningSum sum = new RunningSum();
    long covered = matches(sum, said) ? 0 : -1;
    int start = 0;
    for (int i = 0; i < log.length; i++) {
      if (log[i] == '\n') {
        sum.add(java.util.Arrays.copyOfRange(log, start, i + 1));
        start = i + 1;
        covered = matches(sum, said) ? sum.lines() : covered;
      }
    }
    if (said.isEmpty()) {
      return new SumState(text.isPresent() ? Kind.UNREADABLE : Kind.ABSENT, sum.lines(), 0, sum);
    }
    if (covered >= 0) {
      Kind kind = covered == sum.lines() ? Kind.SAME : Kind.BEHIND;
      return new SumState(kind, sum.lines(), covered, sum);
    }
    boolean shorter = said.get().lines() > sum.lines() || said.get().bytes() > sum.bytes();
    return new SumState(shorter ? Kind.CUT : Kind.OTHER, sum.lines(), said.get().lines(), sum);
  }

  private static boolean matches(RunningSum sum, Optional<SumFile.Said> said) {
    return said.isPresent() && said.get().sha256().equals(sum.hex());
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
