package org.undercall.core.intent;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What the recogniser heard between two pauses.
 *
 * @param words in order; empty if there was only noise
 * @param inParts whether a pause cut it in two, and the parts were put together
 */
public record RecognisedPhrase(List<Word> words, boolean inParts) {

  /** The word that stands for speech outside the list. */
  public static final String UNKNOWN = "[unk]";

  /**
   * One word.
   *
   * @param text lower case
   * @param confidence from 0 to 1
   * @param start in seconds of sound since the source was opened
   * @param end in seconds of sound since the source was opened
   */
  public record Word(String text, double confidence, double start, double end) {}

  public RecognisedPhrase {
    words = List.copyOf(words);
  }

  /** A phrase that was heard in one go. */
  public RecognisedPhrase(List<Word> words) {
    this(words, false);
  }

  /**
   * A phrase typed or pressed rather than heard: every word with full confidence, digits as words.
   */
  public static RecognisedPhrase typed(String text) {
    return new RecognisedPhrase(
        TypedWords.of(text).stream().map(word -> new Word(word, 1, 0, 0)).toList());
  }

  /** The words with a blank between them. */
  public String text() {
    return words.stream().map(Word::text).collect(Collectors.joining(" "));
  }

  /** The words that are on a list. */
  List<String> known() {
    return words.stream().map(Word::text).filter(text -> !text.equals(UNKNOWN)).toList();
  }

  /** The smallest confidence of a word, 1 if there are no words. */
  public double confidence() {
    return words.stream().mapToDouble(Word::confidence).min().orElse(1);
  }
}
