package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.adapter.table.StageParts.Part;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;
import org.undercall.text.Shown;

/** Reads the stages of a row: torque, tolerance, angle and its tolerance. */
final class StageCell {
  /** What is asked if a torque has no unit anywhere. */
  static final String UNIT = "torque unit";

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final TableFaults faults;
  private final Amounts amounts;

  StageCell(TableFaults faults) {
    this.faults = faults;
    this.amounts = new Amounts(faults);
  }

  /** A tolerance that stands in a column of its own. */
  private record Beside(Cell cell, String unit) {}

  /** The stages of a row; fewer if something is doubtful, which is then a fault. */
  ArrayNode stages(RowCells row) {
    ArrayNode stages = NODES.arrayNode();
    Cell torque = row.required(Column.TORQUE);
    Cell angle = row.cell(Column.ANGLE);
    StageParts reader = new StageParts(faults);
    List<Part> parts = reader.read(torque, row.unit(Column.TORQUE), false);
    long torques = parts.stream().filter(p -> !p.isAngle()).count();
    if (!angle.isEmpty() && torques < parts.size()) {
      String expected = "the angle in one of the two columns";
      faults.at(angle, TableCode.STATED_TWICE, angle.shown(), expected);
    }
    Beside tolerance = new Beside(row.cell(Column.TOLERANCE), row.unit(Column.TOLERANCE));
    Beside turn = new Beside(row.cell(Column.ANGLE_TOLERANCE), row.unit(Column.ANGLE_TOLERANCE));
    List<Part> turns = reader.read(angle, "°", true);
    int angles = turns.size() + parts.size() - (int) torques;
    for (Part part : parts) {
      if (part.isAngle()) {
        stages.add(angle(torque, part, turn, angles == 1));
      } else {
        stages.add(torque(torque, part, tolerance, torques == 1));
      }
    }
    turns.forEach(part -> stages.add(angle(angle, part, turn, angles == 1)));
    Cell unused = row.cell(Column.ANGLE_TOLERANCE);
    if (angles == 0 && !unused.isEmpty() && unused.row() >= 0) {
      faults.at(unused, TableCode.OUT_OF_PLACE, unused.shown(), "an empty cell without an angle");
    }
    return stages;
  }

  private ObjectNode torque(Cell cell, Part part, Beside beside, boolean alone) {
    ObjectNode stage = NODES.objectNode();
    stage.put("torque", part.amount());
    Optional<TorqueUnit> unit = unit(cell, part);
    unit.ifPresent(u -> stage.put("unit", u.symbol()));
    if (part.upTo().isPresent()) {
      boolean own = !part.tolerance().isEmpty();
      if (own || (!beside.cell().isEmpty() && beside.cell().row() >= 0)) {
        Cell twice = own ? cell : beside.cell();
        faults.at(twice, TableCode.STATED_TWICE, twice.shown(), "no tolerance with a range");
      }
      stage.put("upTo", part.upTo().get());
      return stage;
    }
    if (part.manner().matches("loosen|back off")) {
      faults.at(cell, TableCode.NUMBER, cell.shown(), StageParts.EXPECTED);
    }
    if (part.manner().equals("check")) {
      stage.put("checkPass", true);
    }
    tolerance(cell, part, beside, alone).ifPresent(t -> stage.put("plusMinus", t));
    return stage;
  }

  private ObjectNode angle(Cell cell, Part part, Beside beside, boolean alone) {
    ObjectNode stage = NODES.objectNode();
    boolean back = part.manner().matches("loosen|back off");
    if (part.upTo().isPresent() || part.manner().equals("check")) {
      faults.at(cell, TableCode.NUMBER, cell.shown(), StageParts.EXPECTED);
    }
    stage.put(back ? "backOff" : "angle", part.amount());
    tolerance(cell, part, beside, alone).ifPresent(t -> stage.put("plusMinus", t));
    return stage;
  }

  private Optional<TorqueUnit> unit(Cell cell, Part part) {
    Optional<TorqueUnit> unit = TorqueWord.of(part.unit());
    String expected = "N·m, lbf·ft or lbf·in";
    if (part.unit().isEmpty()) {
      String found = cell.shown() + " without a unit";
      String where = expected + " in the cell or its heading";
      faults.about(UNIT, Cell.option(UNIT, ""), cell, TableCode.NO_UNIT, found, where);
    } else if (unit.isEmpty()) {
      faults.at(cell, TableCode.OTHER_UNIT, "the unit " + Shown.quoted(part.unit()), expected);
    } else if (unit.get() == TorqueUnit.KILOGRAM_FORCE_METRE && part.amount().signum() > 0) {
      BigDecimal exact = part.amount().multiply(unit.get().newtonMetres());
      String found = new Torque(part.amount(), unit.get()).toString();
      String same = " (it is exactly " + Amounts.tidy(exact).toPlainString() + " N·m)";
      faults.at(cell, TableCode.OTHER_UNIT, found, expected + same);
      return Optional.empty();
    }
    return unit;
  }

  private Optional<BigDecimal> tolerance(Cell cell, Part part, Beside beside, boolean alone) {
    boolean own = !part.tolerance().isEmpty();
    String expected = "its tolerance, such as ±3 or ±4 %";
    if (own && !beside.cell().isEmpty() && beside.cell().row() >= 0) {
      faults.at(beside.cell(), TableCode.STATED_TWICE, beside.cell().shown(), "one tolerance");
      return Optional.empty();
    }
    if (own) {
      return amount(cell, part, part.tolerance(), part.toleranceUnit());
    }
    Matcher text =
        Pattern.compile("(?:±|\\+/-)? ?([0-9.,]+) ?([^0-9]*)").matcher(beside.cell().given());
    if (beside.cell().isEmpty()) {
      String found = cell.shown() + " without a tolerance";
      Column asked = part.isAngle() ? Column.ANGLE_TOLERANCE : Column.TOLERANCE;
      faults.about(asked.label(), beside.cell(), cell, TableCode.NO_TOLERANCE, found, expected);
    } else if (!text.matches()) {
      faults.at(beside.cell(), TableCode.NUMBER, beside.cell().shown(), expected);
    } else {
      String unit = text.group(2).isEmpty() ? beside.unit() : text.group(2).strip();
      if (alone || unit.equals("%")) {
        return amount(beside.cell(), part, text.group(1), unit);
      }
      String each = "a tolerance at each stage, or one in %";
      Column asked = part.isAngle() ? Column.ANGLE_TOLERANCE : Column.TOLERANCE;
      faults.about(asked.label(), beside.cell(), cell, TableCode.NO_TOLERANCE, cell.shown(), each);
    }
    return Optional.empty();
  }

  private Optional<BigDecimal> amount(Cell cell, Part part, String number, String unit) {
    Optional<BigDecimal> value = amounts.number(cell, number, "a tolerance such as ±3 or ±4 %");
    if (unit.equals("%")) {
      return value.map(
          v ->
              Amounts.tidy(
                  part.amount().multiply(v).movePointLeft(2).setScale(4, RoundingMode.DOWN)));
    }
    boolean same =
        unit.isEmpty()
            || (part.isAngle() && unit.matches(StageParts.DEGREES))
            || (!part.isAngle()
                && TorqueWord.of(unit).isPresent()
                && TorqueWord.of(unit).equals(TorqueWord.of(part.unit())));
    if (!same) {
      faults.at(cell, TableCode.TWO_UNITS, cell.shown(), "a tolerance in " + part.unit());
      return Optional.empty();
    }
    return value;
  }
}
