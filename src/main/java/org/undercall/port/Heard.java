package org.undercall.port;

import java.util.Optional;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;

/**
 * What an ear heard.
 *
 * @param phrase the words
 * @param how how they came
 * @param levels how loud the phrase was, and what was around it; empty if that is not measured
 * @param sound from a little before the first word to a little after the last: samples as {@code
 *     sound/Frames} describes them; empty if there is none, or none is kept. Nobody changes it.
 */
public record Heard(
    RecognisedPhrase phrase, How how, Optional<SoundLevels> levels, Optional<byte[]> sound) {

  /** How a phrase came. */
  public enum How {
    /** By voice. */
    SPOKEN,
    /** On a keyboard or in the field of the board. */
    TYPED,
    /** With a button of the board. */
    PRESSED
  }

  /** A phrase without sound. */
  public Heard(RecognisedPhrase phrase, How how) {
    this(phrase, how, Optional.empty(), Optional.empty());
  }

  /** A typed phrase; digits become words. */
  public static Heard typed(String text) {
    return new Heard(RecognisedPhrase.typed(text), How.TYPED);
  }

  /** The same with other words. */
  public Heard with(RecognisedPhrase other) {
    return new Heard(other, how, levels, sound);
  }

  /** The words with a blank between them. */
  public String text() {
    return phrase.text();
  }
}
