package org.undercall.core.check;

import java.util.Objects;
import org.undercall.core.term.Mismatch;

/**
 * Something in a procedure that looks wrong.
 *
 * @param rule the rule that found it, with its code, severity and source
 * @param pointer JSON pointer to the value, as if every optional field were written
 * @param found what the procedure has
 * @param expected what it should have
 */
public record Finding(CheckRule rule, String pointer, String found, String expected) {
  public Finding {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(pointer, "pointer");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(expected, "expected");
  }

  /** What to do about it, in one sentence. */
  public String todo() {
    return rule.todo();
  }

  /** The finding as one line, with the name of its place where it is shown. */
  public String at(String place) {
    return rule.code() + " " + place + ": " + new Mismatch(found, expected);
  }
}
