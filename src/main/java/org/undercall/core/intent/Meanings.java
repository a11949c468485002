package org.undercall.core.intent;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Chooses among alternatives by what they mean: "one seven five" and "one seventy five" support
 * each other, "one five" speaks against both.
 */
public final class Meanings {
  /**
   * What a digit more is worth. A list of words makes every word more less likely, with digits
   * about tenfold, so that lost digits would win; found by measuring real people's values. It does
   * not count where the likeliest are no single digits: "seventy one" is not "seven three one".
   * Tens count as two against more words, since "ninety eight" sounds much like "nine three eight",
   * but not against as many: "six seventy" is told from "six seven".
   */
  private static final double WORTH_OF_A_DIGIT = 3.5;

  /**
   * What a whole phrase without a number is worth: people say whole phrases, but a list of words
   * lets any word of them follow any other. It counts against words that mean nothing, not against
   * another phrase. Found by measuring every wording in noise, and chatter: with 4 a third less has
   * to be said again, with 10 chatter begins to be taken for questions. Phrases of two words are
   * worth less: with 6, "cancel that" was heard in babble over another phrase.
   */
  private static final double WORTH_OF_A_PHRASE = 6;

  private static final double WORTH_OF_TWO_WORDS = 3;

  /**
   * What it costs that number words are no number: nobody says "one hundred fifteen two", but a
   * list of words lets any of them follow any other. Found by measuring real people's values.
   */
  private static final double COST_OF_NO_NUMBER = 5;

  /** What a fourth digit costs: values have up to three, hardly ever more. */
  private static final double COST_OF_A_FOURTH = 3;

  /** Digits that count; a number of four is no likelier than one of three. */
  private static final int MOST_DIGITS = 3;

  /** The least share of a call that was taken for a note. */
  private static final double SURE_CALL = 0.9;

  private static final List<Wording> OF_NUMBERS =
      Stream.of(IntentKind.values())
          .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
          .filter(Wording::holdsNumber)
          .toList();

  private static final Comparator<Alternative> LIKELIER =
      Comparator.comparingDouble(Alternative::score);

  private Meanings() {}

  /**
   * A meaning and how much speaks for it.
   *
   * @param words the likeliest alternative with this meaning
   * @param share of all the alternatives' likelihood, from 0 to 1; other alternatives that mean the
   *     same do not speak against it
   * @param number whether it holds a number
   * @param shares the share of every meaning, this one's too; words that mean nothing stand for
   *     themselves
   */
  public record Choice(
      List<RecognisedPhrase.Word> words, double share, boolean number, Map<Object, Double> shares) {
    public Choice {
      shares = Map.copyOf(shares);
    }

    /** Without other meanings. */
    Choice(List<RecognisedPhrase.Word> words, double share, boolean number) {
      this(words, share, number, Map.of());
    }

    /** The same with another share. */
    Choice with(double other) {
      return new Choice(words, other, number, shares);
    }
  }

  /**
   * What words mean, apart from how a number in them was said.
   *
   * @param meaning equal for all words that mean the same
   * @param number whether it holds a number
   */
  public record Sense(Object meaning, boolean number) {}

  /**
   * The likeliest meaning.
   *
   * @param alternatives for the same sound
   * @param allowed what may be said now
   * @return empty if there are no alternatives or the likeliest of all means nothing
   */
  public static Optional<Choice> likeliest(
      List<Alternative> alternatives, Set<IntentKind> allowed) {
    return likeliest(alternatives, phrase -> sense(phrase, allowed));
  }

  /**
   * The likeliest meaning, if it names what slips or falls and leads by far: the words of a note
   * stand else. Of other calls only those count that are heard freely.
   *
   * @param alternatives among what cancels a load and any other word
   */
  public static Optional<Choice> call(List<Alternative> alternatives, Set<IntentKind> allowed) {
    return likeliest(alternatives, allowed)
        .filter(choice -> choice.share() >= SURE_CALL && Witness.names(texts(choice)))
        .filter(
            choice ->
                Interpreter.interpret(new RecognisedPhrase(choice.words()), allowed, 0)
                    .kind()
                    .cancelsLoad());
  }

