package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.term.TorqueUnit;

/**
 * Reads what stands beside the stages of a row: for one of them alone, or an entry for each,
 * divided by {@code +}, a dash where there is none.
 */
final class BesideStages {
  /** What divides the entries. */
  static final String BETWEEN = " + ";

  /** An entry that says nothing. */
  static final String NONE = "-";

  private static final String NUMBER = "(" + Amounts.NUMBER + ")";
  private static final Pattern BAND =
      Pattern.compile(NUMBER + " ?(?:to|-|–) ?" + NUMBER + " ?([^0-9]*)");
  private static final Pattern ADAPTOR =
      Pattern.compile(
          "wrench "
              + NUMBER
              + ",? extension "
              + NUMBER
              + "(?:,? angle ([-−–]?"
              + Amounts.NUMBER
              + ") ?°?)?",
          Pattern.CASE_INSENSITIVE);

  private final RowCells row;
  private final TableFaults faults;
  private final Amounts amounts;

  BesideStages(RowCells row, TableFaults faults) {
    this.row = row;
    this.faults = faults;
    this.amounts = new Amounts(faults);
  }

  /** Adds to the stages of the row what the cells beside them say. */
  void add(ArrayNode stages) {
    List<ObjectNode> angles = with(stages, "angle");
    List<ObjectNode> torques = with(stages, "torque");
    Cell yield = row.cell(Column.BEYOND_YIELD);
    each(yield, angles, "angle", (stage, text) -> beyondYield(yield, stage, text));
    Cell after = row.cell(Column.TORQUE_AFTER);
    each(after, angles, "angle", (stage, text) -> torqueAfter(after, stage, text));
    Cell adaptor = row.cell(Column.ADAPTOR);
    each(adaptor, torques, "torque", (stage, text) -> adaptor(adaptor, stage, text));
  }

  private static List<ObjectNode> with(ArrayNode stages, String field) {
    List<ObjectNode> found = new ArrayList<>();
    for (JsonNode stage : stages) {
      if (stage.has(field)) {
        found.add((ObjectNode) stage);
      }
    }
    return found;
  }

  /** Reads the entry of one stage. */
  private interface Entry {
    void read(ObjectNode stage, String text);
  }

  private void each(Cell cell, List<ObjectNode> stages, String what, Entry entry) {
    if (cell.isEmpty() || (stages.isEmpty() && cell.row() < 0)) {
      return;
    }
    List<String> entries = List.of(cell.given().split(" ?\\+ ?", -1));
    if (stages.isEmpty()) {
      faults.at(cell, TableCode.OUT_OF_PLACE, cell.shown(), "an empty cell without " + what);
    } else if (entries.size() != stages.size()) {
      String expected =
          "an entry for each of the " + stages.size() + " stages by " + what + ", such as - + yes";
      faults.at(cell, TableCode.NOT_ONE_EACH, cell.shown(), expected);
    } else {
      for (int i = 0; i < entries.size(); i++) {
        if (!entries.get(i).strip().matches("[-–—]")) {
          entry.read(stages.get(i), entries.get(i).strip());
        }
      }
    }
  }

  private void beyondYield(Cell cell, ObjectNode stage, String text) {
    switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "y", "true" -> stage.put("beyondYield", true);
      case "no", "n", "false" -> stage.put("beyondYield", false);
      default -> faults.at(cell, TableCode.WORD, cell.shown(), "yes or no");
    }
  }

  private void torqueAfter(Cell cell, ObjectNode stage, String text) {
    String expected = "a least and a most such as 100 to 160 Nm";
    Matcher band = BAND.matcher(text);
    if (!band.matches()) {
      faults.at(cell, TableCode.NUMBER, cell.shown(), expected);
      return;
    }
    String word = band.group(3).isBlank() ? row.unit(Column.TORQUE_AFTER) : band.group(3);
    Optional<TorqueUnit> unit = TorqueWord.of(word);
    if (unit.isEmpty() || unit.get() == TorqueUnit.KILOGRAM_FORCE_METRE) {
      TableCode code = word.isBlank() ? TableCode.NO_UNIT : TableCode.OTHER_UNIT;
      faults.at(cell, code, cell.shown(), "N·m, lbf·ft or lbf·in");
      return;
    }
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    amounts.number(cell, band.group(1), expected).ifPresent(n -> node.put("least", n));
    amounts.number(cell, band.group(2), expected).ifPresent(n -> node.put("most", n));
    stage.set("finalTorque", node.put("unit", unit.get().symbol()));
  }

  private void adaptor(Cell cell, ObjectNode stage, String text) {
    String expected = "lengths in mm and an angle, such as wrench 420 extension 55 angle 0";
    Matcher parts = ADAPTOR.matcher(text);
    if (!parts.matches()) {
      faults.at(cell, TableCode.NUMBER, cell.shown(), expected);
      return;
    }
    ObjectNode adaptor = stage.putObject("adaptor");
    amounts.number(cell, parts.group(1), expected).ifPresent(n -> adaptor.put("wrench", n));
    amounts.number(cell, parts.group(2), expected).ifPresent(n -> adaptor.put("extension", n));
    String angle = parts.group(3) == null ? "0" : parts.group(3);
    amounts.signed(cell, angle, expected).ifPresent(n -> adaptor.put("angle", n));
    adaptor.put("unit", "mm");
  }
}
