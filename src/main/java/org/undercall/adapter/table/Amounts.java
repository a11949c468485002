package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.undercall.text.Shown;

/** Reads numbers of cells; what is doubtful becomes a fault. */
final class Amounts {
  /** A number as it may stand in a cell; what it means is judged afterwards. */
  static final String NUMBER = "[0-9]+(?:[.,][0-9]+)*";

  private static final Pattern PLAIN = Pattern.compile("[0-9]{1,7}([.,][0-9]{1,4})?");
  private static final Pattern GROUPED = Pattern.compile("(?!0)[0-9]{1,3}[.,][0-9]{3}");
  private static final String MONTH =
      "(jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])[a-zé]*\\.?";
  private static final Pattern DATE =
      Pattern.compile(
          "[0-9]{1,2}[./-][0-9]{1,2}[./-][0-9]{2,4}(?!.*(?:n ?[·.*]? ?m|lb|ft|kg|kp)).*|[0-9]{4}-[0-9]{2}-[0-9]{2}.*"
              + "|[0-9]{1,2}[. -]*"
              + MONTH
              + "([ -]*[0-9]{2,4})?|"
              + MONTH
              + "[ -]*[0-9]{1,4}",
          Pattern.CASE_INSENSITIVE);

  private final TableFaults faults;

  Amounts(TableFaults faults) {
    this.faults = faults;
  }

  /** Whether a text looks like a date, which a spreadsheet may have made of a number. */
  static boolean isDate(String text) {
    return DATE.matcher(text).matches();
  }

  /** A plain number, with a point or a comma before its decimals. */
  Optional<BigDecimal> number(Cell cell, String text, String expected) {
    if (isDate(text)) {
      faults.at(cell, TableCode.DATE, Shown.quoted(text), expected + ", not a date");
    } else if (GROUPED.matcher(text).matches()) {
      String more = "a number without a group of three digits after the mark: 1234 or 1.23";
      faults.at(cell, TableCode.TWO_READINGS, Shown.quoted(text), more);
    } else if (!PLAIN.matcher(text).matches()) {
      boolean range = text.matches(NUMBER + " ?([-–—]|to|\\.\\.+) ?" + NUMBER + ".*");
      TableCode code = range ? TableCode.RANGE : TableCode.NUMBER;
      faults.at(cell, code, Shown.quoted(text), range ? "one value with ±" : expected);
    } else {
      return Optional.of(tidy(new BigDecimal(text.replace(',', '.'))));
    }
    return Optional.empty();
  }

  /** The same, which may be less than zero. */
  Optional<BigDecimal> signed(Cell cell, String text, String expected) {
    return text.matches("[-−–].*")
        ? number(cell, text.substring(1).strip(), expected).map(BigDecimal::negate)
        : number(cell, text, expected);
  }

  /** A size with or without its unit mm. */
  Optional<BigDecimal> millimetres(Cell cell, String headingUnit) {
    if (!headingUnit.isEmpty() && !headingUnit.toLowerCase(Locale.ROOT).equals("mm")) {
      faults.at(cell, TableCode.OTHER_UNIT, Shown.quoted(headingUnit), "a size in mm");
      return Optional.empty();
    }
    String text = cell.given().replaceFirst("(?i) ?mm$", "");
    return number(cell, text, "a size in mm such as 18");
  }

  /** A whole number. */
  Optional<Integer> whole(Cell cell) {
    if (!cell.given().matches("[0-9]{1,5}")) {
      faults.at(cell, TableCode.NUMBER, cell.shown(), "a whole number");
      return Optional.empty();
    }
    return Optional.of(Integer.parseInt(cell.given()));
  }

  /** Without zeros at the end, and never with an exponent. */
  static BigDecimal tidy(BigDecimal value) {
    BigDecimal plain = value.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0, java.math.RoundingMode.UNNECESSARY) : plain;
  }
}
