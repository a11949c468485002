package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.term.TorqueUnit;

/** What a doubtful cell may mean, as far as it can be told. */
final class Possible {
  private static final List<String> COLUMNS =
      List.of(
          "fastener",
          "thread",
          "torque",
          "class",
          "socket",
          "load condition",
          "one time use",
          "hardware",
          "-");
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final Pattern DAY_AND_MONTH =
      Pattern.compile(
          "([0-9]{1,2})[. -]*([A-Za-z]{3})[a-z]*\\.?|([A-Za-z]{3})[a-z]*[. -]*([0-9]{1,2})");
  private static final Pattern GROUPED = Pattern.compile("([0-9]{1,3})[.,]([0-9]{3})(?![0-9])");
  private static final Pattern KILOGRAMS = Pattern.compile("([0-9]+(?:[.,][0-9]+)?) ?[A-Za-z·. ]+");

  private Possible() {}

  static List<String> of(String asked, String read, TableCode code) {
    if (asked.equals(StageCell.UNIT)) {
      return List.of("N·m", "lbf·ft", "lbf·in");
    }
    if (asked.equals(Layout.ASKED)) {
      return COLUMNS;
    }
    if (asked.startsWith(CellComments.ASKED)) {
      return List.of(CellComments.NOTE, "-");
    }
    Column column = Column.of(asked).orElse(null);
    if (column == null) {
      return List.of();
    }
    return switch (column) {
      case SOCKET -> List.of(RowCells.BY_THREAD);
      case SIDE -> List.of("both", "front", "rear", "corner", "car");
      case ONE_TIME, REUSABLE, WHEEL, BY_HAND, LEFT_HAND -> List.of("yes", "no");
      case NEEDS, HARDWARE, LUBRICATION -> AsWritten.words(column);
      case THREAD -> Threads.possible(read);
      case MARKING -> code == TableCode.DATE ? markings(read) : List.of();
      case TORQUE -> torques(read, code);
      default -> List.of();
    };
  }

  private static List<String> torques(String read, TableCode code) {
    if (code == TableCode.TWO_READINGS) {
      int bracket = read.indexOf('(');
      if (bracket > 0) {
        return List.of(
            read.substring(0, bracket).strip(),
            read.substring(bracket + 1).replace(")", "").strip());
      }
      Matcher grouped = GROUPED.matcher(read);
      return grouped.find()
          ? List.of(grouped.replaceAll("$1.$2"), grouped.replaceAll("$1$2"))
          : List.of(read + "°", read + " Nm");
    }
    Matcher kilograms = KILOGRAMS.matcher(read);
    if (code == TableCode.OTHER_UNIT && kilograms.matches()) {
      BigDecimal exact =
          new BigDecimal(kilograms.group(1).replace(',', '.'))
              .multiply(TorqueUnit.KILOGRAM_FORCE_METRE.newtonMetres());
      return List.of(Amounts.tidy(exact).toPlainString() + " N·m");
    }
    return List.of();
  }

  /** The classes that a spreadsheet can have made this date of. */
  private static List<String> markings(String read) {
    List<String> found = new ArrayList<>();
    Matcher date = DAY_AND_MONTH.matcher(read);
    if (date.matches()) {
      String day = Optional.ofNullable(date.group(1)).orElse(date.group(4));
      String month = Optional.ofNullable(date.group(2)).orElse(date.group(3));
      int number = MONTHS.indexOf(month.toLowerCase(Locale.ROOT)) + 1;
      List.of(day + "." + number, number + "." + day).forEach(found::add);
    }
    found.removeIf(text -> !PartCells.isMarking(text));
    return found;
  }
}
