package org.undercall.command.fleet;

import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.FleetFault;
import org.undercall.adapter.fleet.Grid;

/**
 * What is compared with what.
 *
 * @param subject the session that is looked at; blank if all of a procedure are
 * @param base the sessions it is held against
 * @param words both, in one sentence
 */
record Measure(String subject, List<String> base, String words) {
  private static final String SOUND = "SELECT session FROM session_fact WHERE state <> 'damaged'";

  static Measure of(Fleet fleet, List<String> names, String procedure) throws FleetFault {
    if (names.isEmpty()) {
      List<String> all = names(fleet.query(SOUND + " AND lower(title) = lower(?)", procedure));
      if (all.isEmpty()) {
        throw nothing("--procedure " + procedure, "no sound session with this title");
      }
      return new Measure("", all, "All " + all.size() + " sessions titled " + procedure + ".");
    }
    List<String> sound = new ArrayList<>();
    for (String name : names) {
      String order = " ORDER BY first_ms DESC, session DESC LIMIT 1";
      List<String> found =
          names.size() == 1 && name.equals("last")
              ? names(fleet.query(SOUND + order))
              : names(fleet.query(SOUND + " AND session = ?", name));
      if (found.isEmpty()) {
        throw nothing("session " + name, "no session of that name that is not damaged");
      }
      sound.addAll(found);
    }
    return names.size() == 1 ? earlier(fleet, sound.get(0)) : among(fleet, sound);
  }

  private static Measure earlier(Fleet fleet, String subject) throws FleetFault {
    String before = SOUND + " AND first_ms < (SELECT first_ms FROM session_fact WHERE session = ?)";
    List<String> same =
        names(
            fleet.query(
                before + " AND sha256 = (SELECT sha256 FROM session_fact WHERE session = ?)",
                subject,
                subject));
    if (!same.isEmpty()) {
      return new Measure(
          subject, same, subject + "\nagainst " + same.size() + " earlier, same SHA-256.");
    }
    List<String> alike =
        names(
            fleet.query(
                before
                    + " AND (title, revision) = (SELECT (title, revision) FROM session_fact"
                    + " WHERE session = ?)",
                subject,
                subject));
    return new Measure(
        subject,
        alike,
        subject + "\nagainst " + alike.size() + " earlier, same title and revision.");
  }

  private static Measure among(Fleet fleet, List<String> sessions) throws FleetFault {
    String last = sessions.get(0);
    for (String one : sessions) {
      boolean later =
          fleet
                  .query(
                      "SELECT 1 FROM session_fact a, session_fact b WHERE a.session = ?"
                          + " AND b.session = ? AND a.first_ms > b.first_ms",
                      one,
                      last)
                  .size()
              > 0;
      last = later ? one : last;
    }
    List<String> others = new ArrayList<>(sessions);
    others.removeAll(List.of(last));
    return new Measure(last, others, last + "\nagainst the " + others.size() + " others named.");
  }

  private static List<String> names(Grid grid) {
    return grid.rows().stream().map(row -> row.get(0).orElseThrow().toString()).toList();
  }

  private static FleetFault nothing(String place, String found) {
    return new FleetFault(
        FleetFault.Code.NOTHING_TO_COMPARE, place, found, "one that \"sessions\" lists");
  }
}
