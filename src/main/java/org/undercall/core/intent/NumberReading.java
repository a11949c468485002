package org.undercall.core.intent;

import java.util.Objects;

/** What came of reading words as a number: the number, or why there is none. */
public sealed interface NumberReading {

  /** The one number that the words say. */
  record Read(SpokenNumber number) implements NumberReading {
    public Read {
      Objects.requireNonNull(number, "number");
    }
  }

  /** The words say no single number. */
  record Refused(Refusal refusal) implements NumberReading {
    public Refused {
      Objects.requireNonNull(refusal, "refusal");
    }
  }

  /** Why words are no number. */
  enum Refusal {
    /** They hold another word, or do not fit together. */
    NOT_A_NUMBER,
    /** They are several numbers in a row, so it is not sure which one is meant. */
    AMBIGUOUS
  }
}
