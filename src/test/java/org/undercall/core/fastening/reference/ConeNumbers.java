package org.undercall.core.fastening.reference;

import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.PressureCone.Kind;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.fastening.Utilisation;

/** The numbers in the formulas of cone, bolt ends and utilisation, taken out of ours again. */
final class ConeNumbers {
  private static final double BEARING = 16;
  private static final ThreadSize M10 = ThreadSize.of("M10");

  private ConeNumbers() {}

  static RowUse use(CSVRecord row) {
    return RowUse.checked(row, Group.CONE_NUMBERS, row.get("quantity"), ours(row.get("symbol")));
  }

  private static double ours(String symbol) {
    double through = tangent(Kind.THROUGH_BOLT, 2, 1);
    double tapped = tangent(Kind.TAPPED_HOLE, 1, 1);
    return switch (symbol) {
      case "a0" -> through;
      case "a1" -> tangent(Kind.THROUGH_BOLT, 2 * Math.E, 1) - through;
      case "a2" -> tangent(Kind.THROUGH_BOLT, 2, Math.E) - through;
      case "b0" -> tapped;
      case "b1" -> tangent(Kind.TAPPED_HOLE, Math.E, 1) - tapped;
      case "b2" -> tangent(Kind.TAPPED_HOLE, 1, Math.E) - tapped;
      case "w1" -> widening(Kind.THROUGH_BOLT);
      case "w2" -> widening(Kind.TAPPED_HOLE);
      case "lSK" -> BoltBody.Ends.HEXAGON_AND_NUT.head();
      case "lM" -> BoltBody.Ends.HEXAGON_AND_NUT.nut();
      case "lG" -> engaged();
      case "nu" -> Utilisation.ASSEMBLY.share();
      default -> throw new IllegalStateException(symbol);
    };
  }

  private static PressureCone cone(Kind kind, double slenderness, double width) {
    return new PressureCone(
        Seat.of(BEARING, 10), Length.mm(BEARING * slenderness), Length.mm(BEARING * width), kind);
  }

  private static double tangent(Kind kind, double slenderness, double width) {
    return cone(kind, slenderness, width).coneTangent();
  }

  private static double widening(Kind kind) {
    PressureCone cone = cone(kind, 1, 2);
    return (cone.coneLimit().millimetres() - BEARING) / (BEARING * cone.coneTangent());
  }

  /** The length of the engaged thread in diameters. */
  private static double engaged() {
    double compliance =
        BoltBody.fullyThreaded(M10, Length.mm(10), BoltBody.Ends.HEXAGON_AND_NUT)
            .compliance(Elasticity.STEEL)
            .millimetresPerNewton();
    double ends =
        Elasticity.STEEL.bar(Length.mm(9), Area.ofCircle(M10.diameter())).millimetresPerNewton();
    double core =
        Elasticity.STEEL
            .bar(Length.mm(10), Area.ofCircle(M10.rootDiameter()))
            .millimetresPerNewton();
    return (compliance - ends) / core - 1;
  }
}
