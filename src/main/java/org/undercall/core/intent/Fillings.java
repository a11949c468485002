package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercall.core.term.Side;
import org.undercall.core.term.SpellingAlphabet;

/** The words to listen for in each slot. */
final class Fillings {
  private static final int LARGEST_STEP_LISTENED = 99;

  /** Numbers before a unit's second wording, often the singular. */
  private static final List<String> SECOND =
      List.of("one", "five", "zero", "ten", "fifty", "one hundred");

  /**
   * Three digits, each first pair with three endings. Listened for as they are: with pairs alone, a
   * recogniser tends to lose the third digit.
   */
  static final List<String> THREE_DIGITS = threeDigits();

  /** Whole numbers that hold every neighbouring pair of number words. */
  private static final List<String> WHOLE_NUMBERS = coveringPairs();

  /** One long text, in which every word of the spelling alphabet follows every other. */
  private static final List<String> SPELLED = List.of(everyPair(SpellingAlphabet.words()));

  /** The units of a value that is called in one of them alone. */
  static final Set<SpokenUnit> WITHOUT_MINUTES =
      Stream.of(SpokenUnit.values())
          .filter(unit -> unit != SpokenUnit.MINUTES)
          .collect(Collectors.toUnmodifiableSet());

  private Fillings() {}

