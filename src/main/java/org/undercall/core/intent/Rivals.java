package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What else a phrase that closes something could have been: the same with a denial, with the other
 * side, or with any other word. A list of words hides what is not on it, so these are put on one
 * list with the phrase, and the same sound must speak for the phrase by far.
 */
final class Rivals {
  /** The words put into a phrase to see whether one of them was said in it. */
  private static final List<String> PUT_IN =
      List.of(
          ("not never no isn't hasn't didn't don't almost nearly half only yet is when if until"
                  + " before without used old will soon should nothing "
                  + RecognisedPhrase.UNKNOWN)
              .split(" ", -1));

  /** "When" is too near to "one", "if" to "fifty". */
  private static final Set<String> LIKE_NUMBERS =
      Set.of("no", "is", "when", "if", "until", "before", "old", "used", RecognisedPhrase.UNKNOWN);

  /** What may stand in place of a word of a phrase and turns it round. */
  private static final Map<String, List<String>> INSTEAD =
      Map.of(
          "left", List.of("right"),
          "right", List.of("left", "wrong"),
          "new", List.of("used", "old"),
          "correct", List.of("incorrect"),
          "passed", List.of("failed"));

  private Rivals() {}

  /**
   * A phrase, and all that it is held against. In a number nothing is put, and beside it no word
   * that sounds like one.
   */
  static List<String> around(List<String> phrase) {
    boolean number = phrase.stream().anyMatch(NumberWords.ALL::contains);
    List<String> all = new ArrayList<>(List.of(String.join(" ", phrase)));
    for (int at = 0; at <= phrase.size(); at++) {
      boolean within = at > 0 && NumberWords.ALL.contains(phrase.get(at - 1));
      for (String word : within ? List.<String>of() : PUT_IN) {
        if (!number || !LIKE_NUMBERS.contains(word)) {
          List<String> with = new ArrayList<>(phrase);
          with.add(at, word);
          all.add(String.join(" ", with));
        }
      }
    }
    for (int at = 0; at < phrase.size(); at++) {
      for (String word : INSTEAD.getOrDefault(phrase.get(at), List.of())) {
        List<String> with = new ArrayList<>(phrase);
        with.set(at, word);
        all.add(String.join(" ", with));
      }
    }
    return all;
  }

  /**
   * How far a phrase leads.
   *
   * @param alternatives what the same sound could be
   * @return its score less that of the likeliest other; infinite if one of them is missing
   */
  static double lead(List<String> phrase, List<Alternative> alternatives) {
    return best(alternatives, phrase, true) - best(alternatives, phrase, false);
  }

  private static double best(List<Alternative> alternatives, List<String> phrase, boolean own) {
    return alternatives.stream()
        .filter(one -> one.texts().equals(phrase) == own)
        .mapToDouble(Alternative::score)
        .max()
        .orElse(own ? Double.NEGATIVE_INFINITY : -Double.MAX_VALUE);
  }

  /** The likeliest of all. */
  static Optional<RecognisedPhrase> likeliest(List<Alternative> alternatives) {
    return alternatives.stream()
        .max(Comparator.comparingDouble(Alternative::score))
        .map(one -> new RecognisedPhrase(one.words()));
  }
}
