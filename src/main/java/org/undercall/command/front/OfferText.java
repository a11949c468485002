package org.undercall.command.front;

import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Side;
import org.undercall.session.OpenSessions;
import org.undercall.text.Shown;

/** The words of an offer: what can be taken up and begun, as lines of a terminal. */
final class OfferText {
  private static final int WIDTH = 80;
  private static final String UNDER = "     ";

  private OfferText() {}

  /** A session: its procedure and when, what is open and where it stands, its name. */
  static List<String> of(int number, OpenSessions.Open open, OffsetDateTime now) {
    Session session = open.session();
    String title = session.walk().procedure().about().title();
    int steps = session.walk().places().size();
    List<String> lines = new ArrayList<>();
    lines.add(head(number, title, ago(open.last(), now)));
    lines.add(cut(UNDER + session.openSteps() + " of " + steps + " open, " + stands(session)));
    lines.add(cut(UNDER + Shown.plain(open.folder().name())));
    return lines;
  }

  /** A procedure: its title, vehicle, what its values are, its file. */
  static List<String> of(int number, LoadedProcedure loaded) {
    Procedure.About about = loaded.procedure().about();
    return List.of(
        cut(head(number, about.title(), "")),
        cut(UNDER + about.vehicle()),
        cut(UNDER + "values: " + about.values()),
        UNDER + path(loaded.file()));
  }

  /** A path as it can be typed here. */
  static String path(Path file) {
    Path here = Path.of("").toAbsolutePath();
    Path whole = file.toAbsolutePath().normalize();
    return Shown.plain((whole.startsWith(here) ? here.relativize(whole) : whole).toString());
  }

  /** A path as it can be typed in a command here. */
  static String quoted(Path file) {
    String path = path(file);
    return path.contains(" ") ? '"' + path + '"' : path;
  }

  private static String head(int number, String title, String right) {
    String left = String.format(Locale.ROOT, "%3d  ", number);
    int room = WIDTH - left.length() - right.length() - (right.isEmpty() ? 0 : 2);
    String shown = title.length() > room ? title.substring(0, room - 1) + "…" : title;
    String gap = right.isEmpty() ? "" : " ".repeat(room - shown.length() + 2);
    return left + shown + gap + right;
  }

  private static String stands(Session session) {
    if (session.phase() == Phase.BRIEFING) {
      return "before the first step";
    }
    if (session.phase() == Phase.ALL_CLOSED) {
      return "every step closed, end not called";
    }
    Walk.Place place = session.place();
    Side side = place.ref().side();
    String where = side == Side.CAR ? "" : ", " + side.words();
    String how =
        switch (session.phase()) {
          case ON_HOLD -> "on hold at ";
          case ENDED -> "ended early at ";
          default -> "at ";
        };
    return how
        + "step "
        + (session.progress().at() + 1)
        + where
        + ": "
        + place.step().head().title();
  }

  /** How long ago, in the largest whole unit; the day if the clock was set back since. */
  static String ago(OffsetDateTime last, OffsetDateTime now) {
    Duration away = Duration.between(last, now);
    if (away.isNegative()) {
      return "dated " + last.toLocalDate();
    }
    if (away.toMinutes() == 0) {
      return "just now";
    }
    if (away.toHours() == 0) {
      return count(away.toMinutes(), "minute");
    }
    return away.toDays() == 0 ? count(away.toHours(), "hour") : count(away.toDays(), "day");
  }

  private static String count(long number, String unit) {
    return number + " " + unit + (number == 1 ? "" : "s") + " ago";
  }

  private static String cut(String line) {
    return line.length() > WIDTH ? line.substring(0, WIDTH - 1) + "…" : line;
  }
}
