package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * Which sheets of a workbook are read. The only one that can hold fasteners is; of several it is
 * asked. None is left out without being named.
 */
final class SheetChoice {
  /** What is asked about a workbook with several sheets. */
  static final String ASKED = "sheet";

  /** The answer that takes all of them, one after the other. */
  static final String ALL = "all";

  private static final int LEAST_COLUMNS = 3;

  /** A thread or a torque: what a sheet without a known heading holds if it is a table. */
  private static final Pattern OF_A_FASTENER =
      Pattern.compile(
          "(?i)\\bM[0-9]{1,2}(?: ?[x×-] ?[0-9.,]+)?\\b|\\bUN[CF]\\b"
              + "|[0-9] ?(?:N ?[·.*]? ?m|lbf?[ ·-]?(?:ft|in)|(?:ft|in)[ ·-]?lbf?s?)\\b");

  private final List<Sheet> sheets;
  private final Map<String, String> mapped;
  private final List<Sheet> candidates;

  /**
   * The choice among the sheets of a workbook.
   *
   * @param mapped meanings of columns, by heading or letters
   */
  SheetChoice(List<Sheet> sheets, Map<String, String> mapped) {
    this.sheets = sheets;
    this.mapped = mapped;
    this.candidates =
        sheets.stream().filter(sheet -> !sheet.hidden() && mayBeATable(sheet)).toList();
  }

  private boolean mayBeATable(Sheet sheet) {
    return !sheet.faults().isEmpty()
        || layout(sheet).isPresent()
        || sheet.grid().rows().stream()
            .flatMap(List::stream)
            .anyMatch(cell -> OF_A_FASTENER.matcher(cell.text()).find());
  }

  private Optional<Layout> layout(Sheet sheet) {
    return Layout.best(List.of(sheet.grid()), mapped, 1).stream().findFirst();
  }

  /**
   * The sheets to be read; none if that is a question, which is then among the faults.
   *
   * @param wanted the name that was given as an option
   * @throws Fault TAB-005 if there is none, or not the one that is wanted; or what is wrong with it
   */
  List<Sheet> read(Optional<String> wanted, Answers answers, TableFaults faults) throws Fault {
    List<Sheet> chosen = chosen(wanted, answers, faults);
    List<Fault.Finding> wrong =
        chosen.stream().flatMap(sheet -> sheet.faults().stream()).distinct().toList();
    if (!wrong.isEmpty()) {
      throw new Fault(wrong);
    }
    return chosen;
  }

  private List<Sheet> chosen(Optional<String> wanted, Answers answers, TableFaults faults)
      throws Fault {
    List<Sheet> shown = sheets.stream().filter(sheet -> !sheet.hidden()).toList();
    if (wanted.isEmpty() && candidates.isEmpty() && shown.size() == 1) {
      return shown;
    }
    if (wanted.isPresent() || candidates.isEmpty()) {
      List<Sheet> named = wanted.map(name -> named(name, shown)).orElse(List.of());
      if (named.isEmpty()) {
        faults.file(TableCode.WHICH_SHEET, "the sheets " + names(shown), "one with --sheet");
      }
      faults.throwIfAny();
      return named;
    }
    if (candidates.size() == 1) {
      return candidates;
    }
    String asked = candidates.stream().map(s -> same(s.name())).collect(Collectors.joining(" | "));
    List<Sheet> answered =
        answers.find(ASKED, asked, "").map(name -> named(name, candidates)).orElse(List.of());
    if (answered.isEmpty()) {
      String all = together() ? ", or all, one after the other" : "";
      faults.sheets(asked, names(candidates), "the one to be read: " + counted() + all);
    }
    return answered;
  }

  private String counted() {
    return candidates.stream()
        .map(sheet -> Shown.quoted(sheet.name()) + " (" + rows(sheet) + ")")
        .collect(Collectors.joining(", "));
  }

  /** The sheets of a name; all that can be read as one table, if that is said. */
  private List<Sheet> named(String name, List<Sheet> among) {
    List<Sheet> named = among.stream().filter(s -> same(s.name()).equals(same(name))).toList();
    boolean all = named.isEmpty() && same(name).equalsIgnoreCase(ALL) && together();
    return all ? candidates : named.size() == 1 ? named : List.of();
  }

  private static String same(String name) {
    return Cell.of(0, 0, name, Cell.Kind.TEXT).text();
  }

  /** The answers that are known: each sheet, and all of them if their headings mean the same. */
  private List<String> possible() {
    List<String> names = new ArrayList<>(candidates.stream().map(s -> same(s.name())).toList());
    if (together() && !names.contains(ALL)) {
      names.add(ALL);
    }
    return names;
  }

  /** The question with the answers that are known. */
  Question withAnswers(Question asked) {
    return new Question(
        asked.asked(),
        asked.read(),
        asked.rows(),
        asked.places(),
        asked.code(),
        asked.expected(),
        possible());
  }

  private boolean together() {
    Set<Set<Column>> headings = new HashSet<>();
    for (Sheet sheet : candidates) {
      Set<Column> known = new HashSet<>();
      layout(sheet).ifPresent(l -> l.meanings().forEach(m -> m.ifPresent(known::add)));
      headings.add(known.size() < LEAST_COLUMNS ? Set.of() : known);
    }
    return headings.size() == 1 && !headings.contains(Set.of());
  }

  private static String names(List<Sheet> some) {
    return some.stream().map(s -> Shown.quoted(s.name())).collect(Collectors.joining(", "));
  }

  /**
   * What is left out, sheet by sheet, for the user.
   *
   * @param read the sheets that are read; none if it is still asked which of the candidates
   */
  List<String> leftOut(List<Sheet> read) {
    List<Sheet> taken = read.isEmpty() ? candidates : read;
    return sheets.stream()
        .filter(sheet -> !taken.contains(sheet))
        .map(
            sheet ->
                (sheet.hidden() ? "The hidden sheet " : "The sheet ")
                    + Shown.quoted(sheet.name())
                    + " is left out: "
                    + rows(sheet)
                    + ".")
        .toList();
  }

  /** How much a sheet holds. */
  private String rows(Sheet sheet) {
    if (!sheet.faults().isEmpty()) {
      return "it cannot be read, " + sheet.faults().get(0).told();
    }
    Optional<Layout> layout = layout(sheet);
    Grid grid = sheet.grid();
    int first = layout.map(Layout::data).orElse(0);
    long told = 0;
    for (int row = first; row < grid.rows().size(); row++) {
      told += grid.isEmpty(row) ? 0 : 1;
    }
    String counted = told == 1 ? "1 row" : told + " rows";
    return layout.isPresent() ? counted + " below a heading" : counted + ", no known heading";
  }
}
