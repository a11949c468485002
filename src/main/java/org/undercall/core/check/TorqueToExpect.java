package org.undercall.core.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.ExpectedTorque;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Units;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Torque;

/**
 * The torque to expect after the last angle, as {@link ExpectedTorque} reckons it from the sizes of
 * the joint that the procedure states. It knows nothing of a prevailing torque, so there is none
 * for a self-locking nut.
 */
public final class TorqueToExpect {
  private TorqueToExpect() {}

  /**
   * The band in the unit of the specification, in whole numbers, over the ends of friction, of the
   * torque stage and of the angle.
   *
   * @param marking the class of the bolt, as read
   * @param tools what the torque may be read with
   * @return empty if the sizes, the class or the friction are not known, if it does not end with an
   *     angle turned on, or if something else raises the torque
   */
  public static Optional<AngleStage.Band> of(
      Fastener fastener, Optional<HeadMarking> marking, List<Tool> tools) {
    boolean locks =
        fastener.part().hardware() == Hardware.SELF_LOCKING_NUT
            || fastener.manner().runDown().isPresent();
    return fastener.variants().stream()
        .filter(variant -> !locks && variant.marking().equals(marking))
        .findFirst()
        .flatMap(variant -> of(fastener, variant, tools));
  }

  private static Optional<AngleStage.Band> of(
      Fastener fastener, Variant variant, List<Tool> tools) {
    List<Stage> stages = variant.stages(); // the first is a torque, so the search ends
    int angles = 0;
    while (stages.get(stages.size() - 1 - angles) instanceof AngleStage angle && !angle.backOff()) {
      angles++;
    }
    int snug = stages.size() - 1 - angles;
    Optional<Bolt> bolt = Bolts.marked(fastener, variant);
    Optional<Joint> joint = bolt.flatMap(b -> Joints.stated(b, fastener));
    Optional<Rubs> rubs = Rubs.of(fastener);
    if (angles == 0
        || joint.isEmpty()
        || rubs.isEmpty()
        || !(stages.get(snug) instanceof TorqueStage torque)) {
      return Optional.empty();
    }
    double turn = 0;
    double off = 0;
    for (Stage stage : stages.subList(snug + 1, stages.size())) {
      turn += stage.amount().doubleValue();
      off += ((AngleStage) stage).plusMinus().doubleValue();
    }
    Deviation tool = ToolRules.wrench(tools, torque.setting());
    Torque low = expected(joint.get(), torque.least(), rubs.get(), tool, turn - off, false);
    Torque high = expected(joint.get(), torque.most(), rubs.get(), tool, turn + off, true);
    return Optional.of(
        new AngleStage.Band(
            whole(low, torque.target(), RoundingMode.FLOOR),
            whole(high, torque.target(), RoundingMode.CEILING)));
  }

  private static Torque expected(
      Joint joint, Torque snug, Rubs rubs, Deviation tool, double turn, boolean high) {
    ExpectedTorque expected =
        new ExpectedTorque(joint, snug, rubs.both(), tool, ExpectedTorque.SOFTNESS);
    var band = expected.after(Rotation.degrees(Math.max(0, turn)));
    return high ? band.high() : band.low();
  }

  private static Torque whole(Torque torque, Torque like, RoundingMode mode) {
    BigDecimal amount = Units.convert(torque, like.unit()).amount().setScale(0, mode);
    return new Torque(amount.max(BigDecimal.ONE), like.unit());
  }
}
