package org.undercall.command.front;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.undercall.session.OpenSessions;

/** What the program shows when it is started without a command. */
public final class FrontPage {
  private FrontPage() {}

  /**
   * The first screen before the first session; then the sessions that wait, and what to type.
   *
   * @param sessions those in the folder of sessions
   */
  public static List<String> lines(OpenSessions sessions, OffsetDateTime now) {
    if (sessions.none()) {
      return Welcome.LINES;
    }
    List<String> lines = new ArrayList<>(Offer.sessionLines(sessions, now));
    if (sessions.open().isEmpty()) {
      lines.add("No session is open. Complete: " + sessions.complete() + ".");
    }
    lines.addAll(
        List.of(
            "",
            "undercall work           choose a procedure or an open session, by voice",
            "undercall rehearse       the same with typed phrases",
            "undercall review last    what was done, when, and at what value",
            "undercall doctor         is everything there that the work needs",
            "undercall --help         every command"));
    return lines;
  }
}
