package org.undercall.core.intent;

import java.util.List;
import java.util.Optional;

/** How a phrase is looked at again: whether, for what, and what it was. */
public interface Looks {
  /**
   * What to listen for a second time.
   *
   * @param least how sure the recogniser must be, from 0 to 1
   * @return empty if the phrase may stand as it is
   */
  Optional<List<String>> phrases(RecognisedPhrase first, double least);

  /** The likeliest of several hearings; empty if that means nothing. */
  Optional<Meanings.Choice> likeliest(List<Alternative> alternatives);

  /**
   * A choice with what was heard before of the same.
   *
   * @param seconds when it was said, in seconds of the source
   */
  default Meanings.Choice remembered(Meanings.Choice choice, double seconds) {
    return choice;
  }

  /** Whether the sound of a phrase must be heard freely too. */
  default boolean wantsWitness(RecognisedPhrase heard, double least) {
    return false;
  }

  /** What to hear a phrase against; empty if it closes nothing. */
  default List<String> rivals(RecognisedPhrase heard, double least) {
    return List.of();
  }

  /** Whether a phrase leads its rivals so far that the sound need not be heard freely. */
  default boolean isBeyondDoubt(RecognisedPhrase heard, List<Alternative> alternatives) {
    return false;
  }

  /** The phrase after the same sound was heard with all words of the language. */
  default RecognisedPhrase judged(HeardTwice both, double least) {
    return both.heard();
  }

  /**
   * The phrase after it was heard against its rivals.
   *
   * @param poor whether there is noise
   */
  default RecognisedPhrase weighed(
      HeardTwice both, List<Alternative> alternatives, boolean poor, double least) {
    return both.heard();
  }

  /** Whether the phrase would count as it is. */
  boolean counts(RecognisedPhrase first, double least);
}