  /** The likeliest meaning, by what words mean. */
  static Optional<Choice> likeliest(
      List<Alternative> alternatives, Function<RecognisedPhrase, Optional<Sense>> senses) {
    int digits =
        alternatives.stream()
            .max(LIKELIER)
            .filter(Meanings::isDigits)
            .map(likeliest -> numberWords(likeliest).size())
            .orElse(0);
    List<Alternative> weighed =
        alternatives.stream()
            .map(a -> a.with(a.score() + ofDigits(a, digits) + ofSense(a, senses)))
            .toList();
    Optional<Alternative> best = weighed.stream().max(LIKELIER);
    Optional<Sense> sense = best.flatMap(b -> of(b, senses));
    if (sense.isEmpty()) {
      return Optional.empty();
    }
    Map<Object, Double> weights = new HashMap<>();
    for (Alternative one : weighed) {
      double weight = Math.exp(one.score() - best.get().score());
      Object meaning = of(one, senses).<Object>map(s -> s).orElseGet(() -> phrase(one).text());
      weights.merge(meaning, weight, Math::max);
    }
    double all = weights.values().stream().mapToDouble(Double::doubleValue).sum();
    weights.replaceAll((meaning, weight) -> weight / all);
    return Optional.of(new Choice(best.get().words(), 1 / all, sense.get().number(), weights));
  }

  private static List<String> texts(Choice choice) {
    return choice.words().stream().map(RecognisedPhrase.Word::text).toList();
  }

  private static RecognisedPhrase phrase(Alternative alternative) {
    return new RecognisedPhrase(alternative.words());
  }

  private static Optional<Sense> of(
      Alternative alternative, Function<RecognisedPhrase, Optional<Sense>> senses) {
    return senses.apply(phrase(alternative));
  }

  /** The sense of an intent; empty if the words mean nothing. */
  private static Optional<Sense> sense(RecognisedPhrase phrase, Set<IntentKind> allowed) {
    Intent intent = Interpreter.interpret(phrase, allowed, 0);
    if (intent instanceof Intent.Unclear) {
      return Optional.empty();
    }
    return Optional.of(
        intent instanceof Intent.OfNumber number
            ? new Sense(
                List.of(
                    new Intent.Plain(intent.kind()),
                    number.number().value().stripTrailingZeros(),
                    number.unit()),
                true)
            : new Sense(intent, false));
  }

  /**
   * What the digits of an alternative are worth.
   *
   * @param likeliest how many digits the likeliest has; 0 if it is not said digit by digit
   */
  private static double ofDigits(Alternative alternative, int likeliest) {
    if (likeliest == 0) {
      return 0;
    }
    List<String> words = numberWords(alternative);
    int tens = (int) words.stream().filter(word -> NumberWords.tens(word) > 0).count();
    int count = Math.min(words.size() + tens, Math.max(words.size(), likeliest));
    return WORTH_OF_A_DIGIT * Math.min(count, MOST_DIGITS);
  }

  private static double ofSense(
      Alternative alternative, Function<RecognisedPhrase, Optional<Sense>> senses) {
    int words = alternative.words().size();
    if (words == 1) {
      return 0;
    }
    Optional<Sense> sense = of(alternative, senses);
    if (sense.isEmpty()) {
      return isOfNumber(alternative.texts()) ? -COST_OF_NO_NUMBER : 0;
    }
    if (sense.get().number()) {
      return isDigits(alternative) && hasFour(alternative) ? -COST_OF_A_FOURTH : 0;
    }
    return words == 2 ? WORTH_OF_TWO_WORDS : WORTH_OF_A_PHRASE;
  }

  /** Whether the words stand where a number does, be they one or not. */
  static boolean isOfNumber(List<String> words) {
    return OF_NUMBERS.stream()
        .anyMatch(wording -> wording.filling(words).filter(SlotWords::isValue).isPresent());
  }

  private static boolean hasFour(Alternative alternative) {
    return numberWords(alternative).size() > MOST_DIGITS;
  }

  private static boolean isDigits(Alternative alternative) {
    List<String> words = numberWords(alternative);
    return !words.isEmpty() && words.stream().allMatch(word -> NumberWords.digit(word) >= 0);
  }

  private static List<String> numberWords(Alternative alternative) {
    return alternative.texts().stream().filter(NumberWords.ALL::contains).toList();
  }
}
