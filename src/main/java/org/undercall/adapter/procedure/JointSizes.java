package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.adapter.procedure.ProcedureRules.Located;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Sizes;
import org.undercall.text.Shown;

/** Reads and checks the sizes of a joint and its friction. */
final class JointSizes {
  private JointSizes() {}

  static Sizes read(JsonNode fastener) {
    return new Sizes(
        present(fastener.path("clamped")).map(JointSizes::clamped),
        present(fastener.path("seat")).map(JointSizes::ring),
        present(fastener.path("friction")).map(JointSizes::friction));
  }

  private static Optional<JsonNode> present(JsonNode node) {
    return Optional.of(node).filter(JsonNode::isObject);
  }

  private static Sizes.Clamped clamped(JsonNode node) {
    return new Sizes.Clamped(
        node.get("length").decimalValue(),
        number(node, "shank"),
        number(node, "outer"),
        number(node, "inner"),
        node.has("material")
            ? FileWords.constant(Fastener.Joint.Material.class, node.get("material").textValue())
            : Fastener.Joint.Material.STEEL);
  }

  private static Sizes.Ring ring(JsonNode node) {
    return new Sizes.Ring(
        FileWords.constant(Sizes.Shape.class, node.get("shape").textValue()),
        number(node, "outer"),
        number(node, "inner"),
        number(node, "angle"));
  }

  private static Sizes.FrictionKnown friction(JsonNode node) {
    return node.has("least")
        ? new Sizes.FrictionKnown(span(node), span(node))
        : new Sizes.FrictionKnown(span(node.get("thread")), span(node.get("seat")));
  }

  private static Sizes.Span span(JsonNode node) {
    return new Sizes.Span(node.get("least").decimalValue(), node.get("most").decimalValue());
  }

  private static Optional<BigDecimal> number(JsonNode node, String field) {
    return node.has(field) ? Optional.of(node.get(field).decimalValue()) : Optional.empty();
  }

  /** Adds a fault for sizes that contradict each other. */
  static void check(Located fastener, Faults faults) {
    Located clamped = fastener.at("clamped");
    Located seat = fastener.at("seat");
    Located friction = fastener.at("friction");
    rising(clamped, "shank", "length", true, faults);
    rising(clamped, "inner", "outer", false, faults);
    rising(seat, "inner", "outer", false, faults);
    rising(friction, "least", "most", true, faults);
    rising(friction.at("thread"), "least", "most", true, faults);
    rising(friction.at("seat"), "least", "most", true, faults);
    boolean cone = seat.node().path("shape").asText().equals("cone");
    if (cone != seat.node().has("angle") && seat.node().has("shape")) {
      String found = cone ? "a cone without an angle" : "an angle of what is no cone";
      faults.value(ProcedureCode.SIZES_CROSSED, seat.pointer(), found, "a cone with its angle");
    }
  }

  private static void rising(
      Located in, String small, String large, boolean mayEqual, Faults faults) {
    JsonNode less = in.node().path(small);
    JsonNode more = in.node().path(large);
    if (less.isNumber() && more.isNumber()) {
      int order = less.decimalValue().compareTo(more.decimalValue());
      if (order > 0 || (order == 0 && !mayEqual)) {
        String expected = (mayEqual ? "at most the " : "less than the ") + large + ", ";
        faults.value(
            ProcedureCode.SIZES_CROSSED,
            in.at(small).pointer(),
            Shown.value(less),
            expected + Shown.value(more));
      }
    }
  }
}
