package org.undercall.command.front;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.undercall.text.Shown;

/** Offers what can be worked on and asks for a number until one is chosen. */
public final class Choosing {
  private final Terminal terminal;
  private final PrintWriter out;

  /** A choice at a terminal. */
  public Choosing(Terminal terminal, PrintWriter out) {
    this.terminal = terminal;
    this.out = out;
  }

  /** Shows the first screen, and waits for Enter if somebody is there. */
  public void welcome() throws IOException {
    Welcome.LINES.forEach(out::println);
    if (terminal.attended()) {
      out.print("Press Enter to go on. ");
      out.flush();
      TypedLine.read(terminal.in());
    }
    out.println();
    out.flush();
  }

  /**
   * Prints an offer and asks which.
   *
   * @return empty if there is nothing to choose, nobody to ask, or the input ends
   */
  public Optional<Chosen> choose(Offer offer, OffsetDateTime now) throws IOException {
    offer.lines(now).forEach(out::println);
    out.flush();
    if (!terminal.attended() || offer.size() == 0) {
      return Optional.empty();
    }
    Optional<Chosen> chosen = Optional.empty();
    Optional<String> line = ask(offer);
    while (line.isPresent() && chosen.isEmpty()) {
      chosen = number(line.get().strip(), offer).map(offer::get);
      if (chosen.isEmpty()) {
        String found = line.get().isBlank() ? "nothing" : '"' + cut(line.get().strip()) + '"';
        out.println("Found " + found + ", expected a number from 1 to " + offer.size() + ".");
        line = ask(offer);
      }
    }
    return chosen;
  }

  private Optional<String> ask(Offer offer) throws IOException {
    String enter = offer.firstIsObvious() ? " (Enter alone: 1)" : "";
    out.print("Number" + enter + ": ");
    out.flush();
    return TypedLine.read(terminal.in());
  }

  private static Optional<Integer> number(String typed, Offer offer) {
    if (typed.isEmpty()) {
      return offer.firstIsObvious() ? Optional.of(1) : Optional.empty();
    }
    if (!typed.matches("[0-9]{1,4}")) {
      return Optional.empty();
    }
    int number = Integer.parseInt(typed);
    return Optional.of(number).filter(n -> n >= 1 && n <= offer.size());
  }

  private static String cut(String typed) {
    String plain = Shown.plain(typed);
    return plain.length() > 40 ? plain.substring(0, 40) + "..." : plain;
  }
}
