package org.undercall.core.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.reply.Wanted;

/**
 * Asks for a procedure. An answer is taken only if the procedure could be made with it; otherwise
 * the same question stands.
 *
 * @param draft the answers so far
 */
public record Interview(Draft draft) {

  /**
   * What came of an answer.
   *
   * @param next how it goes on
   * @param told why the answer was not taken, a line each; empty if it was
   */
  public record Result(Interview next, List<String> told) {
    public Result {
      told = List.copyOf(told);
    }

    /** Whether the answer was taken. */
    public boolean taken() {
      return told.isEmpty();
    }
  }

  /** The question at hand; empty when all is answered. */
  public Optional<Wanted> question() {
    return draft.next();
  }

  /** The answer that an empty line stands for, if there is one. */
  public Optional<String> otherwise() {
    return question().flatMap(wanted -> Otherwise.of(wanted, draft));
  }

  /** Phase and side that a next step would have; empty where no step is asked for. */
  public Optional<String> place() {
    return question()
        .filter(wanted -> wanted == Wanted.KIND)
        .flatMap(wanted -> draft.anywhere(Wanted.PHASE))
        .map(phase -> phase + ", " + draft.anywhere(Wanted.SIDE).orElse(""));
  }

  /** Whether the question at hand can be answered with: none. */
  public boolean mayBeNone() {
    return question().filter(Otherwise::mayBeNone).isPresent();
  }

  /** Takes an answer, or tells why not. */
  public Result answer(String text, Judge judge) {
    Wanted wanted = question().orElseThrow();
    String typed = text.strip().isEmpty() ? otherwise().orElse("") : text.strip();
    boolean none = typed.equals(Given.NONE) || typed.equalsIgnoreCase("none");
    if (typed.isEmpty() || (none && !Otherwise.mayBeNone(wanted))) {
      return refused(AnswerFault.NOTHING.told("nothing", "an answer"));
    }
    List<String> words = none ? List.of(Given.NONE) : words(wanted, typed);
    if (words.size() != 1) {
      String among = words.isEmpty() ? listed(wanted.choices()) : listed(words);
      return refused(AnswerFault.NOT_A_WORD.told('"' + typed + '"', "one of " + among));
    }
    Draft with = draft.with(wanted, words.get(0));
    List<String> told = ownDoubt(wanted, words.get(0)).map(List::of).orElseGet(List::of);
    if (told.isEmpty()) {
      told = judge.doubts(Filled.of(with));
    }
    return told.isEmpty() ? new Result(new Interview(with), told) : new Result(this, told);
  }

  /** Asks the question before again; the same if there is none. */
  public Interview back() {
    return new Interview(draft.withoutLast());
  }

  private Result refused(String told) {
    return new Result(this, List.of(told));
  }

  private static String listed(List<String> words) {
    return String.join(", ", words);
  }

  /** The words of a question that an answer means: the same, or those that begin with it. */
  static List<String> words(Wanted wanted, String typed) {
    if (wanted.choices().isEmpty()) {
      return List.of(typed);
    }
    String plain = plain(typed);
    List<String> same = wanted.choices().stream().filter(w -> plain(w).equals(plain)).toList();
    return same.isEmpty()
        ? wanted.choices().stream().filter(w -> plain(w).startsWith(plain)).toList()
        : same;
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT).replace('-', ' ').replace("°", "deg");
  }

  private Optional<String> ownDoubt(Wanted wanted, String answer) {
    if (wanted == Wanted.KIND && answer.equals("done") && draft.rows().isEmpty()) {
      return Optional.of(AnswerFault.NO_STEP.told("no step", "at least one"));
    }
    if (wanted == Wanted.STEP && isSameAgain(answer)) {
      return Optional.of(
          AnswerFault.SAME_TITLE.told(
              "title and fastener of the step before", "another title, or one step for both"));
    }
    return Optional.empty();
  }

  /** Whether import would make one fastener of this step and the one before. */
  private boolean isSameAgain(String title) {
    List<Map<String, String>> rows = draft.rows();
    if (rows.isEmpty() || draft.inStep(Wanted.MARKING).filter(m -> !m.equals("-")).isEmpty()) {
      return false;
    }
    Map<String, String> before = rows.get(rows.size() - 1);
    return before.containsKey(Wanted.MARKING.heading())
        && title.equals(before.get(Wanted.STEP.heading()))
        && draft.inStep(Wanted.FASTENER).equals(value(before, Wanted.FASTENER))
        && draft.anywhere(Wanted.PHASE).equals(value(before, Wanted.PHASE))
        && draft.anywhere(Wanted.SIDE).equals(value(before, Wanted.SIDE));
  }

  private static Optional<String> value(Map<String, String> row, Wanted wanted) {
    return Optional.ofNullable(row.get(wanted.heading()));
  }

  /** What is there so far, a line for each line above the table, step and open answer. */
  public List<String> list() {
    List<String> lines = new ArrayList<>();
    draft.head().forEach(line -> lines.add(String.join("; ", line)));
    int number = 0;
    String before = "";
    for (Map<String, String> row : draft.rows()) {
      String step = row.get(Wanted.STEP.heading());
      String start = row.get(Wanted.PHASE.heading()) + ", " + row.get(Wanted.SIDE.heading());
      if (!step.equals(before) || !row.containsKey(Wanted.MARKING.heading())) {
        number++;
      }
      before = step;
      lines.add(number + " " + start + ": " + step + cells(row));
    }
    for (Given one : draft.unfinished()) {
      lines.add("  " + one.wanted().brief() + ": " + one.text());
    }
    return lines;
  }

  private static String cells(Map<String, String> row) {
    List<String> shown =
        List.of(Wanted.THREAD.heading(), Wanted.MARKING.heading(), Wanted.STAGE.heading());
    return shown.stream()
        .filter(row::containsKey)
        .map(heading -> ", " + row.get(heading))
        .collect(Collectors.joining());
  }
}
