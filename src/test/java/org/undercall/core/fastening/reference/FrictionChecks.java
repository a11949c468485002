package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.SurfaceState;
import org.undercall.core.fastening.TighteningMethod;
import org.undercall.core.fastening.WrenchClass;
import org.undercall.core.term.Torque;

/** Friction classes, nut factors, tightening factors and their scatter. */
final class FrictionChecks {
  /** The nut factors of a textbook's table, which 03d has from another reading. */
  private static final Map<String, SurfaceState> STATES =
      Map.ofEntries(
          entry("nonplated steel", SurfaceState.DRY_STEEL),
          entry("zinc plated", SurfaceState.ZINC_PLATED_DRY),
          entry("lubricated", SurfaceState.ENGINE_OIL),
          entry("cadmium plated", SurfaceState.CADMIUM),
          entry("anti-seize", SurfaceState.ANTI_SEIZE));

  private static final Map<String, TighteningMethod> METHODS =
      Map.of(
          "torque wrench", TighteningMethod.TORQUE_FROM_TESTS_ON_THE_JOINT,
          "power driver", TighteningMethod.TORQUE_FRICTION_ESTIMATED_CLASS_A,
          "impact driver", TighteningMethod.IMPACT_WRENCH);

  private FrictionChecks() {}

  static RowUse friction(CSVRecord row) {
    return switch (row.get("quantity")) {
      case "range of muG and muK, friction class", "guide value of muG and muK" -> ofClass(row);
      case "guide value of friction" ->
          RowUse.left(row, "a coating's own friction, narrower than a class and partly outside it");
      case "nut factor K" -> factor(row);
      case "tightening factor alpha_A" -> method(row);
      case "preload scatter +-" -> scatter(row);
      default -> band(row, Friction.VDA_235_101);
    };
  }

  private static RowUse ofClass(CSVRecord row) {
    FrictionClass ours = FrictionClass.valueOf(row.get("class_or_coating"));
    String what = "class " + ours + " " + row.get("surface");
    Check low = low(row, Group.FRICTION, what, ours.range().low().coefficient());
    return row.get("value_max").isEmpty()
        ? RowUse.checked(row, low)
        : RowUse.checked(
            row, low, high(row, Group.FRICTION, what, ours.range().high().coefficient()));
  }

  private static RowUse band(CSVRecord row, Range<Friction> ours) {
    return RowUse.checked(
        row,
        low(row, Group.FRICTION, row.get("quantity"), ours.low().coefficient()),
        high(row, Group.FRICTION, row.get("quantity"), ours.high().coefficient()));
  }

  private static RowUse factor(CSVRecord row) {
    String state = row.get("class_or_coating");
    if (state.equals("plated steel")) {
      return RowUse.left(row, "a plating that is not named, at 0.15 (zinc has 0.17 at least)");
    }
    if (state.equals("black oxide")) {
      return RowUse.left(row, "a dry black finish, of which the program has the dry range only");
    }
    Range<NutFactor> range = STATES.get(state).range();
    double published = Rows.number(row, "value_min");
    double nearest = Math.max(range.low().k(), Math.min(range.high().k(), published));
    return RowUse.checked(row, low(row, Group.NUT_FACTOR, state, nearest));
  }

  private static RowUse method(CSVRecord row) {
    TighteningMethod method = METHODS.get(row.get("class_or_coating"));
    if (method == null) {
      return row.get("value_min").equals("1.0")
          ? RowUse.left(row, "counted as 1 beside a scatter of 5 to 12 %, which contradicts it")
          : RowUse.input(row);
    }
    return RowUse.checked(
        row,
        low(row, Group.TIGHTENING, method.name(), method.best()),
        high(row, Group.TIGHTENING, method.name(), method.worst()));
  }

  /** The scatter that the source prints beside a tightening factor, to whole percents. */
  private static RowUse scatter(CSVRecord row) {
    String method = row.get("class_or_coating");
    List<CSVRecord> factors =
        Rows.of("14_friction").stream()
            .filter(r -> r.get("quantity").equals("tightening factor alpha_A"))
            .filter(r -> r.get("class_or_coating").equals(method))
            .toList();
    if (factors.isEmpty() || factors.get(0).get("value_min").equals("1.0")) {
      return RowUse.left(row, "a scatter beside a tightening factor of 1, which contradicts it");
    }
    return RowUse.checked(row, scatter(row, factors.get(0)).toArray(Check[]::new));
  }

  private static Stream<Check> scatter(CSVRecord row, CSVRecord factor) {
    double least = TighteningMethod.scatterPercent(Rows.number(factor, "value_min"));
    double most = TighteningMethod.scatterPercent(Rows.number(factor, "value_max"));
    String what = "± of " + row.get("class_or_coating");
    return Stream.of(
        low(row, Group.SCATTER_PERCENT, what, least), high(row, Group.SCATTER_PERCENT, what, most));
  }

  static RowUse scatterTable(CSVRecord row) {
    return switch (row.get("id")) {
      case "22-7" ->
          ends(
              row,
              Group.SCATTER_PERCENT,
              TighteningMethod.scatterPercent(TighteningMethod.ANGLE_CONTROLLED.best()),
              TighteningMethod.scatterPercent(TighteningMethod.IMPACT_WRENCH.worst()));
      case "22-32" ->
          ends(
              row,
              Group.TIGHTENING,
              TighteningMethod.TORQUE_FRICTION_ESTIMATED_CLASS_B.best(),
              TighteningMethod.TORQUE_FRICTION_ESTIMATED_CLASS_B.worst());
      case "22-52" -> tool(row);
      case "22-33" -> RowUse.left(row, "its preload is checked in 03e");
      default -> RowUse.left(row, "the same table, recalled, is checked in 03c");
    };
  }

  private static RowUse tool(CSVRecord row) {
    double ours = WrenchClass.II_A.permissible(Torque.newtonMetres("450")).percent();
    return RowUse.checked(row, named(row, Group.TOOLS, "setting wrench", "low", ours));
  }

  private static RowUse ends(CSVRecord row, Group group, double low, double high) {
    return RowUse.checked(
        row,
        named(row, group, row.get("method") + " least", "low", low),
        named(row, group, row.get("method") + " most", "high", high));
  }

  private static Check low(CSVRecord row, Group group, String what, double ours) {
    return named(row, group, what + " least", "value_min", ours);
  }

  private static Check high(CSVRecord row, Group group, String what, double ours) {
    return named(row, group, what + " most", "value_max", ours);
  }

  private static Check named(CSVRecord row, Group group, String what, String column, double ours) {
    String name = row.get("id") + " " + what;
    return Check.of(group, name, Rows.number(row, column), ours, Rows.citation(row));
  }
}
