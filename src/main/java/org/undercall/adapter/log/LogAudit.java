package org.undercall.adapter.log;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Kebab;
import org.undercall.port.Fault;

/**
 * Looks through the bytes of a log for every line that is not as it was written, or not where it
 * was written. It goes on after each finding; the place after a finding is held against what is
 * there, so that one change gives few findings.
 */
final class LogAudit {
  private static final Pattern SEQ = Pattern.compile("^\\{\"seq\":([0-9]{1,18}),");
  private static final Pattern PREV = Pattern.compile(",\"prev\":\"([0-9a-f]{64})\"");
  private static final int SHOWN = 8;

  private final String file;
  private final List<LogFinding> findings = new ArrayList<>();
  private final List<Recorded> decisions = new ArrayList<>();
  private final byte[] bytes;
  private final Map<String, Integer> lineOfSum = new HashMap<>();
  private String last = LogLine.FIRST;
  private long seq;
  private boolean lostTrack;

  private LogAudit(byte[] bytes, String file) {
    this.bytes = bytes;
    this.file = file;
  }

  /**
   * What was found.
   *
   * @param findings in the order of the lines
   * @param decisions those of all lines that could be read
   * @param lines how many lines end with a line feed
   * @param rest the text after the last line feed; empty if there is none
   */
  record Result(
      List<LogFinding> findings, List<Recorded> decisions, long lines, Optional<String> rest) {}

  static Result of(byte[] bytes, String file) {
    LogAudit audit = new LogAudit(bytes, file);
    int lines = 0;
    int start = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        audit.line(++lines, start, i);
        start = i + 1;
      }
    }
    String rest = text(bytes, start, bytes.length);
    return new Result(
        List.copyOf(audit.findings),
        List.copyOf(audit.decisions),
        lines,
        rest.isEmpty() ? Optional.empty() : Optional.of(rest));
  }

  private static String text(byte[] bytes, int start, int end) {
    return new String(bytes, start, end - start, StandardCharsets.UTF_8);
  }

  private void line(int number, int start, int end) {
    Optional<LogLine.Sealed> sealed = LogLine.whole(bytes, start, end);
    if (sealed.isEmpty()) {
      add(
          LogCode.DAMAGED,
          number,
          number(text(bytes, start, end)),
          "bytes that do not give the sum at the end of the line",
          "the line as it was written");
      lostTrack = true;
      return;
    }
    if (!lostTrack && LogLine.follows(sealed.get().text(), seq + 1, last)) {
      read(number, OptionalLong.of(seq + 1), sealed.get(), last);
      seq++;
    } else {
      strange(number, sealed.get());
    }
    last = sealed.get().sum();
    lostTrack = false;
  }

  /** A whole line that is not the next one, or that follows one that is not whole. */
  private void strange(int number, LogLine.Sealed sealed) {
    OptionalLong said = number(sealed.text());
    String prev = group(PREV, sealed.text());
    if (!lostTrack && !prev.equals(last)) {
      add(LogCode.OUT_OF_CHAIN, number, said, follows(number, sealed, prev), next());
    } else if (said.orElse(0) != seq + 1 && !lostTrack) {
      add(LogCode.OUT_OF_COUNT, number, said, "seq " + said.orElse(0), "seq " + (seq + 1));
    }
    read(number, said, sealed, prev);
    seq = said.orElse(seq + 1);
  }

  private void read(int number, OptionalLong said, LogLine.Sealed line, String prev) {
    try {
      Recorded decision = LogLine.read(line.text(), prev, file);
      decisions.add(decision);
      for (SessionEvent event : decision.events()) {
        if (event instanceof SessionEvent.LogDoubted doubted) {
          String lost = doubted.lines().map(n -> ", " + n + " lines").orElse("");
          add(
              LogCode.LOSS_RECORDED,
              number,
              said,
              Kebab.of(doubted.trouble()) + lost,
              "a log that was whole whenever it was opened");
        }
      }
    } catch (Fault e) {
      add(e.code(), number, said, e.first().found(), e.first().expected());
    }
  }

  private String next() {
    return "seq " + (seq + 1) + " after the sum " + last.substring(0, SHOWN) + "…";
  }

  /** What a line out of chain is: one that is there twice, or the one it follows. */
  private String follows(int number, LogLine.Sealed line, String prev) {
    if (lineOfSum.isEmpty()) {
      findSums();
    }
    Integer first = lineOfSum.get(line.sum());
    if (first != null && first != number) {
      return "line " + first + " once more";
    }
    if (prev.equals(LogLine.FIRST)) {
      return "a first line";
    }
    Integer before = lineOfSum.get(prev);
    return before != null
        ? "a line that follows line " + before
        : "a line that follows one that is not here (sum " + prev.substring(0, SHOWN) + "…)";
  }

  private void findSums() {
    int number = 0;
    int start = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        int line = ++number;
        LogLine.whole(bytes, start, i).ifPresent(s -> lineOfSum.putIfAbsent(s.sum(), line));
        start = i + 1;
      }
    }
  }

  private static OptionalLong number(String text) {
    String digits = group(SEQ, text);
    return digits.isEmpty() ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(digits));
  }

  private static String group(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    String found = "";
    while (matcher.find()) {
      found = matcher.group(1);
    }
    return found;
  }

  private void add(Fault.Code code, int line, OptionalLong said, String found, String expected) {
    findings.add(new LogFinding(code, file, OptionalLong.of(line), said, found, expected));
  }
}
