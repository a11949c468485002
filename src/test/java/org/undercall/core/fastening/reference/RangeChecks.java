package org.undercall.core.fastening.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.SurfaceState;
import org.undercall.core.procedure.Lubrication;

/** The friction classes and nut factors. */
final class RangeChecks {
  private static final Range<NutFactor> DRY = SurfaceState.expect(Lubrication.DRY).orElseThrow();

  private static final Map<String, Range<NutFactor>> STATES =
      Map.ofEntries(
          Map.entry("dry as-received steel", SurfaceState.DRY_STEEL.range()),
          Map.entry("dry steel on dry steel", SurfaceState.DRY_STEEL.range()),
          Map.entry("zinc plated, light oil", SurfaceState.ZINC_PLATED_LIGHT_OIL.range()),
          Map.entry("zinc plated on steel", SurfaceState.ZINC_PLATED_DRY.range()),
          Map.entry("engine oil", SurfaceState.ENGINE_OIL.range()),
          Map.entry("machine oil on steel", SurfaceState.MACHINE_OIL.range()),
          Map.entry("black oxide and oil", SurfaceState.BLACK_OXIDE_AND_OIL.range()),
          Map.entry("phosphate and oil", SurfaceState.PHOSPHATE_AND_OIL.range()),
          Map.entry("cadmium on steel", SurfaceState.CADMIUM.range()),
          Map.entry("anti-seize compound", SurfaceState.ANTI_SEIZE.range()),
          Map.entry("PTFE or wax coated", SurfaceState.PTFE_OR_WAX.range()),
          Map.entry("stainless lubricated", SurfaceState.STAINLESS_LUBRICATED.range()),
          Map.entry("302 stainless on 302", SurfaceState.STAINLESS_DRY.range()),
          Map.entry("nonplated black finish", DRY),
          Map.entry("zinc-plated", SurfaceState.ZINC_PLATED_DRY.range()),
          Map.entry("lubricated", SurfaceState.ENGINE_OIL.range()),
          Map.entry("cadmium-plated", SurfaceState.CADMIUM.range()),
          Map.entry("anti-seize (Bowman)", SurfaceState.ANTI_SEIZE.range()));

  private RangeChecks() {}

  static Stream<Check> all() {
    return Stream.of(classes(), factors()).flatMap(Function.identity());
  }

  private static Stream<Check> classes() {
    return Rows.of("03b_friction_classes").stream()
        .flatMap(
            row -> {
              FrictionClass ours = FrictionClass.valueOf(row.get("friction_class"));
              return Stream.of(
                      friction(row, "mu_min", ours.range().low().coefficient()),
                      friction(row, "mu_max", ours.range().high().coefficient()))
                  .flatMap(Optional::stream);
            });
  }

  private static Optional<Check> friction(CSVRecord row, String column, double ours) {
    String what = "class " + row.get("friction_class") + " " + column;
    return row.get(column).isEmpty()
        ? Optional.empty()
        : Optional.of(
            Check.of(Group.FRICTION, what, Rows.number(row, column), ours, Rows.citation(row)));
  }

  /** Each published nut factor lies within the range used; one outside shows its distance. */
  private static Stream<Check> factors() {
    return Rows.of("03d_nut_factor_K").stream()
        .flatMap(
            row ->
                List.of("K_min", "K_max", "K_nominal").stream()
                    .filter(column -> !row.get(column).isEmpty())
                    .map(column -> factor(row, column)));
  }

  private static Check factor(CSVRecord row, String column) {
    Range<NutFactor> range = STATES.get(row.get("condition"));
    double published = Rows.number(row, column);
    double nearest = Math.max(range.low().k(), Math.min(range.high().k(), published));
    String what = row.get("condition") + " " + column;
    return Check.of(Group.NUT_FACTOR, what, published, nearest, Rows.citation(row));
  }
}
