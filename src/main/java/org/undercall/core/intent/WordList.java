package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects the phrases to listen for.
 *
 * <p>A recogniser makes a model of neighbouring words from them, so of the many fillings of a slot
 * only those are kept that bring a pair of neighbours not seen before, and once the numbers of
 * three digits.
 */
final class WordList {
  private final List<String> phrases = new ArrayList<>();
  private final Set<String> pairs = new HashSet<>();
  private boolean hasThreeDigits;

  /** Adds all phrases of a wording that are needed. */
  void add(Wording wording) {
    if (wording.slot().isEmpty()) {
      addAlways(wording.filled(""));
      return;
    }
    if (!hasThreeDigits && !wording.slot().get().units().isEmpty()) {
      Fillings.THREE_DIGITS.forEach(number -> addAlways(wording.filled(number)));
      hasThreeDigits = true;
    }
    for (String filling : Fillings.of(wording.slot().get())) {
      String phrase = wording.filled(filling);
      if (pairs.addAll(pairs(phrase))) {
        phrases.add(phrase);
      }
    }
  }

  private void addAlways(String phrase) {
    pairs.addAll(pairs(phrase));
    phrases.add(phrase);
  }

  /** The phrases in the order added. */
  List<String> phrases() {
    return List.copyOf(phrases);
  }

  /** The neighbouring words, the start and the end of the phrase counting as words. */
  static List<String> pairs(String phrase) {
    List<String> pairs = new ArrayList<>();
    String last = "<s>";
    for (String word : phrase.split(" ", -1)) {
      pairs.add(last + " " + word);
      last = word;
    }
    pairs.add(last + " </s>");
    return pairs;
  }
}
