package org.undercall.core.fastening;

import java.util.Arrays;
import java.util.Optional;
import org.undercall.core.procedure.Lubrication;

/**
 * A state of surface and lubrication with the range of nut factors K that published tables give.
 *
 * <p>Where two tables give the same state, the range covers both. Nut factors scatter by more than
 * any table shows; the short form is an estimate.
 */
public enum SurfaceState {
  DRY_STEEL(0.18, 0.27),
  ZINC_PLATED_DRY(0.17, 0.35),
  ZINC_PLATED_LIGHT_OIL(0.18, 0.22),
  ENGINE_OIL(0.15, 0.20),
  MACHINE_OIL(0.10, 0.26),
  BLACK_OXIDE_AND_OIL(0.15, 0.18),
  PHOSPHATE_AND_OIL(0.15, 0.22),
  CADMIUM(0.15, 0.19),
  ANTI_SEIZE(0.12, 0.16),
  PTFE_OR_WAX(0.10, 0.14),
  STAINLESS_LUBRICATED(0.14, 0.18),
  STAINLESS_DRY(0.30, 0.50);

  private final double low;
  private final double high;

  SurfaceState(double low, double high) {
    this.low = low;
    this.high = high;
  }

  /** The range of nut factors. */
  public Range<NutFactor> range() {
    return new Range<>(NutFactor.of(low), NutFactor.of(high));
  }

  /**
   * The range of nut factors for a state that a specification names; empty for threadlocker: the
   * tables of nut factors that were read have none, though table A5 of VDI 2230 has its friction
   * ({@link FrictionClass}). Grease covers everything from solid lubricant to oil, as there; no
   * table read has a nut factor for plain grease.
   */
  public static Optional<Range<NutFactor>> expect(Lubrication state) {
    return switch (state) {
      case DRY -> Optional.of(covering(DRY_STEEL, ZINC_PLATED_DRY, STAINLESS_DRY));
      case OILED -> Optional.of(covering(ENGINE_OIL, ZINC_PLATED_LIGHT_OIL, PHOSPHATE_AND_OIL));
      case GREASED -> Optional.of(covering(PTFE_OR_WAX, ANTI_SEIZE, ENGINE_OIL));
      case PASTE -> Optional.of(covering(PTFE_OR_WAX, ANTI_SEIZE));
      case AS_DELIVERED, UNSTATED -> Optional.of(covering(PTFE_OR_WAX, ZINC_PLATED_DRY));
      case THREADLOCKER -> Optional.empty();
    };
  }

  private static Range<NutFactor> covering(SurfaceState... states) {
    double low = Arrays.stream(states).mapToDouble(s -> s.low).min().orElseThrow();
    double high = Arrays.stream(states).mapToDouble(s -> s.high).max().orElseThrow();
    return new Range<>(NutFactor.of(low), NutFactor.of(high));
  }
}
