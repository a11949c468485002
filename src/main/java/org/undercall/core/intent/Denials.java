package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Tells what is denied, doubted, put off, limited or asked from what is said to be so.
 *
 * <p>Common words of English for it, from memory. A word too many costs a phrase that has to be
 * said again; one too few can make a no a yes.
 */
public final class Denials {
  private static final Set<String> WORDS =
      words(
          """
          not no nope never cannot nothing none nobody neither nor without almost nearly
          half halfway partly hardly barely only yet when if until till before unless
          once used old still maybe perhaps probably possibly should would could might
          will soon later tomorrow incorrect wrong unable failed fails except but
          instead think hope guess wait unfinished incomplete untightened loose missed
          forgot doubt unsure false quite other stop slipped another trying shall gonna
          going hopefully supposed supposedly apparently about around roughly approximately
          """);

  /** Those that no number sounds like: "when" is too near to "one", "for" to "four". */
  private static final Set<String> PLAIN =
      words(
          """
          not never cannot almost nearly half only hardly about around roughly approximately
          """);

  /** Words that say nothing about what is meant. */
  private static final Set<String> LITTLE =
      words(
          """
          to is of the this that with i me its on and at in a off are
          """);

  /** What begins a question. */
  private static final Set<String> QUESTIONS =
      words(
          """
          is are was were has have had did does do can what why how which where who am
          """);

  /** Each word for a side or an axle with the one that contradicts it. */
  private static final Map<String, String> ACROSS =
      Map.of("left", "right", "right", "left", "front", "rear", "rear", "front");

  /**
   * Heard freely, "nut" is "not", "knuckle" is "not all" and "rear" is "where"; such a phrase is
   * still weighed.
   */
  private static final Map<String, String> LIKE_DENIAL =
      Map.of("nut", "not", "knuckle", "not", "rear", "where");

  /** What "one", "two", "four" and "eight" are heard as, freely. */
  private static final Map<String, String> SOUND_LIKE =
      Map.of("won", "one", "to", "two", "too", "two", "for", "four", "ate", "eight");

  private static final List<Claimed> CLAIMS =
      Stream.of(IntentKind.values())
          .filter(IntentKind::closes)
          .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
          .map(Claimed::of)
          .toList();

  private Denials() {}

  private static Set<String> words(String text) {
    return Set.of(text.strip().split("\\s+", -1));
  }

  /** Whether a word of these denies or doubts, or they begin as a question does. */
  public static boolean in(List<String> words) {
    return words.stream().anyMatch(Denials::denies)
        || (!words.isEmpty() && QUESTIONS.contains(words.get(0)));
  }

  private static boolean denies(String word) {
    return WORDS.contains(word) || word.endsWith("n't");
  }

  /**
   * Whether words heard without a list speak against a phrase: they hold a denial that the phrase
   * itself does not hold, or the other side.
   *
   * @param phrase what was heard with a list
   * @param free what was heard in the same sound by somebody who knows all words
   */
  static boolean contradicts(List<String> phrase, List<String> free) {
    List<String> rest = new ArrayList<>(free);
    phrase.forEach(rest::remove);
    LIKE_DENIAL.entrySet().stream()
        .filter(like -> phrase.contains(like.getKey()) && !free.contains(like.getKey()))
        .forEach(like -> rest.remove(like.getValue()));
    boolean number = phrase.stream().anyMatch(NumberWords.ALL::contains);
    boolean denied =
        number
            ? rest.stream().anyMatch(w -> PLAIN.contains(w) || w.endsWith("n't"))
            : in(rest.isEmpty() || phrase.contains(free.get(0)) ? withoutFirst(rest) : rest);
    return denied || otherSide(phrase, rest);
  }

  /** What follows a word of the phrase is no question, whatever it begins with. */
  private static List<String> withoutFirst(List<String> rest) {
    List<String> marked = new ArrayList<>(List.of(""));
    marked.addAll(rest);
    return marked;
  }

  /** Whether a telling word of a phrase was heard freely too. */
  static boolean bears(List<String> phrase, List<String> free) {
    return phrase.stream()
        .filter(word -> !LITTLE.contains(word))
        .anyMatch(word -> free.stream().anyMatch(other -> alike(word, other)));
  }

  private static boolean otherSide(List<String> phrase, List<String> rest) {
    return ACROSS.entrySet().stream()
        .anyMatch(pair -> phrase.contains(pair.getKey()) && rest.contains(pair.getValue()));
  }

  /**
   * What is denied. A load can be denied at any time, so it need not be what can be said now.
   *
   * @param words as said; any words
   * @return empty if nothing is denied, or nothing that closes is named: at least half of the words
   *     of a wording, its numbers and sides apart, and of a question two: "have you got a minute,
   *     the car" asks for no load
   */
  static Optional<Intent> read(List<String> words, Set<IntentKind> allowed) {
    if (!allowed.contains(IntentKind.DENIED) || !in(words)) {
      return Optional.empty();
    }
    int least = words.stream().anyMatch(Denials::denies) ? 1 : 2;
    return CLAIMS.stream()
        .filter(claim -> claim.shared(words) >= 0.5 && claim.found(words) >= least)
        .max(
            Comparator.<Claimed>comparingDouble(claim -> claim.shared(words))
                .thenComparing(claim -> allowed.contains(claim.kind())))
        .map(claim -> new Intent.Denied(claim.kind(), position(words)));
  }

  /**
   * The position of a set that is named: the only number among the words, if it is small. At the
   * beginning a word that sounds like one counts too, since a denial only opens.
   */
  private static Optional<Integer> position(List<String> words) {
    List<String> spoken = new ArrayList<>(words);
    spoken.set(0, SOUND_LIKE.getOrDefault(words.get(0), words.get(0)));
    List<String> number = spoken.stream().filter(NumberWords.ALL::contains).toList();
    return SpokenNumbers.read(number) instanceof NumberReading.Read read
            && read.number().value().scale() <= 0
            && read.number().value().compareTo(BigDecimal.valueOf(Slot.LARGEST_SET)) <= 0
        ? Optional.of(read.number().value().intValueExact())
        : Optional.empty();
  }

  /** The telling words of a wording that closes. */
  private record Claimed(IntentKind kind, List<String> words) {
    static Claimed of(Wording wording) {
      List<String> own = new ArrayList<>(wording.before());
      own.addAll(wording.after());
      own.removeAll(LITTLE);
      boolean telling = !own.stream().allMatch(Denials::denies);
      return new Claimed(wording.kind(), telling ? List.copyOf(own) : List.of());
    }

    /** How much of them stands among these, from 0 to 1. */
    double shared(List<String> said) {
      return words.isEmpty() ? 0 : (double) found(said) / words.size();
    }

    /** How many of them do. */
    long found(List<String> said) {
      return words.stream().filter(w -> said.stream().anyMatch(s -> alike(w, s))).count();
    }
  }

  /** The same word, or another form of it: "clicked" and "click". */
  private static boolean alike(String one, String other) {
    int stem = Math.max(4, one.length() - 3);
    return one.equals(other)
        || (one.length() > 4 && other.length() >= stem && one.startsWith(other.substring(0, stem)));
  }
}
