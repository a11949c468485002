package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
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
      case "fasten" -> new Step.Fasten(head, FastenerReader.fastener(step.get("fastener")));
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

  private static Wheels wheels(JsonNode on) {
    if (on.isMissingNode()) {
      return Wheels.LEFT_AS_THEY_ARE;
    }
    return on.booleanValue() ? Wheels.FITTED : Wheels.REMOVED;
  }

  static Torque torque(JsonNode node, String field) {
    return FileWords.torque(node.get(field), node.get("unit")).orElseThrow();
  }

  static String text(JsonNode node, String field) {
    return node.get(field).textValue();
  }

  static Optional<String> optional(JsonNode node, String field) {
    return Optional.ofNullable(node.path(field).textValue());
  }

  static boolean flag(JsonNode node, String field) {
    return node.path(field).asBoolean(false);
  }

  static Optional<BigDecimal> number(JsonNode node, String field) {
    return node.has(field) ? Optional.of(node.get(field).decimalValue()) : Optional.empty();
  }

  static <T> List<T> list(JsonNode node, String field, Function<JsonNode, T> read) {
    List<T> items = new ArrayList<>();
    node.path(field).forEach(item -> items.add(read.apply(item)));
    return items;
  }
}
