package org.undercall.adapter.recogniser;

import com.sun.jna.Function;
import com.sun.jna.NativeLong;
import com.sun.jna.Platform;
import java.util.Optional;

/**
 * Gives freed native memory back to the system.
 *
 * <p>A recogniser needs a lot for a moment; the C library keeps what is freed between pieces still
 * in use. Only the GNU C library has {@code malloc_trim}; elsewhere nothing is done.
 */
final class NativeMemory {
  private static final Optional<Function> TRIM = trim();

  private NativeMemory() {}

  private static Optional<Function> trim() {
    if (!Platform.isLinux()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Function.getFunction("c", "malloc_trim"));
    } catch (UnsatisfiedLinkError e) {
      return Optional.empty();
    }
  }

  /** Gives back what is free; takes a few milliseconds. */
  static void giveBack() {
    TRIM.ifPresent(function -> function.invokeInt(new Object[] {new NativeLong(0)}));
  }
}
