package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.JointKind;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.Side;
import org.undercall.core.term.Torque;

/** Turns a tree that passed every check into the records of the core. */
final class ProcedureReader {
  private ProcedureReader() {}

  static Procedure procedure(JsonNode root) {
    return new Procedure(
        new Procedure.About(
            text(root, "title"),
            text(root, "vehicle"),
            text(root, "author"),
            text(root, "revision"),
            text(root, "values"),
            optional(root, "valuesBrief")),
        list(root, "cautions", ProcedureReader::caution),
        list(root, "tools", ProcedureReader::tool),
        Levers.rideHeight(root.path("rideHeight")),
        number(root, "loadHoldsMinutes")
            .map(minutes -> Duration.ofMinutes(minutes.longValueExact()))
            .orElse(Procedure.LOAD_HOLDS),
        list(root, "phases", ProcedureReader::phase));
  }

  private static Caution caution(JsonNode caution) {
    return caution.isTextual()
        ? Caution.of(caution.textValue())
        : new Caution(text(caution, "text"), optional(caution, "brief"));
  }

  private static Tool tool(JsonNode tool) {
    return new Tool(
        text(tool, "id"),
        tool.path("kind").asText().equals("indicating") ? Tool.Kind.INDICATING : Tool.Kind.CLICKING,
        torque(tool, "least"),
        torque(tool, "most"),
        optional(tool, "calibrated").map(LocalDate::parse),
        number(tool, "uncertainty"));
  }

  private static WorkPhase phase(JsonNode phase) {
    return new WorkPhase(
        text(phase, "name"),
        FileWords.constant(Each.class, text(phase, "each")),
        list(phase, "steps", ProcedureReader::step));
  }

  private static Step step(JsonNode step) {
    Step.Head head =
        new Step.Head(
            text(step, "id"),
            text(step, "title"),
            optional(step, "brief"),
            list(step, "cautions", JsonNode::textValue),
            flag(step, "changesLoad"),
            bearing(step),
            flag(step, "witness"),
            optional(step, "why"));
    String kind = text(step, "kind");
    return switch (kind) {
      case "do" -> new Step.Do(head, optional(step, "check"), wheels(step.path("wheelsOn")));
      case "measure" -> measure(head, step);
      case "fasten" -> new Step.Fasten(head, fastener(step.get("fastener")));
      case "wait" -> new Step.Wait(head, Duration.ofSeconds(step.get("seconds").intValue()));
      case "load" ->
          new Step.Load(
              head,
              FileWords.constant(LoadCondition.class, text(step, "condition")),
              flag(step, "byWheels"));
      case "hand-over" -> new Step.HandOver(head, text(step, "due"));
      default -> throw new IllegalStateException("no such kind of step: " + kind);
    };
  }

  private static Bearing bearing(JsonNode step) {
    return new Bearing(
        list(step, "after", JsonNode::textValue),
        list(step, "undoes", JsonNode::textValue),
        optional(step, "car")
            .map(word -> FileWords.constant(Bearing.Lift.class, word))
            .orElse(Bearing.Lift.LEFT_AS_IT_IS),
        optional(step, "corner").map(word -> FileWords.constant(Side.class, word)),
        flag(step, "roadTest"));
  }

  private static Step measure(Step.Head head, JsonNode step) {
    boolean finding = step.path("outside").asText().equals("finding");
    return new Step.Measure(
        head,
        FileWords.measureUnit(text(step, "unit")),
        new Step.Limits(number(step, "least"), number(step, "most"), finding),
        flag(step, "notesRideHeight"));
  }

  private static Fastener fastener(JsonNode fastener) {
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
            ? list(fastener, "variants", ProcedureReader::variant)
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

  private static Wheels wheels(JsonNode on) {
    if (on.isMissingNode()) {
      return Wheels.LEFT_AS_THEY_ARE;
    }
    return on.booleanValue() ? Wheels.FITTED : Wheels.REMOVED;
  }

  private static Variant variant(JsonNode variant) {
    return new Variant(
        optional(variant, "marking").map(HeadMarking::new),
        list(variant, "stages", ProcedureReader::stage));
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

  private static Torque torque(JsonNode node, String field) {
    return FileWords.torque(node.get(field), node.get("unit")).orElseThrow();
  }

  private static String text(JsonNode node, String field) {
    return node.get(field).textValue();
  }

  private static Optional<String> optional(JsonNode node, String field) {
    return Optional.ofNullable(node.path(field).textValue());
  }

  private static boolean flag(JsonNode node, String field) {
    return node.path(field).asBoolean(false);
  }

  private static Optional<BigDecimal> number(JsonNode node, String field) {
    return node.has(field) ? Optional.of(node.get(field).decimalValue()) : Optional.empty();
  }

  private static <T> List<T> list(JsonNode node, String field, Function<JsonNode, T> read) {
    List<T> items = new ArrayList<>();
    node.path(field).forEach(item -> items.add(read.apply(item)));
    return items;
  }
}
