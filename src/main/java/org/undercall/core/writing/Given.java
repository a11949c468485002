package org.undercall.core.writing;

import java.util.Objects;
import org.undercall.core.reply.Wanted;

/**
 * An answer that was taken.
 *
 * @param wanted what was asked
 * @param text the answer; {@code -} for none
 */
public record Given(Wanted wanted, String text) {
  /** The answer that says: none. */
  public static final String NONE = "-";

  public Given {
    Objects.requireNonNull(wanted, "wanted");
    Objects.requireNonNull(text, "text");
  }

  /** Whether it says that there is none. */
  public boolean isNone() {
    return text.equals(NONE);
  }
}
