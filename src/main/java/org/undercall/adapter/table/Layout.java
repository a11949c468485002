package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * Which column of a table means what.
 *
 * @param grid the table
 * @param top first row of the heading, from 0
 * @param data first row after it
 * @param headings of every column
 * @param meanings of every column; empty if it is not taken
 */
record Layout(
    Grid grid, int top, int data, List<Heading> headings, List<Optional<Column>> meanings) {
  /** What is asked about a column whose heading says nothing. */
  static final String ASKED = "column";

  private static final int LEAST_COLUMNS = 3;
  private static final int MOST_ROWS_ABOVE = 30;

  Layout {
    headings = List.copyOf(headings);
    meanings = List.copyOf(meanings);
  }

  /**
   * Finds the heading: the row, or the two rows, that name the most columns.
   *
   * @param grids the table in each way it can be read
   * @param mapped meanings by heading or letters of the column, {@code -} for none
   */
  static Layout find(List<Grid> grids, Map<String, String> mapped, TableFaults faults)
      throws Fault {
    List<Layout> best = best(grids, mapped, LEAST_COLUMNS);
    if (best.isEmpty()) {
      best = best(grids, mapped, 1);
    }
    if (best.size() != 1) {
      String found = best.isEmpty() ? "no heading" : best.size() + " ways to divide the columns";
      faults.file(
          TableCode.NO_HEADING, found, "a row with headings such as fastener, thread, torque");
    }
    faults.throwIfAny();
    best.get(0).requireOneEach(faults);
    faults.throwIfAny();
    return best.get(0);
  }

  /**
   * The headings that name the most columns, one for each way to divide the table.
   *
   * @param least how many they name at least; what the others mean is asked
   */
  static List<Layout> best(List<Grid> grids, Map<String, String> mapped, int least) {
    List<Layout> best = new ArrayList<>();
    for (Grid grid : grids) {
      for (int data = 1; data <= Math.min(MOST_ROWS_ABOVE, grid.rows().size()); data++) {
        for (int depth = 1; depth <= Math.min(2, data); depth++) {
          Layout layout = at(grid, data - depth, depth, mapped);
          long more =
              layout.known() - best.stream().mapToLong(Layout::known).max().orElse(least - 1L);
          if (layout.headings().stream().filter(h -> !h.text().isEmpty()).count() < LEAST_COLUMNS) {
            continue;
          }
          if (more > 0) {
            best.clear();
          }
          boolean other = best.stream().noneMatch(b -> b.grid().readAs().equals(grid.readAs()));
          if (more > 0 || (more == 0 && !best.isEmpty() && other)) {
            best.add(layout);
          }
        }
      }
    }
    return best;
  }

  private static Layout at(Grid grid, int top, int depth, Map<String, String> mapped) {
    List<Heading> headings = new ArrayList<>();
    List<Optional<Column>> meanings = new ArrayList<>();
    String above = "";
    for (int column = 0; column < grid.width(); column++) {
      String first = grid.cell(top, column).text();
      String text = first;
      if (depth == 2) {
        String second = grid.cell(top + 1, column).text();
        above = first.isEmpty() ? above : first;
        boolean joined = second.isEmpty() || second.equals(first);
        text = joined ? first : (above + " " + second).strip();
      }
      Heading heading = Heading.of(text);
      if (depth == 2 && heading.meaning().isEmpty()) {
        Heading lower = Heading.of(grid.cell(top + 1, column).text());
        boolean own = lower.meaning().isPresent() || grid.cell(top, column).isEmpty();
        heading = own ? lower : heading;
      }
      headings.add(heading);
      meanings.add(meaning(heading, column, mapped));
    }
    return new Layout(grid, top, top + depth, headings, meanings);
  }

  private static Optional<Column> meaning(Heading heading, int column, Map<String, String> mapped) {
    for (Map.Entry<String, String> entry : mapped.entrySet()) {
      if (names(entry.getKey(), heading, column)) {
        return Column.of(entry.getValue());
      }
    }
    return heading.meaning();
  }

  private static boolean names(String key, Heading heading, int column) {
    return Cell.column(key) == column
        || key.equalsIgnoreCase(heading.text())
        || key.equalsIgnoreCase(heading.name());
  }

  /** Asks what a column means that holds something and is not taken, if something is missing. */
  void askUntaken(Map<String, String> mapped, TableFaults faults) {
    if (faults.all().stream().noneMatch(f -> f.code() == TableCode.MISSING_COLUMN)) {
      return;
    }
    for (int column = 0; column < headings.size(); column++) {
      String heading = headings.get(column).text();
      int at = column;
      boolean told =
          grid.rows().stream()
              .skip(data)
              .anyMatch(row -> at < row.size() && !row.get(at).isEmpty());
      boolean named = mapped.keySet().stream().anyMatch(key -> names(key, headings.get(at), at));
      boolean taken = meanings.get(column).isPresent() && !namesJoints(column);
      if (told && !named && !heading.isEmpty() && !taken) {
        faults.untaken(heading, Cell.letters(column));
      }
    }
  }

  /** Whether a column headed "joint" holds no kind of one: it may be what is tightened. */
  private boolean namesJoints(int column) {
    return meanings.get(column).equals(Optional.of(Column.JOINT))
        && grid.rows().stream()
            .skip(data)
            .filter(row -> column < row.size())
            .map(row -> row.get(column).given().toLowerCase(Locale.ROOT).replaceAll("[ _]", "-"))
            .noneMatch(StepRow.JOINTS::contains);
  }

  /** How many cells below the heading hold something. */
  int cells() {
    return (int)
        grid.rows().stream().skip(data).flatMap(List::stream).filter(c -> !c.isEmpty()).count();
  }

  private long known() {
    return meanings.stream().flatMap(Optional::stream).distinct().count();
  }

  private void requireOneEach(TableFaults faults) {
    Map<Column, Integer> seen = new EnumMap<>(Column.class);
    for (int column = 0; column < meanings.size(); column++) {
      Optional<Column> meaning = meanings.get(column);
      if (meaning.isPresent()) {
        Integer before = seen.putIfAbsent(meaning.get(), column);
        if (before != null) {
          faults.file(
              TableCode.TWO_COLUMNS,
              "columns " + Cell.letters(before) + " and " + Cell.letters(column),
              "one column for "
                  + meaning.get().label()
                  + " (--map "
                  + Cell.letters(column)
                  + "=-)");
        }
      }
    }
  }

  /** Finds meanings that were given for columns which no sheet has, or that are none. */
  static void requireNamed(
      Collection<Layout> layouts, Map<String, String> given, TableFaults faults) throws Fault {
    for (Map.Entry<String, String> entry : given.entrySet()) {
      boolean there = layouts.stream().anyMatch(layout -> layout.hasColumn(entry.getKey()));
      boolean known = entry.getValue().equals("-") || Column.of(entry.getValue()).isPresent();
      if (!there || !known) {
        String found = Shown.quoted(entry.getKey() + "=" + entry.getValue());
        String expected = "a heading or letters of this table, and a meaning or -";
        faults.add(TableCode.HEAD, "--map", found, expected);
      }
    }
    faults.throwIfAny();
  }

  private boolean hasColumn(String key) {
    return IntStream.range(0, headings.size()).anyMatch(i -> names(key, headings.get(i), i));
  }

  /** The column with a meaning, from 0; -1 if there is none. */
  int column(Column meaning) {
    return meanings.indexOf(Optional.of(meaning));
  }

  /** The unit in the heading of a column, blank if there is none. */
  String unit(Column meaning) {
    int column = column(meaning);
    return column < 0 ? "" : headings.get(column).unit();
  }

  /** What was taken as what, line by line. */
  List<String> preview() {
    List<String> lines = new ArrayList<>();
    String rows = data - top == 1 ? "row " + (top + 1) : "rows " + (top + 1) + " and " + data;
    lines.add("Read as " + grid.readAs() + "; heading in " + rows + ".");
    for (int column = 0; column < headings.size(); column++) {
      Heading heading = headings.get(column);
      String unit = heading.unit().isEmpty() ? "" : ", in " + heading.unit();
      String meaning = meanings.get(column).map(m -> "-> " + m.label() + unit).orElse("not taken");
      String text = heading.text().isEmpty() ? "(no heading)" : heading.text();
      String seen = grid.hidden().columns().contains(column) ? ", hidden" : "";
      lines.add(
          String.format(Locale.ROOT, "  %-3s%-28s %s", Cell.letters(column), text, meaning + seen));
    }
    return lines;
  }
}