  private static String everyPair(List<String> words) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      all.add(words.get(i));
      for (int j = i + 1; j < words.size(); j++) {
        all.add(words.get(i));
        all.add(words.get(j));
      }
      all.add(words.get(i));
    }
    return String.join(" ", all);
  }

  /** Phrases for the slot, in a fixed order. */
  static List<String> of(Slot slot) {
    return switch (slot) {
      case TORQUE, ANGLE, LENGTH, VALUE -> quantities(slot);
      case SIGNED -> Readings.signed();
      case DEGREES_AND_MINUTES -> Readings.minutes();
      case STEP -> upTo(LARGEST_STEP_LISTENED).toList();
      case POSITION -> ofSet(1).toList();
      case COUNT -> ofSet(2).toList();
      case ALL ->
          ofSet(2)
              .flatMap(n -> Stream.of(n + " " + SlotWords.OF + " " + n, SlotWords.EVERY + " " + n))
              .toList();
      case SIDE -> List.copyOf(SlotWords.SIDES.values());
      case WHEEL_SIDE -> wheelSides();
      case SIDE_SAID -> List.copyOf(SlotWords.SIDES_SAID.keySet());
      case HARDWARE_AND_MORE -> OneAnswer.PHRASES;
      case MARKING -> markings();
      case TIMES -> SlotWords.TIMES.stream().skip(1).toList();
      case CAUSE -> List.copyOf(SlotWords.CAUSES.values());
      case EXCUSE -> List.copyOf(SlotWords.EXCUSES.values());
      case TROUBLE -> troubles();
      case REGISTRATION, VIN, JOB_NUMBER, TECHNICIAN, WITNESS_NAME -> SPELLED;
      case ODOMETER -> List.of(everyPair(NumberWords.DIGITS));
      case FINDING -> findings();
      case REASON -> SlotWords.REASONS.values().stream().flatMap(List::stream).toList();
      case TIMER -> List.copyOf(SlotWords.TIMERS.values());
      case MINUTES_AND_TIMER -> minutesAndTimer();
    };
  }

  static List<String> wheelSides() {
    return SlotWords.SIDES.entrySet().stream()
        .filter(side -> side.getKey() != Side.CAR)
        .map(Map.Entry::getValue)
        .toList();
  }

  /** Each trouble, and one of them with each number of a set. */
  private static List<String> troubles() {
    List<String> all = SlotWords.TROUBLES.values().stream().flatMap(List::stream).toList();
    return Stream.concat(
            all.stream(), ofSet(1).map(n -> SlotWords.NUMBER + " " + n + " " + all.get(0)))
        .toList();
  }

  /** Each wording alone, and the first of each with every side. */
  private static List<String> findings() {
    List<String> all = new ArrayList<>();
    for (List<String> wordings : SlotWords.FINDINGS.values()) {
      all.addAll(wordings);
      SlotWords.SIDES.values().forEach(side -> all.add(wordings.get(0) + " " + side));
    }
    return all;
  }

  /** Each number of a set as it is usually said. */
  private static Stream<String> ofSet(int least) {
    return Stream.of(NumberWords.DIGITS, NumberWords.TEENS)
        .flatMap(List::stream)
        .limit(Slot.LARGEST_SET + 1)
        .skip(least);
  }

  private static Stream<String> upTo(int largest) {
    return WHOLE_NUMBERS.stream().filter(number -> isUpTo(number, largest));
  }

  private static boolean isUpTo(String number, int largest) {
    return SpokenNumbers.read(List.of(number.split(" ", -1))) instanceof NumberReading.Read read
        && read.number().value().intValueExact() >= 1
        && read.number().value().intValueExact() <= largest;
  }

  /** Every number of minutes with one timer, and every timer with one number. */
  private static List<String> minutesAndTimer() {
    List<String> timers = List.copyOf(SlotWords.TIMERS.values());
    String several = " " + SlotWords.MINUTES_FOR.get(0) + " ";
    List<String> all = new ArrayList<>();
    upTo(Slot.MOST_MINUTES).forEach(number -> all.add(number + several + timers.get(0)));
    timers.forEach(timer -> all.add("ten" + several + timer));
    all.add("one " + SlotWords.MINUTES_FOR.get(1) + " " + timers.get(0));
    return all;
  }

  private static List<String> quantities(Slot slot) {
    return quantities(slot.units());
  }

  /** Numbers with and without these units. */
  static List<String> quantities(Set<SpokenUnit> units) {
    List<String> numbers = new ArrayList<>(WHOLE_NUMBERS);
    numbers.addAll(decimals());
    List<String> all = new ArrayList<>(numbers);
    for (SpokenUnit unit : SpokenUnit.values()) {
      if (units.contains(unit)) {
        List<String> wordings = SlotWords.UNITS.get(unit);
        endings().forEach(number -> all.add(number + " " + wordings.get(0)));
        wordings.stream().skip(1).limit(1).forEach(w -> SECOND.forEach(n -> all.add(n + " " + w)));
      }
    }
    return all;
  }

  /** Any word before the point, and each digit after it. */
  private static List<String> decimals() {
    List<String> decimals = new ArrayList<>();
    int digit = 0;
    for (String before : endings().toList()) {
      decimals.add(before + " point " + NumberWords.DIGITS.get(digit));
      digit = (digit + 1) % 10;
    }
    decimals.add("point five");
    decimals.add("a hundred point five");
    decimals.add("seven point oh five");
    return decimals;
  }

  /** A number for each word that a number can end with. */
  private static Stream<String> endings() {
    Stream<String> single =
        Stream.of(NumberWords.DIGITS, NumberWords.TEENS, NumberWords.TENS).flatMap(List::stream);
    return Stream.concat(single, Stream.of("two oh", "one hundred", "one thousand"));
  }

  private static List<String> markings() {
    return SlotWords.MARKINGS.stream()
        .flatMap(
            marking -> {
              int point = marking.indexOf('.');
              String decimal = NumberWords.DIGITS.get(marking.charAt(point + 1) - '0');
              int whole = Integer.parseInt(marking.substring(0, point));
              return NumberWordings.of(whole).stream().map(text -> text + " point " + decimal);
            })
        .toList();
  }

  private static List<String> threeDigits() {
    List<String> numbers = new ArrayList<>();
    for (int pair = 10; pair < 100; pair++) {
      int first = pair / 10;
      int second = pair % 10;
      for (int turn = 0; turn < 3; turn++) {
        int third = (first + 3 * second + 4 * turn) % 10;
        numbers.add(digit(first) + " " + digit(second) + " " + digit(third));
      }
    }
    return List.copyOf(numbers);
  }

  private static String digit(int digit) {
    return NumberWords.DIGITS.get(digit);
  }

  private static List<String> coveringPairs() {
    List<String> cover = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    IntStream.concat(IntStream.range(0, 2_000), IntStream.range(2, 10).map(n -> 1_000 * n))
        .mapToObj(NumberWordings::of)
        .flatMap(Set::stream)
        .filter(wording -> seen.addAll(WordList.pairs(wording)))
        .forEach(cover::add);
    return List.copyOf(cover);
  }
}
