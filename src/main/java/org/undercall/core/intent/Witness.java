package org.undercall.core.intent;

import java.util.List;
import java.util.Set;

/**
 * Judges a phrase by what the same sound is when any word of the language may be heard. A list of
 * words hides every word that is not on it: "torque not reached" sounds like "torque reached" to
 * it. The free hearing is a bad reader and a good veto, so it never closes anything: it speaks
 * against what closes, and is believed where it makes safer.
 */
public final class Witness {
  /** Longer than any phrase, in seconds: talk among people, which is no concern of the program. */
  private static final double LONGEST = 5;

  /** A call of danger has no more words; what has is talk that happens to hold one. */
  private static final int MOST_WORDS = 5;

  private Witness() {}

  /** Whether the sound of a phrase must be heard freely too. */
  public static boolean isWanted(RecognisedPhrase heard, Set<IntentKind> allowed, double least) {
    if (allowed.contains(IntentKind.NOTE_TEXT) || heard.words().isEmpty()) {
      return false;
    }
    Intent intent = Interpreter.interpret(heard, allowed, least);
    return counts(intent.kind(), allowed)
        || intent.kind().cancelsLoad()
        || (intent instanceof Intent.Unclear && seconds(heard) <= LONGEST);
  }

  /**
   * What else the sound of a phrase could be, if it closes something: the same words with a denial.
   *
   * @return the phrase first; empty if it closes nothing or holds a number
   */
  public static List<String> rivals(RecognisedPhrase heard, Set<IntentKind> allowed, double least) {
    List<String> words = texts(heard);
    boolean closes = counts(Interpreter.interpret(heard, allowed, least).kind(), allowed);
    boolean number = words.stream().anyMatch(NumberWords.ALL::contains);
    return closes && !number ? Denials.around(words) : List.of();
  }

  /** The phrase, with too little confidence if a denial of it could be what was said. */
  public static RecognisedPhrase against(
      RecognisedPhrase heard, List<Alternative> alternatives, double least) {
    return Denials.holds(texts(heard), alternatives) ? heard : doubted(heard, least);
  }

  /** A value that is called again confirms what was read back. */
  private static boolean counts(IntentKind kind, Set<IntentKind> allowed) {
    boolean again = kind == IntentKind.VALUE_CALLED && allowed.contains(IntentKind.READ_BACK_RIGHT);
    return kind.closes() || again || kind == IntentKind.FITTED_SNUG;
  }

  /**
   * The phrase after both were heard.
   *
   * @param heard with the list
   * @param free the same sound with all words; may be without words
   * @return what was heard freely where that denies, cancels a load or is a short answer; else what
   *     was heard with the list, with too little confidence if the free hearing speaks against it,
   *     or bears no word of a phrase that cancels a load
   */
  public static RecognisedPhrase judged(
      RecognisedPhrase heard, RecognisedPhrase free, Set<IntentKind> allowed, double least) {
    if (free.words().isEmpty()) {
      return heard;
    }
    Intent intent = Interpreter.interpret(heard, allowed, least);
    IntentKind other = Interpreter.interpret(free, allowed, least).kind();
    if (intent instanceof Intent.Unclear unclear) {
      boolean talk = other.cancelsLoad() && free.words().size() > MOST_WORDS;
      return makesSafer(other, unclear) && !talk ? free : heard;
    }
    if (other.cancelsLoad()) {
      return free;
    }
    if (intent.kind().cancelsLoad()) {
      return Denials.bears(texts(heard), texts(free)) ? heard : doubted(heard, least / 2);
    }
    if (!Denials.contradicts(texts(heard), texts(free))) {
      return heard;
    }
    return other == IntentKind.DENIED ? free : doubted(heard, least);
  }

  private static boolean makesSafer(IntentKind free, Intent.Unclear heard) {
    boolean number = heard.number().isPresent();
    return free == IntentKind.DENIED
        || free.cancelsLoad()
        || (free == IntentKind.SHORT_ANSWER && !number);
  }

  private static RecognisedPhrase doubted(RecognisedPhrase heard, double least) {
    double confidence = Math.min(heard.confidence(), least / 2);
    return new RecognisedPhrase(
        heard.words().stream()
            .map(w -> new RecognisedPhrase.Word(w.text(), confidence, w.start(), w.end()))
            .toList());
  }

  private static double seconds(RecognisedPhrase heard) {
    List<RecognisedPhrase.Word> words = heard.words();
    return words.get(words.size() - 1).end() - words.get(0).start();
  }

  private static List<String> texts(RecognisedPhrase phrase) {
    return phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
  }
}
