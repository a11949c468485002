package org.undercall.adapter.procedure;

import static org.undercall.adapter.procedure.ProcedureReader.flag;
import static org.undercall.adapter.procedure.ProcedureReader.list;
import static org.undercall.adapter.procedure.ProcedureReader.number;
import static org.undercall.adapter.procedure.ProcedureReader.optional;
import static org.undercall.adapter.procedure.ProcedureReader.text;
import static org.undercall.adapter.procedure.ProcedureReader.torque;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.JointKind;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.ReuseBy;

/** Turns the tree of a fastener that passed every check into the record of the core. */
final class FastenerReader {
  private FastenerReader() {}

  static Fastener fastener(JsonNode fastener) {
    return new Fastener(
        text(fastener, "name"),
        text(fastener, "thread"),
        drive(fastener),
        new Fastener.Part(
            FileWords.constant(Hardware.class, text(fastener, "hardware")),
            flag(fastener, "oneTimeUse") || fastener.has("renew"),
            FileWords.constant(Lubrication.class, text(fastener, "lubrication")),
            reasons(fastener),
            reuse(fastener)),
        FileWords.constant(LoadCondition.class, text(fastener, "needs")),
        new Fastener.FastenerSet(
            fastener.path("count").asInt(1), list(fastener, "order", JsonNode::intValue)),
        fastener.has("variants")
            ? list(fastener, "variants", FastenerReader::variant)
            : List.of(variant(fastener)),
        joint(fastener),
        new Fastener.Manner(
            flag(fastener, "leftHand"),
            flag(fastener, "byHand"),
            optional(fastener, "counterHold"),
            optional(fastener, "runDown")
                .map(word -> FileWords.constant(Fastener.Manner.RunDown.class, word)),
            number(fastener, "cureMinutes").map(n -> Duration.ofMinutes(n.longValueExact()))));
  }

  private static BigDecimal drive(JsonNode fastener) {
    BigDecimal drive = fastener.get("drive").decimalValue();
    boolean inches = fastener.path("driveUnit").asText().equals("in");
    return inches ? DriveSize.ofInches(drive) : drive;
  }

  private static Fastener.Joint joint(JsonNode fastener) {
    return new Fastener.Joint(
        optional(fastener, "joint").map(word -> FileWords.constant(JointKind.class, word)),
        optional(fastener, "arm"),
        optional(fastener, "needsReason"),
        flag(fastener, "wheel"),
        optional(fastener, "nutClass"),
        optional(fastener, "tappedIn")
            .map(word -> FileWords.constant(Fastener.Joint.Material.class, word))
            .map(in -> new Fastener.Joint.Tapped(in, number(fastener, "engagement"))),
        JointSizes.read(fastener));
  }

  private static Set<Renewal> reasons(JsonNode fastener) {
    Set<Renewal> reasons = EnumSet.noneOf(Renewal.class);
    for (JsonNode item : fastener.path("renew")) {
      if (item.isTextual()) {
        reasons.add(FileWords.constant(Renewal.class, item.textValue()));
      }
    }
    return reasons;
  }

  private static Optional<Reuse> reuse(JsonNode fastener) {
    for (JsonNode item : fastener.path("renew")) {
      if (item.isObject()) {
        return Optional.of(
            item.has("uses")
                ? new Reuse(ReuseBy.USES, item.get("uses").decimalValue())
                : new Reuse(ReuseBy.LENGTH, item.get("lengthLimit").decimalValue()));
      }
    }
    return Optional.empty();
  }

  private static Variant variant(JsonNode variant) {
    return new Variant(
        optional(variant, "marking").map(HeadMarking::new),
        list(variant, "stages", FastenerReader::stage));
  }

  private static Stage stage(JsonNode stage) {
    if (stage.has("upTo")) {
      return Stage.TorqueStage.range(torque(stage, "torque"), torque(stage, "upTo"));
    }
    BigDecimal plusMinus = stage.get("plusMinus").decimalValue();
    if (stage.has("backOff")) {
      return new Stage.AngleStage(new Angle(stage.get("backOff").decimalValue()), plusMinus, true);
    }
    if (flag(stage, "checkPass")) {
      return new Stage.TorqueStage(
          torque(stage, "torque"), plusMinus, Optional.empty(), Stage.TorqueStage.Form.CHECK_PASS);
    }
    return stage.has("angle")
        ? new Stage.AngleStage(
            new Angle(stage.get("angle").decimalValue()),
            plusMinus,
            false,
            Optional.of(stage.path("finalTorque"))
                .filter(JsonNode::isObject)
                .map(b -> new Stage.AngleStage.Band(torque(b, "least"), torque(b, "most"))),
            Optional.of(stage.path("beyondYield"))
                .filter(JsonNode::isBoolean)
                .map(JsonNode::booleanValue))
        : Levers.torqueStage(torque(stage, "torque"), plusMinus, stage.path("adaptor"));
  }
}
