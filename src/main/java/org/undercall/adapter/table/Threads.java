package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;

/**
 * Reads threads: metric ones with their pitch by ISO 261, unified ones by the coarse and fine
 * series of ASME B1.1 (from memory).
 */
final class Threads {
  private static final Pattern METRIC =
      Pattern.compile(
          "M([1-9][0-9]?(?:\\.[0-9])?)(?:[xX×*/-]([0-9](?:\\.[0-9]{1,2})?))?(?:[xX×*/-]([1-9][0-9]{1,2})(?:MM)?)?");

  /** A size, its threads to the inch if stated, its series. */
  private static final Pattern UNIFIED =
      Pattern.compile(
          "(#(?:[0-9]|1[0-2])|[1-9]|(?:[1-9] )?[1-9][0-9]?/(?:2|4|8|16))\"?(?: ?[-–] ?([1-9][0-9]?))?"
              + " ?(UNC|UNF|UNEF|UNS|UN)");

  private static final Pattern SERIES_FIRST =
      Pattern.compile("(UNC|UNF) ?(#?[0-9][0-9 /]*?)\"?(?: ?[-–xX×] ?([1-9][0-9]?))?");

  /** Threads to the inch by size: coarse, fine. */
  private static final Map<String, List<String>> SERIES =
      Map.ofEntries(
          Map.entry("#8", List.of("32", "36")),
          Map.entry("#10", List.of("24", "32")),
          Map.entry("#12", List.of("24", "28")),
          Map.entry("1/4", List.of("20", "28")),
          Map.entry("5/16", List.of("18", "24")),
          Map.entry("3/8", List.of("16", "24")),
          Map.entry("7/16", List.of("14", "20")),
          Map.entry("1/2", List.of("13", "20")),
          Map.entry("9/16", List.of("12", "18")),
          Map.entry("5/8", List.of("11", "18")),
          Map.entry("3/4", List.of("10", "16")),
          Map.entry("7/8", List.of("9", "14")),
          Map.entry("1", List.of("8", "12")),
          Map.entry("1 1/8", List.of("7", "12")),
          Map.entry("1 1/4", List.of("7", "12")));

  /** Width across the flats of a hexagon, by nominal diameter in mm: ISO 272, from memory. */
  private static final Map<String, Integer> HEXAGONS =
      Map.ofEntries(
          Map.entry("4", 7),
          Map.entry("5", 8),
          Map.entry("6", 10),
          Map.entry("7", 11),
          Map.entry("8", 13),
          Map.entry("10", 16),
          Map.entry("12", 18),
          Map.entry("14", 21),
          Map.entry("16", 24),
          Map.entry("18", 27),
          Map.entry("20", 30),
          Map.entry("22", 34),
          Map.entry("24", 36));

  private Threads() {}

  /** The hexagon of a metric thread, as {@link #read} has it, in mm; empty if there is none. */
  static Optional<Integer> hexagon(String thread) {
    Matcher metric = METRIC.matcher(thread.toUpperCase(Locale.ROOT));
    return metric.matches() ? Optional.ofNullable(HEXAGONS.get(metric.group(1))) : Optional.empty();
  }

  /** The thread as a procedure has it; empty if the text is none, or says no pitch. */
  static Optional<String> read(String text) {
    String plain = text.toUpperCase(Locale.ROOT).strip();
    return metric(plain).or(() -> unified(plain));
  }

  private static Optional<String> metric(String plain) {
    Matcher thread =
        METRIC.matcher(
            plain.replace(',', '.').replaceAll(" ?([X×*/-]) ?", "$1").replace(" MM", "MM"));
    if (!thread.matches() || thread.group(2) == null) {
      return Optional.empty();
    }
    String pitch = Amounts.tidy(new BigDecimal(thread.group(2))).toPlainString();
    String named =
        "M" + Amounts.tidy(new BigDecimal(thread.group(1))).toPlainString() + "x" + pitch;
    boolean inTable = sizes(thread.group(1)).isEmpty() || ThreadCatalogue.find(named).isPresent();
    return Optional.of(named).filter(name -> inTable);
  }

  private static Optional<String> unified(String plain) {
    Matcher first = SERIES_FIRST.matcher(plain);
    String usual =
        first.matches()
            ? first.group(2).strip()
                + (first.group(3) == null ? " " : "-" + first.group(3) + " ")
                + first.group(1)
            : plain;
    Matcher thread = UNIFIED.matcher(usual);
    if (!thread.matches()) {
      return Optional.empty();
    }
    String series = thread.group(3);
    List<String> table = SERIES.getOrDefault(thread.group(1), List.of());
    boolean standard = !table.isEmpty() && series.matches("UNC|UNF");
    Optional<String> listed =
        Optional.of(series).filter(s -> standard).map(s -> table.get(s.equals("UNC") ? 0 : 1));
    Optional<String> stated = Optional.ofNullable(thread.group(2));
    boolean agree = listed.isEmpty() || stated.isEmpty() || listed.equals(stated);
    return stated
        .or(() -> listed)
        .filter(s -> agree)
        .map(s -> thread.group(1) + "-" + s + " " + series);
  }

  /** The standard threads of the diameter that a text names. */
  static List<String> possible(String text) {
    String plain = text.toUpperCase(Locale.ROOT).replace(',', '.').replace(" ", "");
    Matcher metric = Pattern.compile("M([0-9]{1,2})(?:[^0-9].*)?").matcher(plain);
    if (metric.matches()) {
      return sizes(metric.group(1)).stream().map(Threads::named).toList();
    }
    return SERIES.entrySet().stream()
        .filter(size -> plain.matches("\"?" + size.getKey() + "(?![0-9/]).*"))
        .flatMap(
            size ->
                Stream.of(
                    size.getKey() + "-" + size.getValue().get(0) + " UNC",
                    size.getKey() + "-" + size.getValue().get(1) + " UNF"))
        .toList();
  }

  private static List<ThreadSize> sizes(String diameter) {
    double wanted = Double.parseDouble(diameter);
    return ThreadCatalogue.all().stream()
        .filter(size -> size.diameter().millimetres() == wanted)
        .toList();
  }

  private static String named(ThreadSize size) {
    return "M" + plain(size.diameter()) + "x" + plain(size.pitch());
  }

  private static String plain(Length length) {
    return Amounts.tidy(BigDecimal.valueOf(length.millimetres())).toPlainString();
  }
}
