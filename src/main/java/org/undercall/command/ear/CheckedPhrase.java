package org.undercall.command.ear;

import java.util.Optional;
import org.undercall.core.intent.SoundLevels;

/**
 * What came of a phrase of the check.
 *
 * @param phrase what was to be said
 * @param result what came of the last try
 * @param tries how many tries it took
 * @param heard the words of the last try, empty if nothing was heard
 * @param levels of the last try, if they were measured
 */
record CheckedPhrase(
    CheckPhrase phrase, Result result, int tries, String heard, Optional<SoundLevels> levels) {

  /** What came of a try. */
  enum Result {
    /** It was heard right. */
    RIGHT,
    /** The program would have asked again, or left it alone. */
    ASKED_AGAIN,
    /** It was taken for something else. */
    OTHER,
    /** Nothing was heard. */
    NOT_HEARD
  }
}
