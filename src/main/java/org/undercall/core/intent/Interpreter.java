package org.undercall.core.intent;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;

/** Finds what a recognised phrase means. */
public final class Interpreter {
  /** How sure the recogniser must be of every word of a phrase, from 0 to 1. */
  public static final double LEAST_CONFIDENCE = 0.6;

  /** A pause within a number, in seconds, after which it is read back before it counts. */
  private static final double LONG_PAUSE = 0.75;

  private Interpreter() {}

  /**
   * Reads the phrase as a whole; a part of a phrase means nothing.
   *
   * <p>With {@link IntentKind#NOTE_TEXT} allowed, any words are a note; only what cancels a load is
   * read in it.
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
      return cancelling(phrase, allowed, needed(IntentKind.DANGER, minimumConfidence))
          .or(() -> callAlone(phrase, words, allowed, minimumConfidence))
          .orElseGet(() -> note(words));
    }
    if (words.isEmpty()) {
      return new Unclear(Reason.NOT_A_PHRASE);
    }
    Intent intent = match(words, allowed);
    if (intent instanceof Unclear) {
      Optional<Intent> safe = safer(phrase, words, allowed, minimumConfidence);
      if (safe.isPresent()) {
        return safe.get();
      }
    }
    if (intent instanceof Unclear && !Phrasebook.words().containsAll(words)) {
      return new Unclear(Reason.FOREIGN_WORDS);
    }
    boolean sure = phrase.confidence() >= needed(intent.kind(), minimumConfidence);
    if (intent.equals(new Unclear(Reason.NOT_A_PHRASE))) {
      return sure && words.size() > 1 ? intent : new Unclear(Reason.STRAY_WORDS);
    }
    if (!sure) {
      return new Unclear(words.size() > 1 ? Reason.LOW_CONFIDENCE : Reason.STRAY_WORDS);
    }
    return lone(paused(intent, phrase), words);
  }

  /** What cancels a load needs half the certainty of what closes. */
  private static double needed(IntentKind kind, double minimumConfidence) {
    return kind.cancelsLoad() ? minimumConfidence / 2 : minimumConfidence;
  }

  /**
   * What makes safer is found among any words: a phrase that cancels a load; else a denial. Neither
   * closes anything, so both are believed lightly.
   */
  private static Optional<Intent> safer(
      RecognisedPhrase phrase,
      List<String> words,
      Set<IntentKind> allowed,
      double minimumConfidence) {
    double needed = needed(IntentKind.DANGER, minimumConfidence);
    Optional<Intent> cancels = cancelling(phrase, allowed, needed);
    return cancels.isPresent() || phrase.confidence() < needed
        ? cancels
        : Denials.read(words, allowed);
  }

  /** A phrase of two words or more that cancels a load, among any words. */
  private static Optional<Intent> cancelling(
      RecognisedPhrase phrase, Set<IntentKind> allowed, double needed) {
    List<String> words = phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
    return allowed.stream()
        .filter(IntentKind::cancelsLoad)
        .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
        .filter(wording -> wording.before().size() > 1)
        .filter(wording -> Collections.indexOfSubList(words, wording.before()) >= 0)
        .filter(wording -> StopPhrases.confidence(phrase, wording.filled("")) >= needed)
        .findFirst()
        .map(wording -> new Intent.Plain(wording.kind()));
  }

  /** A whole note that is a call of one word, such as "stop", and was surely heard. */
  private static Optional<Intent> callAlone(
      RecognisedPhrase phrase,
      List<String> words,
      Set<IntentKind> allowed,
      double minimumConfidence) {
    Set<IntentKind> calls =
        allowed.stream().filter(IntentKind::cancelsLoad).collect(Collectors.toSet());
    return Optional.of(match(words, calls))
        .filter(intent -> !(intent instanceof Unclear) && phrase.confidence() >= minimumConfidence);
  }

  /** A number with a long pause in it is marked so. */
  private static Intent paused(Intent intent, RecognisedPhrase phrase) {
    return intent instanceof Intent.OfNumber value && (phrase.inParts() || hasPause(phrase.words()))
        ? new Intent.OfNumber(
            value.kind(),
            new SpokenNumber(value.number().value(), SpokenNumber.Style.WITH_PAUSE),
            value.unit())
        : intent;
  }

  private static boolean hasPause(List<RecognisedPhrase.Word> words) {
    return IntStream.range(1, words.size())
        .filter(i -> NumberWords.ALL.contains(words.get(i).text()))
        .filter(i -> NumberWords.ALL.contains(words.get(i - 1).text()))
        .anyMatch(i -> words.get(i).start() - words.get(i - 1).end() >= LONG_PAUSE);
  }

  /** A number of one word counts only with more words around it: "no one" is chatter too. */
  private static Intent lone(Intent intent, List<String> words) {
    int least = intent.kind() == IntentKind.CORRECTED ? 2 : 1;
    return words.size() == least && intent instanceof Intent.OfNumber value
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
