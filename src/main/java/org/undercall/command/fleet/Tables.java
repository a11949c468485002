package org.undercall.command.fleet;

import java.util.EnumMap;
import java.util.Map;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.FleetFault;
import org.undercall.adapter.fleet.Grid;

/** The tables of a comparison. */
final class Tables {
  private Tables() {}

  /** A table, also of CSV. */
  enum Name {
    STEPS("Steps"),
    SIDES("Left and right"),
    VALUES("Values, left and right"),
    REFUSALS("Refused most often"),
    PHRASES("Misheard most often");

    private final String title;

    Name(String title) {
      this.title = title;
    }

    String title() {
      return title;
    }
  }

  static Map<Name, Grid> of(Fleet fleet, Measure measure) throws FleetFault {
    fleet.measureBy(measure.base());
    String subject = measure.subject();
    Map<Name, Grid> tables = new EnumMap<>(Name.class);
    tables.put(
        Name.STEPS,
        fleet.query(
            "SELECT coalesce(c.step, s.step) AS step, s.working_ms AS this_ms, c.median_ms,"
                + " c.q1_ms, c.q3_ms, c.least_ms, c.most_ms, coalesce(c.sessions, 0) AS sessions,"
                + " c.slow, c.reopened, CASE WHEN c.sessions >= 5 AND s.working_ms > c.q3_ms + 1.5"
                + " * (c.q3_ms - c.q1_ms) THEN 'slow' ELSE '' END AS verdict FROM compared_steps c"
                + " FULL JOIN (SELECT * FROM step_fact WHERE session = ? AND state = 'closed') s ON"
                + " s.step = c.step ORDER BY coalesce(c.place, s.first_touch), 1",
            subject));
    tables.put(Name.SIDES, sides(fleet, subject));
    tables.put(
        Name.VALUES,
        fleet.query(
            "SELECT split_part(l.step, '/', 1) AS step, l.what, l.value AS \"left\", r.value AS"
                + " \"right\" FROM value_fact l JOIN value_fact r ON r.session = l.session AND"
                + " r.what = l.what AND r.step = split_part(l.step, '/', 1) || '/right'"
                + " WHERE l.session = ? AND l.step LIKE '%/left' ORDER BY 1, 2",
            subject));
    tables.put(
        Name.REFUSALS,
        fleet.query(
            "SELECT times, sessions, step, what FROM compared_refusals"
                + " ORDER BY times DESC, step, what"));
    tables.put(
        Name.PHRASES,
        fleet.query(
            "SELECT times, sessions, heard, what FROM compared_phrases"
                + " ORDER BY times DESC, heard, what"));
    return tables;
  }

  private static Grid sides(Fleet fleet, String subject) throws FleetFault {
    if (subject.isEmpty()) {
      return fleet.query(
          "SELECT step, left_median_ms, right_median_ms, sessions, right_longer"
              + " FROM compared_side_spread ORDER BY step");
    }
    return fleet.query(
        "SELECT split_part(l.step, '/', 1) AS step, l.working_ms AS left_ms, r.working_ms AS"
            + " right_ms, (SELECT coalesce(sum(n), 0) FROM refusal_fact f WHERE f.session ="
            + " l.session AND f.step = l.step) AS left_refused, (SELECT coalesce(sum(n), 0) FROM"
            + " refusal_fact f WHERE f.session = r.session AND f.step = r.step) AS right_refused,"
            + " l.state AS left_state, r.state AS right_state"
            + " FROM step_fact l JOIN step_fact r ON r.session = l.session AND r.step ="
            + " split_part(l.step, '/', 1) || '/right' WHERE l.session = ? AND"
            + " l.step LIKE '%/left' ORDER BY l.first_touch",
        subject);
  }
}
