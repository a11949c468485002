package org.undercall.core.intent;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;

/** Finds what a recognised phrase means. */
public final class Interpreter {
  /** How sure the recogniser must be of every word of a phrase, from 0 to 1. */
  public static final double LEAST_CONFIDENCE = 0.6;

  private Interpreter() {}

  /**
   * Reads the phrase as a whole; a part of a phrase means nothing.
   *
   * <p>With {@link IntentKind#NOTE_TEXT} allowed, any words are a note and nothing else is read.
   *
   * <p>A number of one word, such as "nine", is {@link Reason#LONE_NUMBER}: it counts with its unit
   * or after "it reads".
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
    Intent intent = match(words, allowed);
    boolean sure = phrase.confidence() >= minimumConfidence;
    if (intent.equals(new Unclear(Reason.NOT_A_PHRASE))) {
      return sure && words.size() > 1 ? intent : new Unclear(Reason.STRAY_WORDS);
    }
    if (!sure) {
      return new Unclear(words.size() > 1 ? Reason.LOW_CONFIDENCE : Reason.STRAY_WORDS);
    }
    return lone(intent, words);
  }

  /** A number of one word counts only with more words around it. */
  private static Intent lone(Intent intent, List<String> words) {
    return words.size() == 1 && intent instanceof Intent.OfNumber value
        ? new Unclear(Reason.LONE_NUMBER, Optional.of(value.number()), Optional.empty())
        : intent;
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
