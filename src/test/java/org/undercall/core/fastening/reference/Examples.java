package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.ThreadMechanics;
import org.undercall.core.fastening.ThreadSize;

/**
 * Worked examples from their inputs to every result that is printed.
 *
 * @param id its number
 * @param source where it was read
 * @param results what became of its results, in the order of the source
 */
record Examples(String id, String source, List<RowUse> results) {
  static final String LECTURES = "15_worked_examples_vdi2230";
  static final String MORE = "23_worked_examples_more";

  private static final String OTHER = "a quantity or method that the program does not have";

  /** Why a result has no computation; a formula's own steps count as inputs. */
  private static final Map<String, String> LEFT =
      Map.ofEntries(
          entry("A1 x", "the substitution area of an older edition, for which we have the cone"),
          entry(
              "A1 A_ers", "the substitution area of an older edition, for which we have the cone"),
          entry("B1 M_Lt", "the torque that loosens"),
          entry("B1 M_LG", "the torque that loosens"),
          entry("J1 sigma_ASV", "endurance under a swinging load"),
          entry("J1 SD", "endurance under a swinging load"),
          entry("J2 sigma_ASV", "endurance under a swinging load"),
          entry("J2 SD", "endurance under a swinging load"),
          entry("J2 m_nut", "a stripping area of 0.875 and 0.75 of the circle"),
          entry("J2 m_bolt", "a stripping area of 0.875 and 0.75 of the circle"),
          entry("23-3 km all steel, Wileman", "an exponential fit, for which we have the cone"),
          entry("23-4 km", "an exponential fit, for which we have the cone"),
          entry("23-4 C with eq. 8-23", "an exponential fit, for which we have the cone"),
          entry("23-23 slip threshold", "slip and loosening under shear"),
          entry("23-23 loss a cycle", "slip and loosening under shear"),
          entry("23-23 clamp at FA", "a force ratio that is given, not computed"),
          entry("23-23 separation load", "a force ratio that is given, not computed"),
          entry("23-24 K", "a fit of K to friction"));

  /** Of the source's example only these steps are in the table. */
  private static final List<String> CUT = List.of("15-D2");

  private static final List<String> STEPS =
      List.of("l grip", "LT", "ld", "lt", "numerator", "denominator", "ratio", "ln", "Dc");

  static RowUse lecture(CSVRecord row) {
    String example = row.get("example");
    if (example.equals("H1")) {
      return ConeNumbers.use(row);
    }
    return Stream.of(LectureExamples.ALL, BookExamples.ALL, HandExamples.ALL)
        .filter(all -> all.containsKey(example))
        .map(all -> use(row, example, all.get(example)))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no example " + example));
  }

  static RowUse more(CSVRecord row) {
    return use(row, row.get("id"), MoreExamples.ALL.get(row.get("id")));
  }

  private static RowUse use(CSVRecord row, String example, Function<Given, Results> solver) {
    String symbol = row.get("symbol");
    if (row.get("kind").equals("input") || STEPS.contains(symbol)) {
      return RowUse.input(row);
    }
    if (example.equals("23-25")) {
      return RowUse.left(row, "shares that do not add up to the whole (84.6 for 83.8)");
    }
    String name = example + " " + symbol;
    if (name.equals("23-23 friction needed to be self-locking")) {
      double lead = ThreadMechanics.leadAngle(ThreadSize.of("M16")).inRadians();
      double ours = Math.tan(lead) * Math.cos(Math.toRadians(30));
      return RowUse.wrong(row, Group.EXAMPLES, symbol, ours, "divided by cos 30° instead of times");
    }
    Optional<Double> ours = solver.apply(Given.of(rowsOf(row, example))).of(symbol);
    return ours.map(value -> checked(row, symbol, value))
        .orElseGet(() -> RowUse.left(row, LEFT.getOrDefault(name, OTHER)));
  }

  private static RowUse checked(CSVRecord row, String symbol, double value) {
    return RowUse.checked(row, Group.EXAMPLES, symbol, value / Scale.of(row.get("unit")));
  }

  private static List<CSVRecord> rowsOf(CSVRecord row, String example) {
    boolean lecture = row.get("id").startsWith("15-");
    return Rows.of(lecture ? LECTURES : MORE).stream()
        .filter(r -> r.get(lecture ? "example" : "id").equals(example))
        .toList();
  }

  /** All examples with a computation, each with what became of its printed results. */
  static List<Examples> all() {
    Stream<String> lectures =
        Rows.of(LECTURES).stream().map(r -> r.get("example")).filter(e -> !e.equals("H1"));
    Stream<String> more = Rows.of(MORE).stream().map(r -> r.get("id"));
    return Stream.concat(
            lectures.distinct().map(Examples::lectures), more.distinct().map(Examples::more))
        .toList();
  }

  private static Examples lectures(String example) {
    List<CSVRecord> rows =
        Rows.of(LECTURES).stream().filter(r -> r.get("example").equals(example)).toList();
    return of("15-" + example, rows, Examples::lecture);
  }

  private static Examples more(String id) {
    List<CSVRecord> rows = Rows.of(MORE).stream().filter(r -> r.get("id").equals(id)).toList();
    return of(id, rows, Examples::more);
  }

  private static Examples of(String id, List<CSVRecord> rows, Function<CSVRecord, RowUse> use) {
    List<RowUse> results =
        rows.stream()
            .filter(r -> r.get("kind").equals("result"))
            .map(use)
            .filter(r -> r.fate() != RowUse.Fate.INPUT)
            .toList();
    return new Examples(id, rows.get(0).get("source"), results);
  }

  long checked() {
    return results.stream().filter(r -> r.fate() == RowUse.Fate.CHECKED).count();
  }

  /** Whether every printed result is computed. */
  boolean whole() {
    return checked() == results.size() && !CUT.contains(id);
  }

  double worst() {
    return results.stream()
        .flatMap(r -> r.fate() == RowUse.Fate.CHECKED ? r.checks().stream() : Stream.empty())
        .mapToDouble(Check::deviation)
        .boxed()
        .max(Comparator.comparingDouble(Math::abs))
        .orElse(0.0);
  }
}
