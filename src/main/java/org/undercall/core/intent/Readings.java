package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.core.intent.Intent.OfNumber;
import org.undercall.core.intent.Intent.OfReading;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;

/**
 * Reads measured values that have a sign, or are called in degrees and minutes.
 *
 * <pre>
 * signed  = sign number [unit]
 * minutes = [sign] [number "degrees"] number "minutes"
 * sign    = "minus" | "plus"
 * </pre>
 */
final class Readings {
  private static final int MINUTES_IN_A_DEGREE = 60;
  private static final int TENS_BELOW_SIXTY = 4;
  private static final int DEGREES_IN_A_TURN = 360;
  private static final int MOST_MINUTES_ALONE = 300;

  private static final List<String> SIGNS = List.copyOf(SlotWords.SIGNS.keySet());
  private static final List<String> DEGREES = SlotWords.UNITS.get(SpokenUnit.DEGREES);
  private static final List<String> MINUTES = SlotWords.UNITS.get(SpokenUnit.MINUTES);

  private Readings() {}

  /** A number with its sign. */
  static Intent signed(IntentKind kind, List<String> words) {
    if (words.isEmpty() || !SIGNS.contains(words.get(0))) {
      return new Unclear(Reason.NOT_A_PHRASE);
    }
    Intent read = Slot.VALUE.read(kind, words.subList(1, words.size()));
    return read instanceof OfNumber number
        ? new OfReading(kind, with(words.get(0), number.number().value()), number.unit(), true)
        : read;
  }

  /** Degrees and less than a degree in minutes; the value is all the minutes. */
  static Intent minutes(IntentKind kind, List<String> words) {
    boolean signed = !words.isEmpty() && SIGNS.contains(words.get(0));
    int end = words.size() - 1;
    if (end < 0 || !MINUTES.contains(words.get(end))) {
      return new Unclear(Reason.NOT_A_PHRASE);
    }
    List<String> rest = words.subList(Math.min(end, signed ? 1 : 0), end);
    int cut = Math.max(rest.indexOf(DEGREES.get(0)), rest.indexOf(DEGREES.get(1)));
    int degrees = cut < 0 ? 0 : whole(rest.subList(0, cut), DEGREES_IN_A_TURN);
    int below = cut < 0 ? MOST_MINUTES_ALONE : MINUTES_IN_A_DEGREE;
    int minutes = whole(rest.subList(cut + 1, rest.size()), below);
    if (degrees < 0 || minutes < 0) {
      return new Unclear(Reason.NOT_A_PHRASE);
    }
    BigDecimal all = BigDecimal.valueOf((long) degrees * MINUTES_IN_A_DEGREE + minutes);
    return new OfReading(
        kind, signed ? with(words.get(0), all) : all, Optional.of(SpokenUnit.MINUTES), signed);
  }

  private static BigDecimal with(String sign, BigDecimal value) {
    return value.multiply(BigDecimal.valueOf(SlotWords.SIGNS.get(sign)));
  }

  /** A whole number below this; -1 if the words are none. */
  private static int whole(List<String> words, int below) {
    return SpokenNumbers.read(words) instanceof NumberReading.Read read
            && read.number().value().scale() == 0
            && read.number().value().intValueExact() < below
        ? read.number().value().intValueExact()
        : -1;
  }

  /** Phrases to listen for: each sign before each number. */
  static List<String> signed() {
    List<String> numbers = Fillings.quantities(Set.of(SpokenUnit.DEGREES));
    return SIGNS.stream().flatMap(s -> numbers.stream().map(n -> s + " " + n)).toList();
  }

  /** Phrases to listen for: degrees before each number, and each number before minutes. */
  static List<String> minutes() {
    List<String> all = new ArrayList<>();
    for (String degrees : DEGREES) {
      Stream.of(
              NumberWords.DIGITS, NumberWords.TEENS, NumberWords.TENS.subList(0, TENS_BELOW_SIXTY))
          .flatMap(List::stream)
          .forEach(n -> all.add("one " + degrees + " " + n + " " + MINUTES.get(0)));
    }
    all.add("zero degrees one " + MINUTES.get(1));
    all.add("twelve " + MINUTES.get(0));
    return all;
  }
}
