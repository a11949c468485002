package org.undercall.command.front;

import java.io.Console;
import java.io.InputStream;

/**
 * Where somebody can be asked.
 *
 * @param in what is typed
 * @param attended whether somebody sits there, rather than a file or a pipe
 */
public record Terminal(InputStream in, boolean attended) {

  /** The one the program was started at. */
  public static Terminal ofProgram() {
    return new Terminal(System.in, isTerminal(System.console()));
  }

  /** Before Java 22 there is a console only at a terminal; since then it can say what it is. */
  private static boolean isTerminal(Console console) {
    if (console == null) {
      return false;
    }
    try {
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
