package org.undercall.command.table;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.undercall.adapter.table.Answers;
import org.undercall.adapter.table.Question;
import org.undercall.port.Fault;

/**
 * What was answered about a list, in a file beside it, and about other lists of its folder. A place
 * that cannot be written is told.
 */
final class ListAnswers {
  private static final String OF_OTHERS = "lists.answers.csv";

  private final Path file;
  private final Answers ofOthers;
  private final PrintWriter out;

  private ListAnswers(Path file, Answers ofOthers, PrintWriter out) {
    this.file = file;
    this.ofOthers = ofOthers;
    this.out = out;
  }

  /**
   * The answers of a list.
   *
   * @param file where they are kept
   * @throws Fault TAB-032 if those of other lists are none
   */
  static ListAnswers in(Path file, PrintWriter out) throws Fault {
    return new ListAnswers(file, readIfThere(file.resolveSibling(OF_OTHERS)), out);
  }

  /** What was answered about it before. */
  Answers read() throws Fault {
    return readIfThere(file);
  }

  /** What was answered about others. */
  Answers ofOthers() {
    return ofOthers;
  }

  private static Answers readIfThere(Path file) throws Fault {
    return Files.exists(file) ? Answers.read(file) : Answers.NONE;
  }

  /** Keeps the answers, and the questions that are still open; nothing if there is neither. */
  void keep(Answers answers, List<Question> open) {
    if (open.isEmpty() && answers.equals(Answers.NONE)) {
      return;
    }
    try {
      NewFile.write(file, answers.csv(open), true);
      String told = open.size() == 1 ? "1 question is" : open.size() + " questions are";
      out.println(
          open.isEmpty()
              ? "Answers kept in " + file.getFileName() + "."
              : told
                  + " in "
                  + file.getFileName()
                  + ": answer in its last column, then import again.");
    } catch (Fault e) {
      out.println("The questions were not kept: " + e.getMessage());
    }
    out.flush();
  }

  /** Keeps what may hold for other lists of the same folder. */
  void keepForOthers(Answers answers) {
    Answers now = answers.forOtherLists().and(ofOthers);
    if (now.equals(ofOthers)) {
      return;
    }
    try {
      NewFile.write(file.resolveSibling(OF_OTHERS), now.csv(List.of()), true);
      out.println("Offered for other lists beside it: " + OF_OTHERS + ".");
    } catch (Fault e) {
      out.println("Nothing was kept for other lists: " + e.getMessage());
    }
    out.flush();
  }
}
