package org.undercall.listen;

import java.util.Optional;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear.EndOfInput;

/** Where answers to questions come from. */
public interface Answers {
  /**
   * Waits for the next phrase.
   *
   * @param allowed the words of the question
   * @param patienceMillis how long to wait, in milliseconds of the source's own time
   * @return the phrase, with a confidence below the program's limit if it is not sure; empty if
   *     none came in that time
   * @throws EndOfInput if the source has come to its end
   */
  Optional<RecognisedPhrase> next(AnswerWords allowed, long patienceMillis) throws EndOfInput;

  /** Forgets what came in since the last phrase, for example the program's own voice. */
  void forget();
}
