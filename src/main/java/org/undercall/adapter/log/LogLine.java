package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.security.MessageDigest;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * One decision as a line of the log.
 *
 * <p>The line ends with {@code ,"sum":"<64 hex digits>"}} and a line feed. The sum is the SHA-256
 * of the UTF-8 bytes before that ending; they hold {@code prev}, the sum of the line before, so the
 * lines form a chain. The first line has 64 zeros for {@code prev}.
 */
public final class LogLine {
  /** What the first line has for the sum of the line before. */
  static final String FIRST = "0".repeat(64);

  private static final String SUM_START = ",\"sum\":\"";
  private static final String SUM_END = "\"}";

  /** The steady clock counts nanoseconds in a long. */
  private static final long MOST_MILLIS = Long.MAX_VALUE / 1_000_000;

  private static final int ENDING = SUM_START.length() + FIRST.length() + SUM_END.length();

  private LogLine() {}

  /**
   * A line and what it says.
   *
   * @param text the line without its line feed
   * @param sum its own sum
   */
  record Sealed(String text, String sum) {
    byte[] bytes() {
      return (text + "\n").getBytes(UTF_8);
    }
  }

  static Sealed write(Recorded decision, String prev) {
    ObjectNode node = LogJson.object();
    node.put("seq", decision.seq());
    node.put("at", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(decision.at().wall()));
    node.put("mono", decision.at().monotonicMillis());
    decision.heard().ifPresent(heard -> node.set("heard", HeardJson.write(heard)));
    ArrayNode events = node.putArray("events");
    decision.events().forEach(event -> events.add(EventJson.write(event)));
    node.put("said", decision.said());
    node.put("prev", prev);
    String whole = LogJson.write(node);
    String open = whole.substring(0, whole.length() - 1);
    String sum = Sha256.hex(open.getBytes(UTF_8));
    return new Sealed(open + SUM_START + sum + SUM_END, sum);
  }

  /** The line's own sum if it is whole; empty if a byte was changed or is absent. */
  static Optional<Sealed> whole(byte[] line) {
    return whole(line, 0, line.length);
  }

  /** The same for a line that is a part of some bytes, from one place up to another. */
  static Optional<Sealed> whole(byte[] bytes, int start, int end) {
    int open = end - ENDING;
    if (open < start) {
      return Optional.empty();
    }
    MessageDigest digest = Sha256.digest();
    digest.update(bytes, start, open - start);
    String sum = HexFormat.of().formatHex(digest.digest());
    String ending = new String(bytes, open, ENDING, UTF_8);
    return ending.equals(SUM_START + sum + SUM_END)
        ? Optional.of(new Sealed(new String(bytes, start, end - start, UTF_8), sum))
        : Optional.empty();
  }

  /** Whether a whole line has this number and follows the line with this sum, as it was written. */
  static boolean follows(String line, long seq, String prev) {
    String ending = ",\"prev\":\"" + prev + "\"";
    return line.startsWith("{\"seq\":" + seq + ",")
        && line.startsWith(ending, line.length() - ENDING - ending.length());
  }

  /**
   * Whether bytes follow the ending of a line. The ending's start occurs nowhere else: a quotation
   * mark inside a text is always escaped.
   */
  static boolean goesOnAfterSum(String line) {
    int start = line.indexOf(SUM_START);
    return start >= 0 && line.length() > start + ENDING;
  }

  /** The decision in a whole line. */
  static Recorded read(String text, String prev, String place) throws Fault {
    try {
      JsonNode node = LogJson.read(text);
      String said = member(node, "prev", String.class);
      if (!said.equals(prev)) {
        throw new Fault(LogCode.OUT_OF_CHAIN, "", "prev " + said, "prev " + prev);
      }
      return new Recorded(
          member(node, "seq", Long.class),
          new Moment(wall(node), steady(node)),
          HeardJson.read(node),
          events(node),
          member(node, "said", String.class));
    } catch (Fault e) {
      throw e.within(place);
    }
  }

  private static OffsetDateTime wall(JsonNode node) throws Fault {
    String at = member(node, "at", String.class);
    try {
      return WrittenTime.wall(at);
    } catch (DateTimeException e) {
      throw new Fault(
          LogCode.BAD_MEMBER,
          "member at",
          at,
          "date, time and offset in ISO form, of the years 1 to 9999");
    }
  }

  private static long steady(JsonNode node) throws Fault {
    long mono = member(node, "mono", Long.class);
    if (mono < -MOST_MILLIS || mono > MOST_MILLIS) {
      throw new Fault(
          LogCode.BAD_MEMBER,
          "member mono",
          String.valueOf(mono),
          "milliseconds of the steady clock");
    }
    return mono;
  }

  private static List<SessionEvent> events(JsonNode node) throws Fault {
    List<SessionEvent> events = new ArrayList<>();
    JsonNode array = node.get("events");
    if (array == null || !array.isArray()) {
      throw new Fault(
          LogCode.BAD_MEMBER, "member events", String.valueOf(array), "a list of events");
    }
    for (JsonNode event : array) {
      String id = member(event, "id", String.class);
      Optional<EventKind> kind = EventKind.withId(id);
      if (kind.isEmpty()) {
        String found = "event " + id + " " + event.path("event").asText("");
        throw new Fault(LogCode.UNKNOWN_EVENT, "", found.strip(), "an event this version knows");
      }
      events.add(EventJson.read(kind.get(), event));
    }
    return events;
  }

  static <T> T member(JsonNode node, String name, Class<T> type) throws Fault {
    Form<?> form = Form.of(type);
    JsonNode member = node.get(name);
    if (member == null) {
      throw new Fault(LogCode.BAD_MEMBER, "member " + name, "nothing", form.shape());
    }
    return type.cast(form.fromJson(name, member));
  }
}
