package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
   * @return whole phrases: for what holds a number, numbers with the words before it as they are;
   *     for a short note, what cancels a load; empty if the phrase may stand as it is, or is
   *     nothing but foreign words
   */
  public static Optional<List<String>> phrases(
      RecognisedPhrase first, Set<IntentKind> allowed, double minimumConfidence) {
    if (allowed.contains(IntentKind.NOTE_TEXT)) {
      boolean mayCall = first.words().size() <= Witness.MOST_WORDS;
      return mayCall ? Optional.of(CALLS) : Optional.empty();
    }
    List<String> words = first.words().stream().map(RecognisedPhrase.Word::text).toList();
    Optional<List<String>> numbers = numbersFor(words, allowed);
    if (numbers.isPresent()) {
      return numbers;
    }
    boolean clear =
        !(Interpreter.interpret(first, allowed, minimumConfidence) instanceof Intent.Unclear);
    boolean foreign = words.stream().allMatch(RecognisedPhrase.UNKNOWN::equals);
    return clear || foreign ? Optional.empty() : Optional.of(Phrasebook.wordList(allowed));
  }

  private static Optional<List<String>> numbersFor(List<String> words, Set<IntentKind> allowed) {
    return allowed.stream()
        .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
        .filter(wording -> holdsNumber(wording, words))
        .map(Wording::before)
        .max((a, b) -> a.size() - b.size())
        .map(SecondLook::after);
  }

  private static boolean holdsNumber(Wording wording, List<String> words) {
    int start = wording.before().size();
    if (wording.slot().isEmpty() || wording.slot().get().units().isEmpty()) {
      return false;
    }
    List<String> known = words.stream().filter(w -> !w.equals(RecognisedPhrase.UNKNOWN)).toList();
    if (known.size() <= start || !known.subList(0, start).equals(wording.before())) {
      return false;
    }
    List<String> rest = known.subList(start, known.size());
    return rest.stream().anyMatch(NumberWords.ALL::contains)
        && rest.stream().allMatch(SecondLook::isPartOfValue);
  }

  private static boolean isPartOfValue(String word) {
    return NumberWords.ALL.contains(word)
        || SlotWords.UNIT_WORDS.keySet().stream().anyMatch(unit -> unit.contains(word));
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
