package org.undercall.core.term;

/**
 * Something that is not as it should be, in the words of every message that tells of it.
 *
 * @param found what is there
 * @param expected what should be there
 */
public record Mismatch(String found, String expected) {
  @Override
  public String toString() {
    return "found " + found + ", expected " + expected;
  }
}
