package org.undercall.core.board;

import java.util.List;
import java.util.Locale;
import org.undercall.core.decision.Session;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.term.Occasion;

/**
 * What stands on the board at every moment.
 *
 * @param vehicle what the procedure is for
 * @param title of the procedure
 * @param values where its values come from
 * @param invented whether they are of no real vehicle
 * @param cautions of the procedure, at least one
 * @param here the cautions of the step at hand
 * @param occasion what the session was begun for; only work makes a record
 */
public record Frame(
    String vehicle,
    String title,
    String values,
    boolean invented,
    List<Line> cautions,
    List<String> here,
    Occasion occasion) {
  public Frame {
    cautions = List.copyOf(cautions);
    here = List.copyOf(here);
  }

  /**
   * A caution.
   *
   * @param text whole
   * @param brief the same in few words, or whole where it has none
   */
  public record Line(String text, String brief) {}

  static Frame of(Session session, Occasion occasion) {
    Procedure procedure = session.walk().procedure();
    Procedure.About about = procedure.about();
    return new Frame(
        about.vehicle(),
        about.title(),
        about.values(),
        about.values().toLowerCase(Locale.ROOT).contains("invented"),
        procedure.cautions().stream().map(c -> new Line(c.text(), c.inBrief())).toList(),
        session.place().step().head().cautions(),
        occasion);
  }
}
