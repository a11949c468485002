package org.undercall.core.term;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Letters and digits spelled aloud: the spelling alphabet of ICAO Annex 10, Volume II, 5.2.1.3,
 * recalled from memory, with the spellings that an English model knows, and the digits as they are
 * usually said.
 */
public final class SpellingAlphabet {
  private static final Map<String, Character> LETTERS = letters();

  /** Other spellings, which are understood and not listened for. */
  private static final Map<String, String> OTHERS =
      Map.of("alfa", "alpha", "juliett", "juliet", "xray", "x ray", "whisky", "whiskey");

  private static final List<String> DIGITS = NumberNames.DIGITS;

  /** Other words for digits, which are understood and not listened for. */
  private static final Map<String, String> OTHER_DIGITS = Map.of("oh", "0", "niner", "9");

  private SpellingAlphabet() {}

  private static Map<String, Character> letters() {
    Map<String, Character> letters = new LinkedHashMap<>();
    char letter = 'A';
    for (String word :
        """
        alpha bravo charlie delta echo foxtrot golf hotel india juliet kilo lima mike november
        oscar papa quebec romeo sierra tango uniform victor whiskey x_ray yankee zulu
        """
            .strip()
            .split("\\s+", -1)) {
      letters.put(word.replace('_', ' '), letter++);
    }
    return Collections.unmodifiableMap(letters);
  }

  /** Every word for a letter or a digit. */
  public static List<String> words() {
    List<String> words = new ArrayList<>(LETTERS.keySet());
    words.addAll(DIGITS);
    return List.copyOf(words);
  }

  /** What was spelled, in capitals; empty if a word stands for no letter and no digit. */
  public static Optional<String> read(List<String> words) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      boolean ray =
          words.get(i).equals("x") && i + 1 < words.size() && words.get(i + 1).equals("ray");
      String word = ray ? "x " + words.get(++i) : words.get(i);
      Character letter = LETTERS.get(OTHERS.getOrDefault(word, word));
      if (letter != null) {
        text.append(letter.charValue());
      } else if (DIGITS.contains(word)) {
        text.append(DIGITS.indexOf(word));
      } else if (OTHER_DIGITS.containsKey(word)) {
        text.append(OTHER_DIGITS.get(word));
      } else {
        return Optional.empty();
      }
    }
    return Optional.of(text.toString());
  }

  /** The words for a typed text: words of the alphabet as they are, anything else by character. */
  public static List<String> typed(String text) {
    List<String> words = new ArrayList<>();
    for (String part : text.strip().split("[^a-z0-9]+", -1)) {
      boolean ray =
          part.equals("ray") && !words.isEmpty() && words.get(words.size() - 1).equals("ray");
      if (ray) {
        continue;
      }
      if (read(List.of(part)).isPresent()) {
        words.add(part);
      } else {
        String spelled = spelled(part.toUpperCase(java.util.Locale.ROOT));
        words.addAll(spelled.isEmpty() ? List.of() : List.of(spelled.split(" ", -1)));
      }
    }
    return words;
  }

  /** A text of capitals and digits as it is spelled; other characters are left out. */
  public static String spelled(String text) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      LETTERS.entrySet().stream()
          .filter(letter -> letter.getValue() == c)
          .map(Map.Entry::getKey)
          .findFirst()
          .or(() -> Character.isDigit(c) ? Optional.of(DIGITS.get(c - '0')) : Optional.empty())
          .ifPresent(words::add);
    }
    return String.join(" ", words);
  }
}
