package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.undercall.core.term.SpellingAlphabet;

/**
 * Turns typed text into the words that would have been spoken: "175 Nm" is "one seven five ...".
 */
final class TypedWords {
  private static final Pattern BREAKS = Pattern.compile("[\\s!?;:]+");

  /** A sign before a number: hyphen, minus sign or plus sign. */
  private static final Pattern SIGN = Pattern.compile("^[-−+](?=[0-9.])");

  /** Degrees written together with the minutes after them: 1°30'. */
  private static final Pattern DEGREES_BEFORE = Pattern.compile("°(?=[0-9])");

  private static final Pattern ENDING = Pattern.compile("[.,]+$");
  private static final Pattern NUMBER =
      Pattern.compile("(?<whole>[0-9]*)(\\.(?<decimals>[0-9]+))?(?<unit>[^0-9.,]*)");

  /** Signs for units, read only straight after a number. */
  private static final Map<String, String> UNIT_SIGNS =
      Map.ofEntries(
          Map.entry("nm", "newton meters"),
          Map.entry("n·m", "newton meters"),
          Map.entry("n.m", "newton meters"),
          Map.entry("ftlb", "foot pounds"),
          Map.entry("lbft", "foot pounds"),
          Map.entry("lbf·ft", "foot pounds"),
          Map.entry("inlb", "inch pounds"),
          Map.entry("lbf·in", "inch pounds"),
          Map.entry("°", "degrees"),
          Map.entry("deg", "degrees"),
          Map.entry("'", "minutes"),
          Map.entry("′", "minutes"),
          Map.entry("mm", "millimeters"),
          Map.entry("in", "inches"),
          Map.entry("km", "kilometers"));

  private TypedWords() {}

  /** What a spelled text may follow, such as "registration". */
  private static final List<String> SPELLED =
      Stream.of(IntentKind.JOB_TOLD, IntentKind.WITNESS_NAMED, IntentKind.WITNESSED)
          .flatMap(kind -> PhraseTable.WORDINGS.get(kind).stream())
          .map(wording -> wording.substring(0, wording.indexOf('<')))
          .toList();

  private static final Pattern SCANNED_VIN =
      Pattern.compile("(?=.*[0-9])(?=.*[a-z])[a-hj-npr-z0-9]{17}");

  /**
   * The words in order, lower case, numbers digit by digit. What is typed after a field of the job
   * counts as spelled, and so does an identification number alone, as a scanner types it.
   */
  static List<String> of(String text) {
    String line = text.strip().toLowerCase(Locale.ROOT);
    if (SCANNED_VIN.matcher(line).matches()) {
      return spelled("vehicle number ", line);
    }
    return SPELLED.stream()
        .filter(line::startsWith)
        .findFirst()
        .map(field -> spelled(field, line.substring(field.length())))
        .orElseGet(() -> plain(text));
  }

  private static List<String> spelled(String field, String text) {
    List<String> words = new ArrayList<>(List.of(field.strip().split(" ", -1)));
    words.addAll(SpellingAlphabet.typed(text));
    return words;
  }

  private static List<String> plain(String text) {
    List<String> words = new ArrayList<>();
    boolean afterNumber = false;
    String apart = DEGREES_BEFORE.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll("° ");
    for (String part : BREAKS.split(apart, -1)) {
      String unsigned = ENDING.matcher(part).replaceAll("");
      Matcher sign = SIGN.matcher(unsigned);
      String token = sign.replaceFirst("");
      if (!token.equals(unsigned)) {
        words.add(unsigned.startsWith("+") ? "plus" : "minus");
      }
      if (token.isEmpty()) {
        continue;
      }
      Matcher number = NUMBER.matcher(token);
      boolean isNumber =
          number.matches()
              && (!number.group("whole").isEmpty() || number.group("decimals") != null);
      if (isNumber) {
        addNumber(words, number);
      } else {
        addWords(words, afterNumber ? unit(token) : token);
      }
      afterNumber = isNumber;
    }
    return words;
  }

  private static void addNumber(List<String> words, Matcher number) {
    addDigits(words, number.group("whole"));
    String decimals = number.group("decimals");
    if (decimals != null) {
      words.add(NumberWords.POINT);
      addDigits(words, decimals);
    }
    String unit = number.group("unit");
    if (!unit.isEmpty()) {
      addWords(words, unit(unit));
    }
  }

  private static void addDigits(List<String> words, String digits) {
    digits.chars().forEach(digit -> words.add(NumberWords.DIGITS.get(digit - '0')));
  }

  private static String unit(String sign) {
    return UNIT_SIGNS.getOrDefault(sign.replace("-", ""), sign);
  }

  private static void addWords(List<String> words, String text) {
    Arrays.stream(text.split("[ -]+", -1)).filter(word -> !word.isEmpty()).forEach(words::add);
  }
}
