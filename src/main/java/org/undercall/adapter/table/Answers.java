package org.undercall.adapter.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.undercall.port.Fault;

/**
 * What was answered about a table. Kept as a table of its own, so that it can be edited and given
 * back, and so that a later revision of the same list asks only what is new.
 *
 * @param all the answers, the first that fits counts
 */
public record Answers(List<Answer> all) {
  /** No answer. */
  public static final Answers NONE = new Answers(List.of());

  /** What is asked once for a table and is the same in the next one. */
  private static final Set<String> OF_ALL_LISTS = Set.of("author", "tool");

  /** What people tend to answer alike in every list; nothing of it is taken without a yes. */
  private static final List<String> HABITS =
      Stream.of(Column.TOLERANCE, Column.ANGLE_TOLERANCE, Column.SIDE, Column.SOCKET)
          .map(Column::label)
          .toList();

  /** In place of rows: every row of another list. */
  private static final String EVERY_ROW = "*";

  private static final List<String> HEADINGS =
      List.of("asked", "read", "rows", "where", "expected", "possible", "answer");
  private static final int ASKED = 0;
  private static final int READ = 1;
  private static final int ROWS = 2;
  private static final int ANSWER = 6;
  private static final int MOST_BYTES = 2 * 1024 * 1024;
  private static final String BETWEEN = " | ";
  private static final String DIVIDED = " ?\\| ?";

  /**
   * One answer.
   *
   * @param asked as in the question
   * @param read as in the question
   * @param rows the rows it is for; none for the whole table
   * @param answer what should stand there; {@code -} for nothing
   */
  public record Answer(String asked, String read, List<String> rows, String answer) {
    public Answer {
      rows = List.copyOf(rows);
    }

    private boolean isAsked(Answer other) {
      return asked.equals(other.asked) && read.equals(other.read) && rows.equals(other.rows);
    }

    private boolean holdsElsewhere() {
      boolean heading = asked.equals(Layout.ASKED);
      return rows.isEmpty()
          && (heading || Question.isOfAWord(asked, read) || OF_ALL_LISTS.contains(asked));
    }

    /** What this answer of another list would be to a question; empty if it is to another one. */
    private Optional<Answer> to(Question question) {
      boolean habit = rows.equals(List.of(EVERY_ROW)) && !question.rows().isEmpty();
      return asked.equals(question.asked())
              && read.equals(question.read())
              && (habit || rows.isEmpty())
          ? Optional.of(habit ? new Answer(asked, read, question.rows(), answer) : this)
          : Optional.empty();
    }

    private boolean fits(String askedNow, String readNow, String row) {
      return asked.equals(askedNow)
          && read.equals(readNow)
          && (rows.contains(row) || rows.isEmpty());
    }
  }

  public Answers {
    all = List.copyOf(all);
  }

  /** These and one more, which goes before and takes the place of one to the same question. */
  public Answers with(Answer answer) {
    List<Answer> more = new ArrayList<>(List.of(answer));
    all.stream().filter(old -> !old.isAsked(answer)).forEach(more::add);
    return new Answers(more);
  }

  /**
   * Those that may hold for other lists of the same people too: what headings and words mean, who
   * writes, with which wrenches, and what was answered alike for all rows that lack it. They are
   * {@link #offered}, and none is taken unasked.
   */
  public Answers forOtherLists() {
    List<Answer> others = new ArrayList<>(all.stream().filter(Answer::holdsElsewhere).toList());
    for (String asked : HABITS) {
      List<String> answered =
          all.stream()
              .filter(a -> a.asked().equals(asked) && a.read().isEmpty())
              .map(Answer::answer)
              .distinct()
              .toList();
      if (answered.size() == 1) {
        others.add(new Answer(asked, "", List.of(EVERY_ROW), answered.get(0)));
      }
    }
    return new Answers(others);
  }

  /** What these answers of other lists would be to the questions of this one. */
  public List<Answer> offered(List<Question> questions) {
    return questions.stream()
        .flatMap(question -> all.stream().map(a -> a.to(question)).flatMap(Optional::stream))
        .toList();
  }

