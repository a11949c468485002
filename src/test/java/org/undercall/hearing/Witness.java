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
record Witness(List<String> words) {
  /** What a recogniser without a word list writes for number words. */
  private static final Map<String, String> SOUNDS_LIKE =
      Map.of("to", "two", "too", "two", "for", "four", "won", "one", "ate", "eight");

  /** Lets a recogniser hear a whole clip, then closes it. */
  static Witness hears(Recogniser recogniser, Sound sound) {
    List<String> words = new ArrayList<>();
    try (recogniser) {
      for (int at = 0; at < sound.length(); ) {
        var frame = sound.frame(at);
        at += frame.samples();
        if (recogniser.accept(frame.sound(), 2 * frame.samples())) {
          add(words, recogniser.result());
        }
      }
      add(words, recogniser.finalResult());
    }
    return new Witness(words);
  }

  private static void add(List<String> words, RecognisedPhrase phrase) {
    phrase.words().forEach(w -> words.add(SOUNDS_LIKE.getOrDefault(w.text(), w.text())));
  }

  /**
   * Whether the words speak against a phrase that holds a number: they hold another number, or more
   * number words. Fewer do not count, for a free recogniser often writes another word.
   */
  boolean contradicts(RecognisedPhrase phrase) {
    List<String> said =
        numberWords(phrase.words().stream().map(RecognisedPhrase.Word::text).toList());
    List<String> mine = numberWords(words);
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
    return said.isEmpty() || value(said).equals(value(numberWords(words)));
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
