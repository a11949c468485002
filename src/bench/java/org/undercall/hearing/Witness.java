package org.undercall.hearing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.core.intent.NumberReading;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SpokenNumbers;
import org.undercall.core.intent.SpokenSamples;

/** A second recogniser's words on the same sound, and whether they speak against the first's. */
record Witness(List<RecognisedPhrase.Word> all) {
  /** How far, in seconds, a word may lie outside a phrase and still be held against it. */
  private static final double MARGIN = 0.3;

  /** What a recogniser without a word list writes for number words. */
  private static final Map<String, String> SOUNDS_LIKE =
      Map.of("to", "two", "too", "two", "for", "four", "won", "one", "ate", "eight");

  /** Lets a recogniser hear a whole clip, then closes it. */
  static Witness hears(Recogniser recogniser, Sound sound) {
    List<RecognisedPhrase.Word> words = new ArrayList<>();
    try (recogniser) {
      for (int at = 0; at < sound.length(); ) {
        var frame = sound.frame(at);
        at += frame.samples();
        if (recogniser.accept(frame.sound(), 2 * frame.samples())) {
          words.addAll(recogniser.result().words());
        }
      }
      words.addAll(recogniser.finalResult().words());
    }
    return new Witness(words);
  }

  /** The words in and close to the time of a phrase. */
  private List<String> words(RecognisedPhrase phrase) {
    List<RecognisedPhrase.Word> said = phrase.words();
    double from = said.get(0).start() - MARGIN;
    double to = said.get(said.size() - 1).end() + MARGIN;
    return all.stream()
        .filter(w -> w.end() > from && w.start() < to)
        .map(w -> SOUNDS_LIKE.getOrDefault(w.text(), w.text()))
        .toList();
  }

  /**
   * Whether the words speak against a phrase that holds a number: they hold another number, or more
   * number words. Fewer do not count, for a free recogniser often writes another word.
   */
  boolean contradicts(RecognisedPhrase phrase) {
    List<String> said =
        numberWords(phrase.words().stream().map(RecognisedPhrase.Word::text).toList());
    List<String> mine = numberWords(words(phrase));
    if (said.isEmpty() || mine.size() < said.size()) {
      return false;
    }
    Optional<BigDecimal> theirs = value(said);
    Optional<BigDecimal> own = value(mine);
    return own.isPresent() ? !own.equals(theirs) : mine.size() > said.size();
  }

  /** Whether the words hold a number, and just the one that the phrase holds. */
  boolean confirms(RecognisedPhrase phrase) {
    List<String> said =
        numberWords(phrase.words().stream().map(RecognisedPhrase.Word::text).toList());
    return said.isEmpty() || value(said).equals(value(numberWords(words(phrase))));
  }

  private static List<String> numberWords(List<String> words) {
    return words.stream().filter(SpokenSamples::isNumberWord).toList();
  }

  private static Optional<BigDecimal> value(List<String> words) {
    return SpokenNumbers.read(words) instanceof NumberReading.Read read
        ? Optional.of(read.number().value())
        : Optional.empty();
  }
}
