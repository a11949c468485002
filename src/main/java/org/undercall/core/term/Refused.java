package org.undercall.core.term;

/** A value that something cannot be worked out with; the message is one line with a code. */
public final class Refused extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** A refusal: the permanent code, the value's name, and how it is not as it should be. */
  public Refused(String code, String place, String found, String expected) {
    super(code + " " + place + ": " + new Mismatch(found, expected));
  }
}
