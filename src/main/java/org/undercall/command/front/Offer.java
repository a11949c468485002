package org.undercall.command.front;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.session.OpenSessions;

/**
 * What can be worked on: numbered from 1, open sessions first.
 *
 * @param sessions that can be taken up
 * @param shelf the procedures that can be begun
 */
public record Offer(OpenSessions sessions, ProcedureShelf shelf) {
  private static final int MOST_SESSIONS = 5;
  private static final int MOST_PROCEDURES = 20;

  /** How many numbers there are. */
  int size() {
    return shownSessions().size() + shownProcedures().size();
  }

  /** What a number, from 1, stands for. */
  Chosen get(int number) {
    List<OpenSessions.Open> open = shownSessions();
    return number <= open.size()
        ? new Chosen.Session(open.get(number - 1).folder())
        : new Chosen.Fresh(shownProcedures().get(number - 1 - open.size()).file());
  }

  /** Whether the first is so much likelier than the others that Enter alone can stand for it. */
  boolean firstIsObvious() {
    return !shownSessions().isEmpty() || size() == 1;
  }

  /**
   * What to type to choose the first without being asked.
   *
   * @param command work or rehearse
   */
  public String command(String command) {
    String program = "undercall " + command + " ";
    if (size() == 0) {
      return program + "PROCEDURE";
    }
    return get(1) instanceof Chosen.Session session
        ? program + "--resume " + session.folder().name()
        : program + OfferText.quoted(shownProcedures().get(0).file());
  }

  /** The lines to print. */
  List<String> lines(OffsetDateTime now) {
    List<String> lines = new ArrayList<>();
    int number = 0;
    if (!shownSessions().isEmpty()) {
      lines.add("Open sessions, the last one first:");
    }
    for (OpenSessions.Open open : shownSessions()) {
      lines.addAll(OfferText.of(++number, open, now));
    }
    more(lines, sessions.open().size() - MOST_SESSIONS, "open sessions: --resume NAME");
    if (!shownProcedures().isEmpty()) {
      lines.add("Procedures, to begin a new session:");
    }
    for (LoadedProcedure procedure : shownProcedures()) {
      lines.addAll(OfferText.of(++number, procedure));
    }
    more(lines, shelf.usable().size() - MOST_PROCEDURES, "procedures: name the file");
    if (!faults().isEmpty()) {
      lines.add("Left out, because of a fault:");
      faults().forEach(fault -> lines.add("     " + fault));
    }
    return lines;
  }

  /** The lines of the open sessions alone; none if there is none. */
  static List<String> sessionLines(OpenSessions sessions, OffsetDateTime now) {
    return new Offer(sessions, new ProcedureShelf(List.of(), List.of())).lines(now);
  }

  private static void more(List<String> lines, int count, String what) {
    if (count > 0) {
      lines.add("     and " + count + " more " + what);
    }
  }

  private List<String> faults() {
    List<String> all = new ArrayList<>(sessions.faults());
    all.addAll(shelf.faults());
    return all;
  }

  private List<OpenSessions.Open> shownSessions() {
    return sessions.open().subList(0, Math.min(MOST_SESSIONS, sessions.open().size()));
  }

  private List<LoadedProcedure> shownProcedures() {
    return shelf.usable().subList(0, Math.min(MOST_PROCEDURES, shelf.usable().size()));
  }
}
