package org.undercall.core.writing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.reply.Wanted;

/**
 * What was kept of answers, and how they become answers again.
 *
 * @param head lines above the table: a word and its values
 * @param rows by heading, in order
 * @param open the answers after them, by the name of the question
 */
public record Kept(
    List<List<String>> head, List<Map<String, String>> rows, List<Map.Entry<String, String>> open) {
  public Kept {
    head = List.copyOf(head);
    rows = List.copyOf(rows);
    open = List.copyOf(open);
  }

  /** What is to be kept of a draft: lines, rows, and the answers that are in neither. */
  public static Kept of(Draft draft) {
    Kept table = new Kept(draft.head(), draft.rows(), List.of());
    int inTable = table.draft().given().size();
    return new Kept(
        table.head(),
        table.rows(),
        draft.given().stream()
            .skip(inTable)
            .map(one -> Map.entry(one.wanted().name(), one.text()))
            .toList());
  }

  /** The answers, as far as they were kept; then the questions go on. */
  public Draft draft() {
    Again again = new Again(this);
    Draft draft = Draft.EMPTY;
    Optional<String> answer = Optional.of("");
    while (answer.isPresent() && draft.next().isPresent()) {
      Wanted wanted = draft.next().get();
      answer = again.answer(wanted);
      draft = answer.isPresent() ? draft.with(wanted, answer.get()) : draft;
    }
    for (Map.Entry<String, String> one : open) {
      Optional<Wanted> next = draft.next().filter(n -> n.name().equals(one.getKey()));
      draft = next.isPresent() ? draft.with(next.get(), one.getValue()) : draft;
    }
    return draft;
  }

  /** Gives each question the answer that the table has. */
  private static final class Again {
    /** Lines above the table that are asked for later, or not at all. */
    private static final Set<String> NOT_IN_ORDER =
        Set.of("ride height", "ride height arm", "load holds");

    private final Kept kept;
    private final Deque<String> wrench = new ArrayDeque<>();
    private int heads;
    private int row = -1;
    private Deque<String> stages = new ArrayDeque<>();
    private Deque<String> notes = new ArrayDeque<>();
    private String phase = "";

    Again(Kept kept) {
      this.kept = kept;
    }

    Optional<String> answer(Wanted wanted) {
      return switch (wanted) {
        case TITLE, VEHICLE, AUTHOR, REVISION, SOURCE -> line(wanted).map(l -> l.get(1));
        case CAUTION, MORE_CAUTIONS -> line(wanted).map(l -> l.get(1)).or(this::noMore);
        case TOOL, MORE_TOOLS -> line(wanted).map(this::wrench).or(this::noMore);
        case TOOL_LEAST, TOOL_MOST, CALIBRATED, UNCERTAINTY -> Optional.ofNullable(wrench.poll());
        case PHASE, SIDE -> next().map(r -> r.getOrDefault(wanted.heading(), ""));
        case KIND -> next().map(this::kind);
        case HEIGHT_TOLERANCE -> rideHeight();
        case MORE_MARKINGS -> Optional.of(sameStep() ? begin(wanted) : Given.NONE);
        case STAGE, MORE_STAGES -> Optional.of(stages.isEmpty() ? Given.NONE : stages.poll());
        case NOTE -> Optional.of(notes.isEmpty() ? Given.NONE : notes.poll());
        case BEYOND_YIELD -> Optional.of(cell(wanted).replaceFirst(".*\\+ ", ""));
        case WHEELS, UNIT -> Optional.of(word(kept.rows().get(row).get(wanted.heading())));
        default -> Optional.of(cell(wanted));
      };
    }

    private String cell(Wanted wanted) {
      String cell = kept.rows().get(row).getOrDefault(wanted.heading(), otherwise(wanted));
      List<String> words = Interview.words(wanted, cell);
      return words.size() == 1 ? words.get(0) : cell;
    }

    /** The word of an answer that the table has another one for. */
    private static String word(String cell) {
      return cell == null
          ? Given.NONE
          : Map.of("yes", "on", "no", "off", "°", "deg").getOrDefault(cell, cell);
    }

    private static String otherwise(Wanted wanted) {
      return switch (wanted) {
        case COUNT -> "1";
        case OUTSIDE -> "fault";
        case NOTES_HEIGHT, CHANGES_LOAD, BY_WHEELS, BY_HAND, WHEEL -> "no";
        default -> Given.NONE;
      };
    }

    /** The next line above the table, if it has the question's word. */
    private Optional<List<String>> line(Wanted wanted) {
      while (heads < kept.head().size() && NOT_IN_ORDER.contains(kept.head().get(heads).get(0))) {
        heads++;
      }
      if (heads < kept.head().size() && kept.head().get(heads).get(0).equals(wanted.heading())) {
        return Optional.of(kept.head().get(heads++));
      }
      return Optional.empty();
    }

    /** "None", if more was kept after it: whether there would have been more is not known. */
    private Optional<String> noMore() {
      boolean later = heads < kept.head().size() || !kept.rows().isEmpty();
      return later ? Optional.of(Given.NONE) : Optional.empty();
    }

    private String wrench(List<String> line) {
      List<String> parts = new ArrayList<>(line);
      wrench.add(parts.get(2) + " " + parts.get(4));
      wrench.add(parts.get(3) + " " + parts.get(4));
      boolean dated = parts.size() > 5 && parts.get(5).matches("2[0-9]{3}-.*");
      wrench.add(dated ? parts.get(5) : Given.NONE);
      String last = parts.get(parts.size() - 1);
      if (dated && last.endsWith("%")) {
        wrench.add(last);
      } else if (dated) {
        noMore().ifPresent(wrench::add);
      }
      return parts.get(1);
    }

    private Optional<Map<String, String>> next() {
      return row + 1 < kept.rows().size()
          ? Optional.of(kept.rows().get(row + 1))
          : Optional.empty();
    }

    private String kind(Map<String, String> next) {
      String name = next.get(Wanted.PHASE.heading()) + "|" + next.get(Wanted.SIDE.heading());
      boolean other = !phase.isEmpty() && !phase.equals(name);
      phase = name;
      if (other) {
        return "phase";
      }
      begin(Wanted.KIND);
      String notesCell = kept.rows().get(row).getOrDefault(Wanted.NOTE.heading(), "");
      notes = parts(notesCell, " ?\\| ?");
      return kept.rows().get(row).getOrDefault(Wanted.KIND.heading(), "fasten");
    }

    private String begin(Wanted wanted) {
      row++;
      stages = parts(kept.rows().get(row).getOrDefault(Wanted.STAGE.heading(), ""), " \\+ ");
      return kept.rows().get(row).getOrDefault(wanted.heading(), "");
    }

    private static Deque<String> parts(String cell, String between) {
      return cell.isEmpty()
          ? new ArrayDeque<>()
          : new ArrayDeque<>(List.of(cell.split(between, -1)));
    }

    /** Whether the next row is another class of the fastener at hand. */
    private boolean sameStep() {
      Map<String, String> now = kept.rows().get(row);
      return next()
          .filter(r -> r.containsKey(Wanted.MARKING.heading()))
          .filter(r -> same(r, now, Wanted.FASTENER) && same(r, now, Wanted.STEP))
          .filter(r -> same(r, now, Wanted.PHASE) && same(r, now, Wanted.SIDE))
          .isPresent();
    }

    private static boolean same(Map<String, String> one, Map<String, String> two, Wanted wanted) {
      return one.getOrDefault(wanted.heading(), "").equals(two.getOrDefault(wanted.heading(), ""));
    }

    private Optional<String> rideHeight() {
      return kept.head().stream()
          .filter(line -> line.get(0).equals("ride height"))
          .map(line -> line.get(1))
          .findFirst();
    }
  }
}
