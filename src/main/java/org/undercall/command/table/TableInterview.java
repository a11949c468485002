package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.adapter.table.Answers;
import org.undercall.adapter.table.Question;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.port.Fault;

/** Asks at the keyboard what a table does not say for certain, until it says all. */
final class TableInterview {
  private static final String HELP =
      "Answer with a number of the list, or with what should stand in the cell; - for nothing. "
          + "each: one by one; skip: later; stop: keep it and end.";

  private final BufferedReader keyboard;
  private final PrintWriter out;
  private Answers answers;

  TableInterview(BufferedReader keyboard, PrintWriter out, Answers answers) {
    this.keyboard = keyboard;
    this.out = out;
    this.answers = answers;
  }

  /** A table that can be read again with other answers. */
  interface Reading {
    TorqueTable with(Answers answers) throws Fault;
  }

  Answers answers() {
    return answers;
  }

  /**
   * Asks for everything once, and once more for what an answer did not settle.
   *
   * @return the table as it is with what was answered
   */
  TorqueTable ask(TorqueTable read, Reading reading) throws Fault {
    TorqueTable table = read;
    out.println(HELP);
    try {
      if (offer(table.questions())) {
        table = reading.with(answers);
      }
      Answers before;
      do {
        before = answers;
        for (Question question : firstOf(table.questions())) {
          ask(question);
        }
        table = reading.with(answers);
      } while (!table.questions().isEmpty() && !answers.equals(before));
    } catch (TypedInterview.BrokenOff e) {
      out.println("Stopped.");
      return reading.with(answers);
    }
    return table;
  }

  /** Offers what was answered in another list; whether it was taken. */
  private boolean offer(List<Question> questions) {
    List<Answers.Answer> offered = answers.offered(questions);
    if (offered.isEmpty()) {
      return false;
    }
    out.println();
    out.println("As in the list before, for the rows that lack it:");
    offered.forEach(
        each -> out.println("  " + each.asked() + " " + each.answer() + ", " + told(each.rows())));
    boolean taken = TypedInterview.saysYes(keyboard, out, "Take all of it? yes / no [no]: ");
    if (taken) {
      for (Answers.Answer each : offered) {
        answers = answers.with(each);
      }
    }
    return taken;
  }

  private static String told(List<String> rows) {
    return rows.size() == 1 ? rows.get(0) : rows.size() + " rows";
  }

  /** What columns mean is asked before what stands in them. */
  private static List<Question> firstOf(List<Question> all) {
    List<Question> columns = all.stream().filter(Question::isOfAColumn).toList();
    return columns.isEmpty() ? all : columns;
  }

  private void ask(Question question) throws TypedInterview.BrokenOff {
    out.println();
    out.println(question.asked() + ", " + where(question) + ": found " + found(question));
    out.println("  expected " + question.expected());
    answer(question, "Answer" + (question.rows().size() > 1 ? " for all" : ""))
        .ifPresent(
            given -> {
              List<String> rows = question.isOfAWord() ? List.of() : question.rows();
              answers =
                  answers.with(new Answers.Answer(question.asked(), question.read(), rows, given));
            });
  }

  private Optional<String> answer(Question question, String prompt)
      throws TypedInterview.BrokenOff {
    boolean numbered = question.possible().stream().noneMatch(text -> text.matches("[1-9]"));
    for (int i = 0; i < question.possible().size(); i++) {
      out.println("  " + (numbered ? i + 1 : "-") + "  " + question.possible().get(i));
    }
    String given = TypedInterview.line(keyboard, out, prompt + ": ");
    switch (given.toLowerCase(Locale.ROOT)) {
      case "stop" -> throw new TypedInterview.BrokenOff();
      case "", "skip" -> {
        return Optional.empty();
      }
      case "each" -> {
        for (String row : question.rows()) {
          Question one = one(question, row);
          out.println();
          out.println(one.asked() + ", " + row + ": found " + found(one));
          answer(one, "Answer").ifPresent(text -> keep(one, text));
        }
        return Optional.empty();
      }
      default -> {
        boolean number =
            numbered
                && given.matches("[1-9]")
                && Integer.parseInt(given) <= question.possible().size();
        return Optional.of(number ? question.possible().get(Integer.parseInt(given) - 1) : given);
      }
    }
  }

  private void keep(Question one, String text) {
    answers = answers.with(new Answers.Answer(one.asked(), one.read(), one.rows(), text));
  }

  private static Question one(Question all, String row) {
    return new Question(
        all.asked(),
        all.read(),
        List.of(row),
        all.places(),
        all.code(),
        all.expected(),
        all.possible());
  }

  private static String found(Question question) {
    return question.read().isEmpty() ? "nothing" : '"' + question.read() + '"';
  }

  private static String where(Question question) {
    List<String> rows = question.rows();
    return rows.isEmpty()
        ? "for the whole table"
        : rows.size() == 1 ? rows.get(0) : rows.size() + " rows: " + String.join(" | ", rows);
  }
}