  /** These, and others where these say nothing. */
  public Answers and(Answers others) {
    List<Answer> more = new ArrayList<>(all);
    others.all.stream().filter(o -> all.stream().noneMatch(o::isAsked)).forEach(more::add);
    return new Answers(more);
  }

  /** What was answered for a row; a blank row is the table as a whole. */
  Optional<String> find(String asked, String read, String row) {
    return all.stream().filter(a -> a.fits(asked, read, row)).map(Answer::answer).findFirst();
  }

  /** What columns were said to mean, by their headings. */
  Map<String, String> meanings() {
    Map<String, String> found = new HashMap<>();
    all.stream()
        .filter(a -> a.asked().equals(Layout.ASKED))
        .filter(a -> a.answer().equals("-") || Column.of(a.answer()).isPresent())
        .forEach(a -> found.putIfAbsent(a.read(), a.answer()));
    return found;
  }

  /**
   * Reads a file of answers. A question without an answer is none.
   *
   * @throws Fault TAB-032 if it is no such table, or an answer to an empty cell names no row
   */
  public static Answers read(Path file) throws Fault {
    String name = String.valueOf(file.getFileName());
    TableFaults faults = new TableFaults(name);
    Grid grid = grid(file, faults);
    List<Answer> answers = new ArrayList<>();
    for (int row = 1; row < grid.rows().size(); row++) {
      String asked = grid.cell(row, ASKED).given();
      String read = grid.cell(row, READ).given();
      String answer = grid.cell(row, ANSWER).text();
      List<String> rows = divided(grid.cell(row, ROWS).given());
      boolean filled = read.isEmpty() && rows.isEmpty() && Column.of(asked).isPresent();
      if (filled && !answer.isEmpty()) {
        faults.at(
            grid.own(row, ROWS),
            TableCode.ANSWERS,
            "no row",
            "the rows whose cell is empty, a bar between them");
      } else if (!answer.isEmpty()) {
        answers.add(new Answer(asked, read, rows, answer));
      }
    }
    faults.throwIfAny();
    return new Answers(answers);
  }

  private static Grid grid(Path file, TableFaults faults) throws Fault {
    try {
      if (Files.size(file) > MOST_BYTES) {
        faults.file(TableCode.TOO_LARGE, "more than 2 MB", "at most 2 MB");
      }
      faults.throwIfAny();
      for (Grid grid : CsvGrid.read(Files.readAllBytes(file), faults)) {
        if (grid.width() > ANSWER
            && grid.cell(0, ASKED).given().equals(HEADINGS.get(ASKED))
            && grid.cell(0, ANSWER).given().equals(HEADINGS.get(ANSWER))) {
          return grid;
        }
      }
    } catch (IOException e) {
      faults.file(TableCode.NOT_READABLE, Fault.kind(e), "a file of answers to read");
    }
    faults.file(TableCode.ANSWERS, "another table", "the columns " + String.join(", ", HEADINGS));
    throw new Fault(faults.all());
  }

  private static List<String> divided(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(DIVIDED, -1));
  }

  /** The answers as a table in CSV, after the questions that are still open. */
  public String csv(List<Question> open) {
    CSVFormat format = CSVFormat.DEFAULT;
    StringBuilder text = new StringBuilder("\uFEFF").append(line(format, HEADINGS));
    for (Question each : open) {
      List<String> rows = each.isOfAWord() ? List.of() : each.rows();
      text.append(
          line(
              format,
              List.of(
                  each.asked(),
                  each.read(),
                  String.join(BETWEEN, rows),
                  String.join(", ", each.places()),
                  each.expected(),
                  String.join(BETWEEN, each.possible()),
                  "")));
    }
    for (Answer each : all) {
      text.append(
          line(
              format,
              List.of(
                  each.asked(),
                  each.read(),
                  String.join(BETWEEN, each.rows()),
                  "",
                  "",
                  "",
                  each.answer())));
    }
    return text.toString();
  }

  private static String line(CSVFormat format, List<String> cells) {
    Object[] safe = cells.stream().map(c -> c.replaceFirst("^(?=[=+@-])", "'")).toArray();
    return format.format(safe) + "\r\n";
  }
}
