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
  private final Answers ofOthers;
  private Answers answers;
  private boolean offers = true;

  /**
   * An interview.
   *
   * @param answers what was answered about this table before
   * @param ofOthers what was answered about other tables, which is offered
   */
  TableInterview(BufferedReader keyboard, PrintWriter out, Answers answers, Answers ofOthers) {
    this.keyboard = keyboard;
    this.out = out;
    this.answers = answers;
    this.ofOthers = ofOthers;
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
      Answers before;
      do {
        before = answers;
        if (offer(table.questions())) {
          table = reading.with(answers);
        }
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

  /** Offers what was answered in other lists, until that is declined; whether it was taken. */
  private boolean offer(List<Question> questions) {
    List<Answers.Answer> offered =
        ofOthers.offered(questions).stream().filter(each -> !answers.all().contains(each)).toList();
    if (!offers || offered.isEmpty()) {
      return false;
    }
    out.println();
    out.println("As in lists before:");
    offered.forEach(each -> out.println("  " + told(each)));
    offers = TypedInterview.saysYes(keyboard, out, "Take all of it? yes / no [no]: ");
    if (offers) {
      for (Answers.Answer each : offered) {
        answers = answers.with(each);
      }
    }
    return offers;
  }

  private static String told(Answers.Answer each) {
    String read = each.read().isEmpty() ? "" : " \"" + each.read() + '"';
    String rows = each.rows().isEmpty() ? "" : ", for " + String.join(" | ", each.rows());
    return each.asked() + read + ": " + each.answer() + rows;
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
