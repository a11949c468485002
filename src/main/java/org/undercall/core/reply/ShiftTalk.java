package org.undercall.core.reply;

import java.util.ArrayList;
import java.util.List;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.SpellingAlphabet;

/** What the program says when the work goes from one technician to the next. */
public final class ShiftTalk {
  /** About twenty seconds of speech. */
  private static final int MOST_WORDS = 44;

  private static final int MOST_NAMED = 3;

  private ShiftTalk() {}

  /**
   * Something the next one must know.
   *
   * @param what in a word or two
   * @param steps what it is about
   */
  public record Matter(String what, List<String> steps) {
    public Matter {
      steps = List.copyOf(steps);
    }
  }

  /** How the work stands, with as many names as fit into twenty seconds. */
  public static Reply spoken(List<Matter> matters, int notes, String next) {
    for (int named = MOST_NAMED; named > 0; named--) {
      Reply reply = spoken(matters, notes, next, named);
      if (words(reply) <= MOST_WORDS) {
        return reply;
      }
    }
    return spoken(matters, notes, next, 0);
  }

  private static Reply spoken(List<Matter> matters, int notes, String next, int named) {
    List<String> sentences = new ArrayList<>();
    for (Matter matter : matters) {
      if (!matter.steps().isEmpty()) {
        sentences.add(Words.sentence(matter.what()) + ": " + list(matter.steps(), named) + ".");
      }
    }
    if (notes > 0) {
      sentences.add(Words.sentence(Words.count(notes)) + (notes == 1 ? " note." : " notes."));
    }
    if (!next.isEmpty()) {
      sentences.add("Next: " + next + ".");
    }
    return Reply.of(sentences);
  }

  private static String list(List<String> steps, int named) {
    if (named == 0) {
      return Words.count(steps.size());
    }
    int more = steps.size() - named;
    String names = String.join("; ", steps.subList(0, Math.min(named, steps.size())));
    return more > 0 ? names + "; and " + Words.count(more) + " more" : names;
  }

  private static int words(Reply reply) {
    return reply.text().split("\\s+", -1).length;
  }

  /** A step, with its side. */
  public static String step(Walk.Place place) {
    return Words.step(place.ref(), place.step().head().title());
  }

  /** A step with its number. */
  public static String step(int number, Walk.Place place) {
    return "step " + Words.count(number) + ", " + step(place);
  }

  /** A fastener that was tightened in part. */
  public static String begun(Walk.Place place, int stages) {
    String far =
        switch (stages) {
          case 0 -> "first stage begun";
          case 1 -> "one stage";
          default -> Words.count(stages) + " stages";
        };
    return step(place) + ", " + far;
  }

  /** A step that was put off, and why. */
  public static String putOff(Walk.Place place, PutOffReason reason) {
    return step(place) + ", " + Words.reason(reason);
  }

  /** How many steps somebody closed, to be read. */
  public static String closedBy(String who, int steps) {
    return "closed by "
        + (who.isEmpty() ? "a technician who is not named" : who)
        + ": "
        + steps
        + (steps == 1 ? " step" : " steps");
  }

  /** Who takes over is asked for; the same technician may go on. */
  public static Reply whoTakesOver() {
    return Reply.of(
        "Who takes over, say: technician, and your name.", "Same technician: resume the work.");
  }

  /** Who takes over is named, and hears the cautions. */
  public static Reply named(String technician) {
    return Reply.of("Technician " + SpellingAlphabet.spelled(technician) + ".");
  }

  /** The work goes on only when the next one named himself. */
  public static Reply noName() {
    return Reply.of(
        "No. First say: technician, and your name.", "Same technician: resume the work.");
  }

  /** The same technician goes on. */
  public static Reply nobodyTookOver() {
    return Reply.of("Nobody took over. If you are new, say: hand over the work.");
  }
}
