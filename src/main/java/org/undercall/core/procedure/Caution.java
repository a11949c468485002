package org.undercall.core.procedure;

import java.util.Objects;
import java.util.Optional;

/**
 * A caution of a procedure.
 *
 * @param text as it is read out
 * @param brief as it is read out to whom heard it whole earlier on the day; empty if it is read out
 *     whole then too
 */
public record Caution(String text, Optional<String> brief) {
  public Caution {
    Objects.requireNonNull(text, "text");
  }

  /** One that is always read out whole. */
  public static Caution of(String text) {
    return new Caution(text, Optional.empty());
  }

  /** As it is read out later on a day. */
  public String inBrief() {
    return brief.orElse(text);
  }
}
