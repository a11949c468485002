package org.undercall.core.writing;

import java.util.Locale;
import org.undercall.core.term.Mismatch;

/** Why an answer is not taken, before the table is looked at. */
public enum AnswerFault {
  /** An answer is needed. */
  NOTHING(1),
  /** The answer is none of the words, or begins several of them. */
  NOT_A_WORD(2),
  /** Two steps would become one. */
  SAME_TITLE(3),
  /** A procedure needs a step. */
  NO_STEP(4),
  /** There is no answer to go back to. */
  NOTHING_BEFORE(5),
  /** What was kept cannot be taken up. */
  NOT_TAKEN_UP(6);

  private final int number;

  AnswerFault(int number) {
    this.number = number;
  }

  /** The code, for example {@code NEW-002}. */
  public String code() {
    return String.format(Locale.ROOT, "NEW-%03d", number);
  }

  /** What is told: the code, what was found and what was expected. */
  public String told(String found, String expected) {
    return code() + " " + new Mismatch(found, expected);
  }
}
