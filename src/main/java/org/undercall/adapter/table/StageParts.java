package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.term.TorqueUnit;

/** Takes a cell apart into its stages. */
final class StageParts {
  static final String EXPECTED = "a torque such as 52 ± 3 Nm, or 52 ± 3 Nm + 90° ± 5°";
  static final String DEGREES = "°|deg|deg\\.|degrees";
  private static final Pattern RANGE = Pattern.compile("([0-9.,]+) ?(?:to|-|–) ?([0-9.,]+)");
  private static final Pattern STAGE =
      Pattern.compile(
          "(?:(?<manner>back off|loosen|check) )?(?<amount>.*?[0-9]) ?(?<unit>[^0-9±%]*?) ?"
              + "(?:(?:±|\\+/-) ?(?<tolerance>[0-9.,]+) ?(?<own>[^0-9±]*))?");

  private final TableFaults faults;
  private final Amounts amounts;

  StageParts(TableFaults faults) {
    this.faults = faults;
    this.amounts = new Amounts(faults);
  }

  /** One stage while it is read. */
  record Part(
      String manner,
      BigDecimal amount,
      Optional<BigDecimal> upTo,
      String unit,
      String tolerance,
      String toleranceUnit) {
    boolean isAngle() {
      return unit.matches(DEGREES);
    }
  }

  /**
   * The stages that stand in a cell; none if something is doubtful, which is then a fault.
   *
   * @param headingUnit the unit of the heading, blank if it has none
   * @param angles whether all of them are angles
   */
  List<Part> read(Cell cell, String headingUnit, boolean angles) {
    List<Part> parts = new ArrayList<>();
    if (cell.isEmpty()) {
      return parts;
    }
    if (Amounts.isDate(cell.given())) {
      faults.at(cell, TableCode.DATE, cell.shown(), EXPECTED + ", not a date");
      return parts;
    }
    if (Conversions.disagree(cell.given())) {
      String expected = "one torque: the two that stand there are not the same";
      faults.at(cell, TableCode.TWO_READINGS, cell.shown(), expected);
      return List.of();
    }
    String plain = AsWritten.stages(Conversions.without(cell.given()));
    List<String> texts = List.of(plain.split(" ?\\+(?!/-) ?", -1));
    int degreesUpTo = texts.size() - 1;
    while (degreesUpTo > 0 && !texts.get(degreesUpTo).contains("°")) {
      degreesUpTo--;
    }
    for (String text : texts) {
      Matcher stage = STAGE.matcher(text.strip());
      if (!stage.matches()) {
        faults.at(cell, TableCode.NUMBER, cell.shown(), EXPECTED);
        return List.of();
      }
      String unit = stage.group("unit").strip();
      Matcher range = RANGE.matcher(stage.group("amount"));
      boolean two = range.matches();
      Optional<BigDecimal> amount =
          amounts.number(cell, two ? range.group(1) : stage.group("amount"), EXPECTED);
      Optional<BigDecimal> upTo =
          two ? amounts.number(cell, range.group(2), EXPECTED) : Optional.empty();
      if (amount.isEmpty() || two != upTo.isPresent()) {
        return List.of();
      }
      String manner = stage.group("manner") == null ? "" : stage.group("manner");
      String tolerance = stage.group("tolerance");
      String own = tolerance == null ? "" : stage.group("own").strip();
      if (unit.isEmpty() && !own.equals("%")) {
        unit = own;
      }
      boolean counted =
          AsWritten.isNumbered(cell.given())
              && parts.size() < degreesUpTo
              && parts.stream().allMatch(part -> part.unit().isEmpty());
      if (!parts.isEmpty() && unit.isEmpty() && !counted) {
        String expected = "° or a unit in every stage after the first";
        faults.at(cell, TableCode.TWO_READINGS, cell.shown(), expected);
        return List.of();
      }
      String stated = tolerance == null ? "" : tolerance;
      parts.add(new Part(manner, amount.get(), upTo, unit, stated, own));
    }
    return united(cell, parts, headingUnit, angles);
  }

  /** Gives every part its unit: its own, that of the heading, or that of the next torque. */
  private List<Part> united(Cell cell, List<Part> parts, String headingUnit, boolean angles) {
    List<Part> united = new ArrayList<>();
    List<String> stated =
        parts.stream()
            .map(Part::unit)
            .filter(u -> TorqueWord.of(u).isPresent())
            .distinct()
            .toList();
    if (stated.stream().map(TorqueWord::of).distinct().count() > 1) {
      faults.at(cell, TableCode.TWO_READINGS, cell.shown(), "stages in one unit of torque");
      return List.of();
    }
    String usual = headingUnit.isEmpty() && stated.size() == 1 ? stated.get(0) : headingUnit;
    for (Part part : parts) {
      String unit = part.unit().isEmpty() ? usual : part.unit();
      Optional<TorqueUnit> own = TorqueWord.of(unit);
      Optional<TorqueUnit> heading = TorqueWord.of(headingUnit);
      if (own.isPresent() && heading.isPresent() && !own.equals(heading)) {
        faults.at(cell, TableCode.TWO_UNITS, cell.shown(), "a torque in " + headingUnit);
        return List.of();
      }
      if (angles && !unit.matches(DEGREES)) {
        faults.at(cell, TableCode.OTHER_UNIT, cell.shown(), "an angle in degrees");
        return List.of();
      }
      united.add(
          new Part(
              part.manner(),
              part.amount(),
              part.upTo(),
              unit,
              part.tolerance(),
              part.toleranceUnit()));
    }
    return united;
  }
}
