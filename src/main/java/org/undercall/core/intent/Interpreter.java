package org.undercall.core.intent;

import java.util.List;
import java.util.Set;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;

/** Finds what a recognised phrase means. */
public final class Interpreter {
  private Interpreter() {}

  /**
   * Reads the phrase as a whole; a part of a phrase means nothing.
   *
   * <p>With {@link IntentKind#NOTE_TEXT} allowed, any words are a note and nothing else is read.
   *
   * @param allowed what may be said now
   * @param minimumConfidence from 0 to 1; no word may be below it
   * @return an intent of an allowed kind, or {@link Unclear}
   */
  public static Intent interpret(
      RecognisedPhrase phrase, Set<IntentKind> allowed, double minimumConfidence) {
    List<String> words = phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
    if (allowed.contains(IntentKind.NOTE_TEXT)) {
      return note(words);
    }
    if (words.isEmpty()) {
      return new Unclear(Reason.NOT_A_PHRASE);
    }
    if (!Phrasebook.words().containsAll(words)) {
      return new Unclear(Reason.FOREIGN_WORDS);
    }
    if (!(phrase.confidence() >= minimumConfidence)) {
      return new Unclear(Reason.LOW_CONFIDENCE);
    }
    return match(words, allowed);
  }

  private static Intent match(List<String> words, Set<IntentKind> allowed) {
    Intent closest = new Unclear(Reason.NOT_A_PHRASE);
    for (IntentKind kind : IntentKind.values()) {
      if (!allowed.contains(kind)) {
        continue;
      }
      for (Wording wording : Phrasebook.compiledWordings(kind)) {
        Intent intent = wording.read(words);
        if (!(intent instanceof Unclear unclear)) {
          return intent;
        }
        if (unclear.reason() == Reason.AMBIGUOUS_NUMBER) {
          closest = unclear;
        }
      }
    }
    return closest;
  }

  private static Intent note(List<String> words) {
    List<String> known = words.stream().filter(w -> !w.equals(RecognisedPhrase.UNKNOWN)).toList();
    return known.isEmpty()
        ? new Unclear(words.isEmpty() ? Reason.NOT_A_PHRASE : Reason.FOREIGN_WORDS)
        : new Intent.NoteText(String.join(" ", words));
  }
}
