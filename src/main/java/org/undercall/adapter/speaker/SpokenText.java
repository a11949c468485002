package org.undercall.adapter.speaker;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.undercall.core.term.NumberNames;

/**
 * Turns written text into words that every synthesiser can say.
 *
 * <p>Symbols of units become words, figures are read digit by digit, British "metres" becomes
 * "meters" (the same sound, but known to American word lists), and what cannot be said is left out.
 */
public final class SpokenText {
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)*");
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?;:])\\s+|\\s*\\R\\s*");
  private static final Pattern UNSAYABLE = Pattern.compile("[^\\p{L}'’.,!?;: -]+");
  private static final Pattern GAP_BEFORE_STOP = Pattern.compile("\\s+(?=[.,!?;:])");
  private static final Map<Pattern, String> UNITS = units();

  private SpokenText() {}

  /**
   * The words to say.
   *
   * @return the words; empty if there is nothing to say
   */
  public static String plain(String text) {
    String words = text;
    for (Map.Entry<Pattern, String> unit : UNITS.entrySet()) {
      words = unit.getKey().matcher(words).replaceAll(unit.getValue());
    }
    words = NUMBER.matcher(words).replaceAll(number -> digitByDigit(number.group()));
    words = UNSAYABLE.matcher(words).replaceAll(" ");
    words = GAP_BEFORE_STOP.matcher(words).replaceAll("").replaceAll("\\s+", " ").strip();
    return words.codePoints().anyMatch(Character::isLetter) ? words : "";
  }

  /** The text in sentences, each as {@link #plain} gives it; none that is empty. */
  public static List<String> sentences(String text) {
    return Arrays.stream(SENTENCE_END.split(text.strip()))
        .map(SpokenText::plain)
        .filter(sentence -> !sentence.isEmpty())
        .toList();
  }

  private static String digitByDigit(String number) {
    StringBuilder words = new StringBuilder(" ");
    for (int i = 0; i < number.length(); i++) {
      char c = number.charAt(i);
      if (c == '.') {
        words.append("point ");
      } else if (c != ',') {
        words.append(NumberNames.of(Character.digit(c, 10))).append(' ');
      }
    }
    return words.toString();
  }

  private static Map<Pattern, String> units() {
    Map<Pattern, String> units = new LinkedHashMap<>();
    units.put(Pattern.compile("(?<![\\p{L}])N\\s?[·.⋅*]?\\s?m(?![\\p{L}])"), " newton meters ");
    units.put(Pattern.compile("(?<![\\p{L}])lbf?\\s?[·.⋅-]?\\s?ft(?![\\p{L}])"), " foot pounds ");
    units.put(Pattern.compile("(?<![\\p{L}])lbf?\\s?[·.⋅-]?\\s?in(?![\\p{L}])"), " inch pounds ");
    units.put(
        Pattern.compile("(?<![\\p{L}])kgf?\\s?[·.⋅-]?\\s?m(?![\\p{L}])"), " kilogram meters ");
    units.put(Pattern.compile("(?<=\\d)\\s?mm(?![\\p{L}])"), " millimeters ");
    units.put(Pattern.compile("(?<=\\d)\\s?km(?![\\p{L}])"), " kilometers ");
    units.put(Pattern.compile("(?<=\\d)\\s?in(?=$|[.,;!?)])"), " inches ");
    units.put(Pattern.compile("\\s?°"), " degrees ");
    units.put(Pattern.compile("\\s?%"), " percent ");
    units.put(Pattern.compile("±"), " plus or minus ");
    units.put(Pattern.compile("(?<![\\d\\p{L}])[-−](?=\\d)"), " minus ");
    units.put(Pattern.compile("&"), " and ");
    units.put(Pattern.compile("(?i)metre"), "meter");
    return units;
  }
}
