package org.undercall.core.fastening;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The ISO metric threads from M4 to M24 with their coarse and fine pitches (ISO 261, ISO 262). */
public final class ThreadCatalogue {
  private static final Pattern DESIGNATION =
      Pattern.compile("M([0-9]{1,2})(?:\\s?[x×]\\s?([0-9](?:\\.[0-9]{1,2})?))?");

  /** By nominal diameter: the coarse pitch first, then the fine ones. */
  private static final Map<Integer, List<Double>> PITCHES = pitches();

  private ThreadCatalogue() {}

  private static Map<Integer, List<Double>> pitches() {
    Map<Integer, List<Double>> table = new TreeMap<>();
    table.put(4, List.of(0.7, 0.5));
    table.put(5, List.of(0.8, 0.5));
    table.put(6, List.of(1.0, 0.75));
    table.put(7, List.of(1.0, 0.75));
    table.put(8, List.of(1.25, 1.0, 0.75));
    table.put(10, List.of(1.5, 1.25, 1.0, 0.75));
    table.put(12, List.of(1.75, 1.5, 1.25, 1.0));
    table.put(14, List.of(2.0, 1.5, 1.25, 1.0));
    table.put(16, List.of(2.0, 1.5, 1.0));
    table.put(18, List.of(2.5, 2.0, 1.5, 1.0));
    table.put(20, List.of(2.5, 2.0, 1.5, 1.0));
    table.put(22, List.of(2.5, 2.0, 1.5, 1.0));
    table.put(24, List.of(3.0, 2.0, 1.5, 1.0));
    return table;
  }

  /**
   * The thread with this designation, for example {@code M12}, {@code M12x1.5} or {@code M12×1.5};
   * empty if the text is no designation or the standard has no such pitch.
   */
  public static Optional<ThreadSize> find(String designation) {
    Matcher matcher = DESIGNATION.matcher(designation.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int diameter = Integer.parseInt(matcher.group(1));
    List<Double> pitches = PITCHES.getOrDefault(diameter, List.of());
    Optional<Double> wanted =
        Optional.ofNullable(matcher.group(2)).map(p -> new BigDecimal(p).doubleValue());
    return pitches.stream()
        .filter(p -> wanted.isEmpty() || wanted.get().equals(p))
        .findFirst()
        .map(p -> new ThreadSize(Length.mm(diameter), Length.mm(p)));
  }

  /** All threads, by diameter, the coarse one first. */
  public static List<ThreadSize> all() {
    return PITCHES.entrySet().stream()
        .flatMap(e -> e.getValue().stream().map(p -> thread(e.getKey(), p)))
        .toList();
  }

  private static ThreadSize thread(int diameter, double pitch) {
    return new ThreadSize(Length.mm(diameter), Length.mm(pitch));
  }
}
