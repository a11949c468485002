package org.undercall.core.intent;

import static org.undercall.core.intent.Continuation.DENIAL;
import static org.undercall.core.intent.Continuation.DIGIT;
import static org.undercall.core.intent.Continuation.MORE;
import static org.undercall.core.intent.Continuation.NOTHING;
import static org.undercall.core.intent.Continuation.NUMBER;
import static org.undercall.core.intent.Continuation.UNIT;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.term.SpellingAlphabet;

/** Tells whether a phrase could go on, so that its end is not decided too soon. */
public final class Continuations {
  /** Values have up to three digits before the point, hardly ever more. */
  private static final int USUAL_DIGITS = 3;

  private Continuations() {}

  /**
   * What could follow the words, given what may be said now.
   *
   * @param words lower case, with one blank between them
   * @param allowed what may be said now
   * @return the likeliest; empty if the words are no phrase yet, and for a note, which never ends
   *     by its words
   */
  public static Optional<Continuation> of(String words, Set<IntentKind> allowed) {
    if (words.isBlank() || allowed.contains(IntentKind.NOTE_TEXT)) {
      return Optional.empty();
    }
    Intent intent = Interpreter.interpret(RecognisedPhrase.typed(words), allowed, 0);
    if (intent instanceof Unclear unclear && unclear.number().isEmpty()) {
      return Optional.empty();
    }
    List<String> list = List.of(words.split(" ", -1));
    return allowed.stream()
        .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
        .map(wording -> after(list, wording))
        .max(Continuation::compareTo)
        .map(next -> next == NOTHING && intent.kind().closes() ? DENIAL : next);
  }

  private static Continuation after(List<String> words, Wording wording) {
    List<String> before = wording.before();
    if (before.size() >= words.size()) {
      boolean longer = before.size() > words.size() || wording.slot().isPresent();
      return longer && before.subList(0, words.size()).equals(words) ? MORE : NOTHING;
    }
    if (wording.slot().isEmpty() || !words.subList(0, before.size()).equals(before)) {
      return NOTHING;
    }
    Slot slot = wording.slot().get();
    boolean counts = slot == Slot.STEP || !slot.units().isEmpty();
    if (counts && wording.after().isEmpty()) {
      Continuation next = afterNumber(words.subList(before.size(), words.size()));
      return slot == Slot.STEP ? afterStep(next) : next;
    }
    if (slot.isSpelled()) {
      return SpellingAlphabet.read(words.subList(before.size(), words.size())).isPresent()
          ? NUMBER
          : NOTHING;
    }
    String begun = String.join(" ", words) + " ";
    return Fillings.of(slot).stream().anyMatch(f -> wording.filled(f).startsWith(begun))
        ? MORE
        : NOTHING;
  }

  /** A step's number has no unit and seldom more than two digits. */
  private static Continuation afterStep(Continuation next) {
    return next == UNIT ? NOTHING : DIGIT;
  }

  /** What may follow words that fill a slot for a number; nothing if they end with a unit. */
  static Continuation afterNumber(List<String> words) {
    if (!isNumber(words)) {
      return NOTHING;
    }
    int point = words.indexOf(NumberWords.POINT);
    if (point >= 0) {
      return words.size() - point > 2 ? UNIT : DIGIT;
    }
    if (words.stream().allMatch(word -> NumberWords.digit(word) >= 0)) {
      return words.size() < USUAL_DIGITS ? NUMBER : UNIT;
    }
    String last = words.get(words.size() - 1);
    if (last.equals(NumberWords.HUNDRED) || last.equals(NumberWords.THOUSAND)) {
      return NUMBER;
    }
    boolean afterTens = NumberWords.tens(last) > 0 || NumberWords.teen(last) > 10;
    return afterTens || words.size() == 1 ? DIGIT : UNIT;
  }

  private static boolean isNumber(List<String> words) {
    return SpokenNumbers.read(words) instanceof NumberReading.Read;
  }
}
