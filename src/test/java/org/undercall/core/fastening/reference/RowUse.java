package org.undercall.core.fastening.reference;

import java.util.List;
import org.apache.commons.csv.CSVRecord;

/**
 * What became of one row of a table in which no row is left out silently.
 *
 * @param id the row's number in its table
 * @param fate what it was used for
 * @param checks its values next to ours; of a wrong row, the values that ours must differ from
 * @param reason why it was not used, or what is wrong with it; empty if it was checked
 */
record RowUse(String id, Fate fate, List<Check> checks, String reason) {

  /** What a row was used for. */
  enum Fate {
    CHECKED,
    /** What a value beside it was computed from. */
    INPUT,
    /** A joint that a test puts before the rules of the check. */
    JUDGED,
    /** A misprint: ours must differ. */
    WRONG,
    LEFT
  }

  static RowUse checked(CSVRecord row, Check... checks) {
    return new RowUse(row.get("id"), Fate.CHECKED, List.of(checks), "");
  }

  /** Checks the value of the row as it is printed. */
  static RowUse checked(CSVRecord row, Group group, String what, double ours) {
    return checked(row, check(row, group, what, ours));
  }

  static RowUse input(CSVRecord row) {
    return new RowUse(row.get("id"), Fate.INPUT, List.of(), "");
  }

  static RowUse judged(CSVRecord row) {
    return new RowUse(row.get("id"), Fate.JUDGED, List.of(), "");
  }

  static RowUse wrong(CSVRecord row, Group group, String what, double ours, String reason) {
    return new RowUse(row.get("id"), Fate.WRONG, List.of(check(row, group, what, ours)), reason);
  }

  static RowUse left(CSVRecord row, String reason) {
    return new RowUse(row.get("id"), Fate.LEFT, List.of(), reason);
  }

  static Check check(CSVRecord row, Group group, String what, double ours) {
    String name = row.get("id") + " " + what;
    return Check.of(group, name, Rows.number(row, "value"), ours, Rows.citation(row));
  }
}
