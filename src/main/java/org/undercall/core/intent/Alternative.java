package org.undercall.core.intent;

import java.util.List;

/**
 * One of several things that may have been said.
 *
 * @param words in order, each as sure as can be; what is uncertain is which alternative is right
 * @param score natural logarithm of how likely it is, up to a constant that all alternatives for
 *     the same sound share
 */
public record Alternative(List<RecognisedPhrase.Word> words, double score) {
  public Alternative {
    words = List.copyOf(words);
  }

  /** The same words with another score. */
  Alternative with(double other) {
    return new Alternative(words, other);
  }

  /** The words alone. */
  List<String> texts() {
    return words.stream().map(RecognisedPhrase.Word::text).toList();
  }
}
