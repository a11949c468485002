package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Gives measurements phrases to say. */
public final class SpokenSamples {
  private SpokenSamples() {}

  /** The digit that a word says, -1 if it says none. */
  public static int digit(String word) {
    return NumberWords.digit(word);
  }

  /** The digits of a number as words. */
  public static String digits(int number) {
    List<String> words = new ArrayList<>();
    for (char digit : Integer.toString(number).toCharArray()) {
      words.add(NumberWords.DIGITS.get(digit - '0'));
    }
    return String.join(" ", words);
  }

  /** Whether a number can hold the word. */
  public static boolean isNumberWord(String word) {
    return NumberWords.ALL.contains(word)
        && !word.equals(NumberWords.A)
        && !word.equals(NumberWords.AND);
  }

  /** Whether the words say digits only. */
  public static boolean isDigits(String words) {
    return Stream.of(words.split(" ", -1)).allMatch(word -> digit(word) >= 0);
  }

  /** Every way to say a number. */
  public static Set<String> wordings(int number) {
    return NumberWordings.of(number);
  }

  /** A phrase and what it means. */
  public record Phrase(String words, Intent intent) {}

  /** The phrases of a kind: a list a wording, with every sample filling of its slot. */
  public static List<List<Phrase>> phrases(IntentKind kind) {
    Map<String, List<Phrase>> byStart = new LinkedHashMap<>();
    for (Wording wording : Phrasebook.compiledWordings(kind)) {
      byStart.put(wording.toString(), new ArrayList<>());
    }
    for (Samples.Sample sample : Samples.of(kind)) {
      List<String> words = List.of(sample.phrase().split(" ", -1));
      Phrasebook.compiledWordings(kind).stream()
          .filter(wording -> !(wording.read(words) instanceof Intent.Unclear))
          .findFirst()
          .ifPresent(
              wording ->
                  byStart
                      .get(wording.toString())
                      .add(new Phrase(sample.phrase(), sample.intent())));
    }
    return byStart.values().stream().filter(list -> !list.isEmpty()).toList();
  }
}
