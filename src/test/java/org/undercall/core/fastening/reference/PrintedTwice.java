package org.undercall.core.fastening.reference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Units;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/**
 * Torques that a manual prints in two units: ours, rounded as the second is, must be the second.
 */
final class PrintedTwice {
  /** Where the second was not rounded but cut, or is wrong. */
  private static final Set<String> WRONG = Set.of("17-192", "17-198");

  private PrintedTwice() {}

  /** The last row in pounds above a row that differs in its unit alone. */
  static CSVRecord before(String table, CSVRecord row) {
    List<CSVRecord> above =
        Rows.of(table).stream()
            .filter(r -> r.getRecordNumber() < row.getRecordNumber())
            .filter(r -> r.get("unit").startsWith("lbf"))
            .filter(r -> r.get("quantity").equals(row.get("quantity")))
            .filter(r -> !r.isMapped("nut_kind") || r.get("nut_kind").equals(row.get("nut_kind")))
            .filter(r -> !r.isMapped("thread") || r.get("thread").equals(row.get("thread")))
            .toList();
    return above.get(above.size() - 1);
  }

  static RowUse use(CSVRecord row, CSVRecord pounds) {
    TorqueUnit unit =
        pounds.get("unit").equals("lbf.in")
            ? TorqueUnit.POUND_FORCE_INCH
            : TorqueUnit.POUND_FORCE_FOOT;
    Torque torque = new Torque(new BigDecimal(pounds.get("value")), unit);
    BigDecimal exact = Units.convert(torque, TorqueUnit.NEWTON_METRE).amount();
    int places = new BigDecimal(row.get("value")).scale();
    double ours = exact.setScale(places, RoundingMode.HALF_UP).doubleValue();
    String what = row.get("quantity") + ", " + pounds.get("value") + " " + pounds.get("unit");
    return WRONG.contains(row.get("id"))
        ? RowUse.wrong(row, Group.PRINTED_TWICE, what, ours, "not what the pounds beside it give")
        : RowUse.checked(row, Group.PRINTED_TWICE, what, ours);
  }
}
