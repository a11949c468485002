package org.undercall.core.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.Plausibility;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Stage.TorqueStage;

/**
 * Rules about a torque, its thread and its class.
 *
 * <p>Without a head marking, a torque is too high only if the strongest class does not bear it, and
 * too low only if it is so for the weakest. A standard hexagon seat is assumed.
 */
final class TorqueRules {
  private static final Set<Lubrication> CLOSELY_TOLD =
      EnumSet.of(Lubrication.DRY, Lubrication.OILED, Lubrication.GREASED);

  private TorqueRules() {}

  static List<Finding> check(Spot spot) {
    List<Finding> findings = new ArrayList<>();
    for (Staged<TorqueStage> stage : Staged.torques(spot)) {
      FrictionClass.expect(stage.fastener().part().lubrication())
          .ifPresent(
              friction -> {
                tooHigh(spot, stage, friction).ifPresent(findings::add);
                tooLow(spot, stage, friction).ifPresent(findings::add);
              });
    }
    return findings;
  }

  private static Optional<Finding> tooHigh(
      Spot spot, Staged<TorqueStage> stage, Range<Friction> friction) {
    Optional<Bolt> bolt = Bolts.of(stage.fastener(), stage.variant(), PropertyClass.C12_9);
    return bolt.flatMap(
        b -> {
          Plausibility judged = Plausibility.of(b, stage.stage().target(), friction);
          boolean told = CLOSELY_TOLD.contains(stage.fastener().part().lubrication());
          boolean always = judged.lowest() >= 1;
          if (judged.highest() < 1) {
            return Optional.empty();
          }
          CheckRule rule =
              told || always ? CheckRule.TORQUE_TOO_HIGH : CheckRule.TORQUE_MAY_BE_TOO_HIGH;
          Friction low = always ? friction.high() : friction.low();
          String limit =
              String.format(
                  Locale.ROOT, "%.0f N·m", Assembly.atYield(b).torque(low, low).inNewtonMetres());
          String expected =
              String.format(
                  Locale.ROOT,
                  "less than %s, where %s yields at friction %s",
                  limit,
                  Bolts.words(b, stage.variant()),
                  low);
          return Optional.of(
              spot.at(stage.field("torque"), rule, stage.stage().target() + "", expected));
        });
  }

  private static Optional<Finding> tooLow(
      Spot spot, Staged<TorqueStage> stage, Range<Friction> friction) {
    if (!stage.last()) {
      return Optional.empty();
    }
    return Bolts.of(stage.fastener(), stage.variant(), PropertyClass.C4_6)
        .filter(
            b ->
                Plausibility.of(b, stage.stage().target(), friction).verdict()
                    == Plausibility.Verdict.TOO_LOW)
        .map(
            b ->
                spot.at(
                    stage.field("torque"),
                    CheckRule.TORQUE_TOO_LOW,
                    stage.stage().target() + "",
                    "a tenth of the yield preload of "
                        + Bolts.words(b, stage.variant())
                        + " or more"));
  }
}
