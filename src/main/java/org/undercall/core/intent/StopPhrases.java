package org.undercall.core.intent;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What may be called over the program's own words: it falls silent, and a load is cancelled. */
public final class StopPhrases {
  /** All of them: what silences the voice, and what cancels a load, in two words or more. */
  public static final List<String> ALL =
      Stream.of(IntentKind.values())
          .filter(kind -> kind == IntentKind.BE_QUIET || kind.cancelsLoad())
          .flatMap(kind -> Phrasebook.wordings(kind).stream())
          .filter(phrase -> phrase.contains(" "))
          .toList();

  private StopPhrases() {}

  /** Whether one of these phrases cancels a load, so that it must be decided on. */
  public static boolean cancels(String phrase) {
    return !Phrasebook.wordings(IntentKind.BE_QUIET).contains(phrase);
  }

  /**
   * The phrases to listen for while something is spoken: never one whose words are all among those
   * that are spoken, since the program would hear itself.
   *
   * @return may be empty; then nothing must be listened for
   */
  public static List<String> over(String spoken) {
    return over(spoken, ALL);
  }

  /** Those of these phrases that may be listened for while something is spoken. */
  public static List<String> over(String spoken, List<String> phrases) {
    List<String> words = words(spoken.toLowerCase(Locale.ROOT).replaceAll("[^a-z' ]+", " "));
    return phrases.stream().filter(phrase -> !words.containsAll(words(phrase))).toList();
  }

  /** The first of these phrases that stands in what was heard, among other words or alone. */
  public static Optional<String> in(String heard, List<String> phrases) {
    List<String> words = words(heard);
    return phrases.stream().filter(phrase -> at(words, words(phrase)) >= 0).findFirst();
  }

  /**
   * How sure the recogniser was of a phrase that stands among other words.
   *
   * @return the least confidence of its words, from 0 to 1; 0 if the phrase is not there
   */
  public static double confidence(RecognisedPhrase heard, String phrase) {
    List<String> wanted = words(phrase);
    int at = at(heard.words().stream().map(RecognisedPhrase.Word::text).toList(), wanted);
    return at < 0
        ? 0
        : heard.words().subList(at, at + wanted.size()).stream()
            .mapToDouble(RecognisedPhrase.Word::confidence)
            .min()
            .orElse(0);
  }

  private static int at(List<String> words, List<String> wanted) {
    return IntStream.rangeClosed(0, words.size() - wanted.size())
        .filter(i -> words.subList(i, i + wanted.size()).equals(wanted))
        .findFirst()
        .orElse(-1);
  }

  private static List<String> words(String text) {
    return List.of(text.strip().split("\\s+", -1));
  }
}
