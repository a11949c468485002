package org.undercall.adapter.log;

import java.util.Optional;
import java.util.OptionalLong;

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

  /**
   * What is not as it was written, by the sum; empty if it shows nothing.
   *
   * @param log the name of the file of the log
   */
  Optional<LogFinding> finding(String log) {
    String beside = log + ".sha256";
    return switch (kind) {
      case SAME, BEHIND -> Optional.empty();
      case CUT -> Optional.of(cut(log));
      case OTHER ->
          Optional.of(
              new LogFinding(
                  LogCode.OTHER_SUM,
                  beside,
                  "a sum that no beginning of the log has",
                  "the sum of the log, or of its beginning up to the end of a line"));
      case UNREADABLE ->
          Optional.of(
              new LogFinding(LogCode.NO_SUM, beside, "another form", "the form of sha256sum"));
      case ABSENT ->
          usual()
              ? Optional.empty()
              : Optional.of(
                  new LogFinding(
                      LogCode.NO_SUM,
                      beside,
                      "no file, so that lines cut off the end would leave no trace",
                      "the sum of the log"));
    };
  }

  private LogFinding cut(String log) {
    long first = Math.max(1, lines + 1);
    String expected =
        covered > lines
            ? "lines " + first + " to " + covered + ", which the sum file counts"
            : "as many bytes as the sum file counts";
    return new LogFinding(
        LogCode.LINES_GONE,
        log,
        OptionalLong.of(first),
        OptionalLong.empty(),
        lines + " whole lines",
        expected);
  }
}
