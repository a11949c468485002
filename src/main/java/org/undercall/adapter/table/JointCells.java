package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads from a row why a part is renewed, and the sizes and the friction of its joint. */
final class JointCells {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern LIMIT =
      Pattern.compile("\\bup to (" + Amounts.NUMBER + ") ?(mm|uses?)\\b");
  private static final List<String> REASONS =
      List.of("self-locking", "micro-encapsulated", "yielded", "maker");

  private final RowCells row;
  private final TableFaults faults;
  private final Amounts amounts;

  JointCells(RowCells row, TableFaults faults) {
    this.row = row;
    this.faults = faults;
    this.amounts = new Amounts(faults);
  }

  /** Reasons, and a limit such as "up to 52.5 mm" or "up to 3 uses". */
  void renew(ObjectNode fastener) {
    Cell cell = row.cell(Column.RENEW);
    if (cell.isEmpty()) {
      return;
    }
    ArrayNode renew = fastener.putArray("renew");
    String text = cell.given().toLowerCase(Locale.ROOT);
    Matcher limit = LIMIT.matcher(text);
    String words =
        limit
            .replaceAll(" ")
            .replace("self locking", "self-locking")
            .replace("micro encapsulated", "micro-encapsulated");
    for (String reason : words.strip().split("[ ,;]+", -1)) {
      if (REASONS.contains(reason)) {
        renew.add(reason);
      } else if (!reason.isEmpty()) {
        String more = ", perhaps with \"up to 52.5 mm\" or \"up to 3 uses\"";
        String expected = "one of " + String.join(", ", REASONS) + more;
        faults.at(cell, TableCode.WORD, cell.shown(), expected);
      }
    }
    limit.reset();
    while (limit.find()) {
      boolean length = limit.group(2).equals("mm");
      amounts
          .number(cell, limit.group(1), "a limit such as \"up to 52.5 mm\"")
          .ifPresent(
              most -> {
                ObjectNode node = renew.addObject().put(length ? "lengthLimit" : "uses", most);
                if (length) {
                  node.put("unit", "mm");
                }
              });
    }
  }

  /** The least and the most, such as {@code 0.1 to 0.16}: of both, or of thread and of seat. */
  void friction(ObjectNode fastener) {
    Cell both = row.cell(Column.FRICTION);
    Cell thread = row.cell(Column.THREAD_FRICTION);
    Cell seat = row.cell(Column.SEAT_FRICTION);
    boolean apart = !thread.isEmpty() || !seat.isEmpty();
    if (apart && !both.isEmpty()) {
      faults.at(both, TableCode.STATED_TWICE, both.shown(), "friction of both, or of each");
    } else if (apart) {
      row.required(Column.THREAD_FRICTION);
      row.required(Column.SEAT_FRICTION);
      ObjectNode friction = fastener.putObject("friction");
      friction.set("thread", span(thread));
      friction.set("seat", span(seat));
    } else if (!both.isEmpty()) {
      fastener.set("friction", span(both));
    }
  }

  private ObjectNode span(Cell cell) {
    ObjectNode span = NODES.objectNode();
    List<String> ends = List.of(cell.given().split(" ?(?:to|-|–) ?", -1));
    if (cell.isEmpty()) {
      return span;
    }
    if (ends.size() != 2) {
      faults.at(cell, TableCode.NUMBER, cell.shown(), "a least and a most such as 0.1 to 0.16");
      return span;
    }
    List<String> names = List.of("least", "most");
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      amounts
          .number(cell, ends.get(i), "a coefficient of friction")
          .ifPresent(n -> span.put(name, n));
    }
    return span;
  }

  /** What is clamped, and the seat under what is turned. */
  void sizes(ObjectNode fastener) {
    ObjectNode clamped = NODES.objectNode();
    row.millimetres(clamped, "length", Column.CLAMPED);
    row.millimetres(clamped, "shank", Column.SHANK);
    row.millimetres(clamped, "outer", Column.CLAMPED_OUTER);
    row.millimetres(clamped, "inner", Column.CLAMPED_INNER);
    List<String> materials = List.of("steel", "cast-iron", "aluminium");
    row.word(clamped, "material", Column.CLAMPED_MATERIAL, materials, false);
    put(fastener, "clamped", clamped, Column.CLAMPED);
    ObjectNode seat = NODES.objectNode();
    row.word(seat, "shape", Column.SEAT, List.of("flat", "cone", "ball"), false);
    row.millimetres(seat, "outer", Column.SEAT_OUTER);
    row.millimetres(seat, "inner", Column.SEAT_INNER);
    Cell angle = row.cell(Column.SEAT_ANGLE);
    if (!angle.isEmpty()) {
      String degrees = angle.given().replaceFirst(" ?(°|deg)$", "");
      amounts
          .number(angle, degrees, "the whole angle of a cone")
          .ifPresent(n -> seat.put("angle", n));
    }
    put(fastener, "seat", seat, Column.SEAT);
  }

  /** Puts sizes, of which one cell must hold something if another one does. */
  private void put(ObjectNode fastener, String field, ObjectNode sizes, Column needed) {
    if (!sizes.isEmpty()) {
      row.required(needed);
      fastener.set(field, sizes.put("unit", "mm"));
    }
  }
}
