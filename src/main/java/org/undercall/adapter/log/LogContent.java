package org.undercall.adapter.log;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;

/**
 * What a log holds.
 *
 * @param decisions every whole decision, in order
 * @param dropped the text of a last line that was torn, and so was never confirmed as recorded
 * @param end where the last whole line ends, in bytes
 * @param last the sum of the last whole line
 */
public record LogContent(
    List<Recorded> decisions, Optional<String> dropped, long end, String last) {

  public LogContent {
    decisions = List.copyOf(decisions);
  }

  /**
   * The start of the session, with the hash of its procedure file.
   *
   * @throws Fault if the first decision does not have it
   */
  public SessionEvent.SessionStarted started() throws Fault {
    return started(decisions);
  }

  /** The start of the session that has these decisions, as {@link #started()}. */
  public static SessionEvent.SessionStarted started(List<Recorded> decisions) throws Fault {
    if (!decisions.isEmpty()
        && !decisions.get(0).events().isEmpty()
        && decisions.get(0).events().get(0) instanceof SessionEvent.SessionStarted start) {
      return start;
    }
    String found = decisions.isEmpty() ? "no decision" : "another event";
    throw new Fault(LogCode.NOT_STARTED, "log line 1", found, "the event session-started first");
  }

  /** Whether the session ended with every step closed. */
  public boolean complete() {
    return decisions.stream()
        .flatMap(decision -> decision.events().stream())
        .anyMatch(e -> e instanceof SessionEvent.SessionEnded ended && ended.complete());
  }

  /**
   * Reads the bytes of a log.
   *
   * @throws Fault if a line other than a torn last one is damaged, absent, doubled, out of order or
   *     not understood
   */
  static LogContent of(byte[] bytes, String file) throws Fault {
    List<Recorded> decisions = new ArrayList<>();
    String last = LogLine.FIRST;
    int start = 0;
    while (start < bytes.length) {
      int end = lineEnd(bytes, start);
      String place = file + " line " + (decisions.size() + 1);
      Optional<LogLine.Sealed> line = end < 0 ? Optional.empty() : LogLine.whole(bytes, start, end);
      if (line.isEmpty()) {
        String torn = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
        requireTorn(torn, place);
        return new LogContent(decisions, Optional.of(torn.stripTrailing()), start, last);
      }
      decisions.add(counted(LogLine.read(line.get().text(), last, place), decisions, place));
      last = line.get().sum();
      start = end + 1;
    }
    return new LogContent(decisions, Optional.empty(), start, last);
  }

  /** More than the beginning of one line is no line torn while it was written. */
  private static void requireTorn(String rest, String place) throws Fault {
    String line = rest.endsWith("\n") ? rest.substring(0, rest.length() - 1) : rest;
    if (line.indexOf('\n') >= 0 || LogLine.goesOnAfterSum(line)) {
      throw new Fault(
          LogCode.DAMAGED,
          place,
          "bytes that do not give the sum at the end of the line",
          "the line as it was written");
    }
  }

  private static Recorded counted(Recorded decision, List<Recorded> before, String place)
      throws Fault {
    long expected = before.size() + 1L;
    if (decision.seq() != expected) {
      throw new Fault(LogCode.OUT_OF_COUNT, place, "seq " + decision.seq(), "seq " + expected);
    }
    return decision;
  }

  private static int lineEnd(byte[] bytes, int from) {
    for (int i = from; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        return i;
      }
    }
    return -1;
  }
}
