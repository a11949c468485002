package org.undercall.command.doctor;

import java.util.function.Supplier;
import org.undercall.session.OpenSessions;

/**
 * The sessions so far: all of them can be read.
 *
 * @param sessions reads them
 */
record SessionsCheck(Supplier<OpenSessions> sessions) implements Check {
  @Override
  public String name() {
    return "sessions";
  }

  @Override
  public Found look() {
    OpenSessions all = sessions.get();
    if (!all.faults().isEmpty()) {
      int more = all.faults().size() - 1;
      return Found.note(
          all.faults().get(0) + (more == 0 ? "" : " (and " + more + " more)"),
          "keep the folder as it is: it cannot be taken up, and new sessions do not need it");
    }
    return Found.well(all.open().size() + " open, " + all.complete() + " complete");
  }
}
