package org.undercall.core.intent;

/** What could still follow words that already are a phrase, from the least to the most likely. */
public enum Continuation {
  /** No word: no longer phrase begins with these words. */
  NOTHING,
  /** No word of a longer phrase, but a denial of what closes something. */
  DENIAL,
  /** Only a unit, decimals or a fourth digit: the number is whole. */
  UNIT,
  /**
   * A last digit: "five" after "one hundred seventy". A teen counts too, since what sounds like
   * "seventeen" may be "seventy" begun.
   */
  DIGIT,
  /** More words of a longer phrase: a value after "torque reached". */
  MORE,
  /** Most of a number: it is one digit or two, or a full hundred or thousand. */
  NUMBER
}
