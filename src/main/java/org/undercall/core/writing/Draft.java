package org.undercall.core.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.reply.Wanted;

/**
 * All answers so far, in the order they were given. What is asked next follows from them alone.
 *
 * @param given the answers
 */
public record Draft(List<Given> given) {
  /** Nothing was answered yet. */
  public static final Draft EMPTY = new Draft(List.of());

  public Draft {
    given = List.copyOf(given);
  }

  /** With one answer more. */
  public Draft with(Wanted wanted, String text) {
    List<Given> more = new ArrayList<>(given);
    more.add(new Given(wanted, text));
    return new Draft(more);
  }

  /** Without the last answer; the same if there is none. */
  public Draft withoutLast() {
    return given.isEmpty() ? this : new Draft(given.subList(0, given.size() - 1));
  }

  /** The last answer. */
  Optional<Given> last() {
    return given.isEmpty() ? Optional.empty() : Optional.of(given.get(given.size() - 1));
  }

  /** What is asked next; empty when all is answered. */
  public Optional<Wanted> next() {
    return Course.next(this);
  }

  /** The last answer to a question within the step at hand. */
  Optional<String> inStep(Wanted wanted) {
    List<Given> step = given.subList(begun(), given.size());
    return latest(step, wanted);
  }

  /** The last answer to a question at all. */
  Optional<String> anywhere(Wanted wanted) {
    return latest(given, wanted);
  }

  private static Optional<String> latest(List<Given> among, Wanted wanted) {
    Optional<String> found = Optional.empty();
    for (Given one : among) {
      found = one.wanted() == wanted ? Optional.of(one.text()) : found;
    }
    return found;
  }

  /** Where the step at hand begins: at the last answer to what kind it is. */
  private int begun() {
    int at = 0;
    for (int i = 0; i < given.size(); i++) {
      at = given.get(i).wanted() == Wanted.KIND ? i : at;
    }
    return at;
  }

  /** The answers to the step at hand; none if every step is whole. */
  public List<Given> unfinished() {
    List<Given> step = given.subList(begun(), given.size());
    Optional<String> kind = latest(step, Wanted.KIND);
    boolean begun = kind.filter(k -> !k.equals("phase") && !k.equals("done")).isPresent();
    boolean whole = step.stream().anyMatch(g -> g.wanted() == Wanted.NOTE && g.isNone());
    return begun && !whole ? step : List.of();
  }

  /** The answers without those to a step that is not whole. */
  Draft finished() {
    return new Draft(given.subList(0, given.size() - unfinished().size()));
  }

  /** The lines above the table: a word and its values. */
  public List<List<String>> head() {
    return Rows.head(this);
  }

  /** The rows of the table, by heading; a step that is not whole is left out. */
  public List<Map<String, String>> rows() {
    return Rows.of(finished());
  }
}
