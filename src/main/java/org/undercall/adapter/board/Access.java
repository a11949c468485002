package org.undercall.adapter.board;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.undercall.web.Secrets;

/** Decides which browsers are let in: with a code, each code for one browser. */
final class Access {
  private static final int MOST_BROWSERS = 20;
  private static final int CODES_AT_ONCE = 5;
  private static final long MILLIS_A_CODE = 20_000;
  private static final int WRONG_UNTIL_NEW = 10;

  private final boolean needed;
  private final Consumer<String> console;
  private final RateLimit tries;
  private final Deque<String> browsers = new ArrayDeque<>();
  private String code = "";
  private int wrong;

  /**
   * An access.
   *
   * @param needed whether a code is needed at all
   * @param console where codes are printed
   * @param clock milliseconds of a clock that is never set
   */
  Access(boolean needed, Consumer<String> console, LongSupplier clock) {
    this.needed = needed;
    this.console = console;
    this.tries = new RateLimit(CODES_AT_ONCE, MILLIS_A_CODE, clock);
  }

  /** Prints the code for the next browser. */
  synchronized void newCode() {
    code = Secrets.code();
    wrong = 0;
    console.accept("Code for the next browser: " + code);
  }

  /** Whether one more code may be tried now. */
  boolean mayTry() {
    return tries.allows();
  }

  /**
   * Tries a code.
   *
   * @param typed blanks in it do not matter
   * @return the word by which the browser is known from now on; empty if the code is wrong
   */
  synchronized Optional<String> enter(String typed) {
    if (!needed || !Secrets.same(code.replace(" ", ""), typed.replaceAll("\\s", ""))) {
      wrong++;
      if (needed && wrong == WRONG_UNTIL_NEW) {
        console.accept("Ten wrong codes were tried on the board. The code before is void.");
        newCode();
      }
      return Optional.empty();
    }
    String word = Secrets.word();
    browsers.addLast(word);
    if (browsers.size() > MOST_BROWSERS) {
      browsers.removeFirst();
    }
    console.accept("A browser was let in to the board. It can see the session and press buttons.");
    newCode();
    return Optional.of(word);
  }

  /** Whether a browser with this word is let in. */
  synchronized boolean knows(Optional<String> word) {
    return !needed
        || word.filter(w -> browsers.stream().anyMatch(known -> Secrets.same(known, w)))
            .isPresent();
  }
}
