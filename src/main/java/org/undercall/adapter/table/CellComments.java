package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.undercall.text.Shown;

/**
 * What becomes of the comments on the cells of a table. One that says nothing of the tightening is
 * read out with its row, as a note is. Any other is asked about: it may be an old one, a newer
 * value, or only a remark, and nothing of that is guessed.
 */
final class CellComments {
  /** What is asked about a comment, before the meaning of its column. */
  static final String ASKED = "comment";

  /** The answer that has it read out and leaves the cell as it is. */
  static final String NOTE = "note";

  /** What may speak of the tightening (common practice, no source); a figure always does. */
  private static final Pattern OF_TIGHTENING =
      Pattern.compile(
          "(?i)[0-9°±%<>=?]|\\b(?:torque|tight|loos|n ?[·.]?m|lbs?|lbf|ft|angle|deg|degrees?|turn"
              + "|quarter|half|stage|yield|ride|height|droop|laden|unladen|load|hang|ground|wheel"
              + "|weight|lower|rais|jack|lift|stand|new|renew|replac|re-?us|again|once|twice|discard"
              + "|old|first|second|last|then|before|after|until|next|order|sequence|cross|star"
              + "|diagonal|dry|wet|oil|greas|lubric|lock|paste|wrong|not\\b|don|do\\b|never|no\\b"
              + "|only|always|must|chang|updat|supersed|correct|check|ask|now|instead|valid|cancel"
              + "|void|obsolete|more|less|max|min|hard|soft|hand|class|grade|thread|bolt|nut|screw"
              + "|washer|hardware|left|right|front|rear|both|side|spec|value|valid|twenty|thirty|forty"
              + "|fifty|sixty|seventy|eighty|ninety|hundred|one|two|three|four|five|six|seven|eight"
              + "|nine|ten)");

  /** Whose cells hold any words, so that a value said of another cell would be taken for a name. */
  private static final Set<Column> OF_WORDS =
      Set.of(
          Column.PHASE,
          Column.STEP,
          Column.ID,
          Column.FASTENER,
          Column.REASON,
          Column.ARM,
          Column.COUNTER_HOLD,
          Column.NOTE,
          Column.BRIEF,
          Column.WHY,
          Column.AFTER,
          Column.UNDOES,
          Column.CHECK,
          Column.DUE,
          Column.SOURCE);

  private final Layout layout;
  private final Answers answers;
  private final TableFaults faults;
  private final Map<Cell, List<Grid.Comment>> byCell = new HashMap<>();
  private final Set<Grid.Comment> seen = new HashSet<>();
  private final List<String> told = new ArrayList<>();

  CellComments(Layout layout, Answers answers, TableFaults faults) {
    this.layout = layout;
    this.answers = answers;
    this.faults = faults;
    for (Grid.Comment comment : layout.grid().comments()) {
      Cell shown = layout.grid().cell(comment.row(), comment.column());
      byCell.computeIfAbsent(shown, cell -> new ArrayList<>()).add(comment);
    }
  }

  /** Whether a comment may change how something is tightened. */
  static boolean speaksOfTightening(String text) {
    return OF_TIGHTENING.matcher(text).find();
  }

  /** The comments on a row that are read out with it; a doubtful one is a fault. */
  List<String> of(int row, String name) {
    List<String> read = new ArrayList<>();
    for (Grid.Comment comment : in(row)) {
      seen.add(comment);
      Optional<Column> meaning = meaning(comment);
      Optional<String> answer = answers.find(asked(meaning), comment.text(), name);
      boolean settled = answer.filter(a -> isSettled(a) || meaning.isPresent()).isPresent();
      if (!settled && speaksOfTightening(comment.text())) {
        faults.comment(asked(meaning), comment, expected(meaning, row));
        tell(comment, "asked");
      } else if (answer.isEmpty() || answer.get().equalsIgnoreCase(NOTE)) {
        read.add(comment.text());
        tell(comment, "read out");
      } else {
        tell(comment, isNothing(answer.get()) ? "left out" : Shown.quoted(answer.get()));
      }
    }
    return read;
  }

  private String expected(Optional<Column> meaning, int row) {
    String rest = NOTE + " if it is only to be read out, - if it no longer holds";
    String elsewhere = "; a value that it changes is changed in the list";
    return meaning
        .map(
            column ->
                "what holds for "
                    + column.label()
                    + " in place of "
                    + layout.grid().cell(row, layout.column(column)).shown()
                    + "; "
                    + rest)
        .orElse(rest + elsewhere);
  }

  private static String asked(Optional<Column> meaning) {
    return meaning.map(column -> ASKED + " on " + column.label()).orElse(ASKED);
  }

  private static boolean isNothing(String answer) {
    return answer.matches("[-–—]?");
  }

  private static boolean isSettled(String answer) {
    return isNothing(answer) || answer.equalsIgnoreCase(NOTE);
  }

  /** What the cell of a comment means, if an answer can stand in its place. */
  private Optional<Column> meaning(Grid.Comment comment) {
    Optional<Column> column =
        comment.column() >= 0 && comment.column() < layout.meanings().size()
            ? layout.meanings().get(comment.column())
            : Optional.empty();
    return column.filter(meaning -> !OF_WORDS.contains(meaning));
  }

  private List<Grid.Comment> in(int row) {
    Set<Grid.Comment> in = new LinkedHashSet<>();
    for (int column = 0; column < Grid.MOST_COLUMNS && !byCell.isEmpty(); column++) {
      in.addAll(byCell.getOrDefault(layout.grid().cell(row, column), List.of()));
    }
    layout.grid().comments().stream().filter(c -> c.row() == row).forEach(in::add);
    return List.copyOf(in);
  }

  /** A cell of a row, or what was answered to stand there by a comment on it. */
  Cell cell(int row, Column meaning, String name) {
    Cell cell = layout.grid().cell(row, layout.column(meaning));
    return byCell.getOrDefault(cell, List.of()).stream()
        .filter(comment -> meaning(comment).isPresent())
        .flatMap(c -> answers.find(asked(meaning(c)), c.text(), name).stream())
        .filter(answer -> !isSettled(answer))
        .findFirst()
        .map(answer -> Cell.of(cell.row(), cell.column(), answer, Cell.Kind.TEXT))
        .orElse(cell);
  }

  /** The comments on no row that was read, which were answered to be read out before the work. */
  List<String> elsewhere() {
    List<String> read = new ArrayList<>();
    faults.inRow("");
    for (Grid.Comment comment : layout.grid().comments()) {
      if (!seen.add(comment)) {
        continue;
      }
      Optional<String> answer = answers.find(ASKED, comment.text(), "");
      if (answer.filter(CellComments::isSettled).isEmpty() && speaksOfTightening(comment.text())) {
        String expected = NOTE + " if it is to be read out before the work, - if it does not count";
        faults.comment(ASKED, comment, expected);
        tell(comment, "asked");
      } else if (answer.filter(NOTE::equalsIgnoreCase).isPresent()) {
        read.add(comment.text());
        tell(comment, "read out before the work");
      } else {
        tell(comment, "not taken");
      }
    }
    return read;
  }

  private void tell(Grid.Comment comment, String what) {
    String text = Shown.quoted(comment.text());
    String line = "  comment at " + comment.address() + " " + text + " -> " + what;
    if (!told.contains(line)) {
      told.add(line);
    }
  }

  /** What became of each, for the user. */
  List<String> told() {
    return told;
  }
}
