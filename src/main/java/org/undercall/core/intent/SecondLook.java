package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells whether a phrase should be heard a second time, and what to listen for then. */
public final class SecondLook {
  /** Numbers with and without a unit, without any other words. */
  private static final List<String> NUMBERS = numbers();

  /** What cancels a load, which a note may hide: it is heard with all words of the language. */
  private static final List<String> CALLS =
      Phrasebook.wordList(
          Stream.of(IntentKind.values())
              .filter(IntentKind::cancelsLoad)
              .collect(Collectors.toSet()));

  private SecondLook() {}

  /**
   * What to listen for a second time.
   *
   * @param first as heard at first
   * @param allowed what may be said now
   * @return whole phrases: for what is a number, or no phrase but mostly number words, numbers with
   *     the words before it as they are; for a short note, what cancels a load; empty if the phrase
   *     may stand as it is, or is nothing but foreign words
   */
  public static Optional<List<String>> phrases(
      RecognisedPhrase first, Set<IntentKind> allowed, double minimumConfidence) {
    if (allowed.contains(IntentKind.NOTE_TEXT)) {
      boolean mayCall = first.words().size() <= Witness.MOST_WORDS;
      return mayCall ? Optional.of(CALLS) : Optional.empty();
    }
    List<String> words = first.known();
    Optional<List<String>> numbers = numbersFor(words, allowed, SlotWords::isValue);
    if (numbers.isPresent()) {
      return numbers;
    }
    boolean clear =
        !(Interpreter.interpret(first, allowed, minimumConfidence) instanceof Intent.Unclear);
    return clear || words.isEmpty()
        ? Optional.empty()
        : numbersFor(words, allowed, SecondLook::isMostlyNumber)
            .or(() -> Optional.of(Phrasebook.wordList(allowed)));
  }

  private static Optional<List<String>> numbersFor(
      List<String> words, Set<IntentKind> allowed, Predicate<List<String>> isNumber) {
    return allowed.stream()
        .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
        .filter(Wording::holdsNumber)
        .filter(wording -> wording.filling(words).filter(isNumber).isPresent())
        .map(Wording::before)
        .max((a, b) -> a.size() - b.size())
        .map(SecondLook::after);
  }

  /** Two number words or more and fewer others: "take six seven" is a number badly heard. */
  private static boolean isMostlyNumber(List<String> words) {
    long numbers = words.stream().filter(NumberWords.ALL::contains).count();
    return numbers >= 2 && 2 * numbers > words.size();
  }

  private static List<String> after(List<String> before) {
    String start = String.join(" ", before);
    return start.isEmpty() ? NUMBERS : NUMBERS.stream().map(n -> start + " " + n).toList();
  }

  /** Numbers of up to three digits with and without these units. */
  static List<String> numbers(Set<SpokenUnit> units) {
    List<String> numbers = new ArrayList<>(Fillings.quantities(units));
    numbers.addAll(ofThreeDigits());
    return numbers;
  }

  private static List<String> numbers() {
    List<String> numbers = new ArrayList<>(Fillings.of(Slot.VALUE));
    numbers.addAll(ofThreeDigits());
    return List.copyOf(numbers);
  }

  private static List<String> ofThreeDigits() {
    List<String> numbers = new ArrayList<>();
    for (int value = 0; value < 1_000; value++) {
      numbers.add(
          NumberWords.DIGITS.get(value / 100)
              + " "
              + NumberWords.DIGITS.get(value / 10 % 10)
              + " "
              + NumberWords.DIGITS.get(value % 10));
    }
    return numbers;
  }
}
