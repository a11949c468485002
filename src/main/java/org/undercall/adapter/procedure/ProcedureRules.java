package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercall.core.term.Torque;
import org.undercall.text.Shown;

/**
 * Checks what a schema cannot say: rules that hold between fields.
 *
 * <p>A rule looks only at fields that are well formed; the schema reports the others.
 */
final class ProcedureRules {
  private final Faults faults;

  ProcedureRules(Faults faults) {
    this.faults = faults;
  }

  /** Adds a fault for every broken rule. */
  void check(JsonNode root) {
    List<Range> ranges = tools(root.path("tools"));
    FastenerRules fasteners = new FastenerRules(faults, ranges);
    Map<String, String> ids = new HashMap<>();
    boolean tolerance = root.has("rideHeight");
    Levers.checkArm(new Located("/rideHeight/arm", root.path("rideHeight").path("arm")), faults);
    new CornerRules(faults).check(root);
    for (Located phase : items(new Located("/phases", root.path("phases")))) {
      boolean perSide = !phase.node().path("each").asText().equals("car");
      for (Located step : items(phase.at("steps"))) {
        before(step.at("after"), ids.keySet());
        before(step.at("undoes"), ids.keySet());
        once(step.at("id"), ids, ProcedureCode.DUPLICATE_STEP);
        limits(step);
        heights(step, perSide, tolerance);
        witness(step);
        fasteners.check(step.at("fastener"));
      }
    }
  }

  /** A value of the file with its pointer. */
  record Located(String pointer, JsonNode node) {
    Located at(String field) {
      return new Located(pointer + "/" + field, node.path(field));
    }
  }

  /** The range of one tool. */
  record Range(Torque least, Torque most) {
    boolean covers(Torque torque) {
      double value = torque.inNewtonMetres();
      return least.inNewtonMetres() <= value && value <= most.inNewtonMetres();
    }

    @Override
    public String toString() {
      return least.amount().toPlainString() + " to " + most;
    }
  }

  /** The items of a list; none if it is no list. */
  static List<Located> items(Located list) {
    List<Located> items = new ArrayList<>();
    if (list.node().isArray()) {
      list.node().forEach(n -> items.add(new Located(list.pointer() + "/" + items.size(), n)));
    }
    return items;
  }

  private List<Range> tools(JsonNode tools) {
    List<Range> ranges = new ArrayList<>();
    Map<String, String> ids = new HashMap<>();
    for (Located tool : items(new Located("/tools", tools))) {
      once(tool.at("id"), ids, ProcedureCode.DUPLICATE_TOOL);
      JsonNode least = tool.node().path("least");
      JsonNode most = tool.node().path("most");
      if (least.isNumber() && most.isNumber()) {
        if (least.decimalValue().compareTo(most.decimalValue()) >= 0) {
          String expected = "more than the least, " + Shown.value(least);
          faults.value(
              ProcedureCode.TOOL_RANGE, tool.at("most").pointer(), Shown.value(most), expected);
        } else {
          FileWords.torque(least, tool.node().path("unit"))
              .flatMap(
                  l -> FileWords.torque(most, tool.node().path("unit")).map(m -> new Range(l, m)))
              .ifPresent(ranges::add);
        }
      }
    }
    return ranges;
  }

  private void once(Located id, Map<String, String> seen, ProcedureCode code) {
    if (id.node().isTextual()) {
      String before = seen.putIfAbsent(id.node().textValue(), id.pointer());
      if (before != null) {
        String expected = "another id than that of " + faults.named(before);
        faults.value(code, id.pointer(), Shown.value(id.node()), expected);
      }
    }
  }

  /** Every id of a list is that of a step before. */
  private void before(Located list, Set<String> ids) {
    for (Located id : items(list)) {
      if (id.node().isTextual() && !ids.contains(id.node().textValue())) {
        String expected = "the id of a step that stands before this one";
        faults.value(ProcedureCode.NO_STEP_BEFORE, id.pointer(), Shown.value(id.node()), expected);
      }
    }
  }

  private void limits(Located step) {
    JsonNode least = step.node().path("least");
    JsonNode most = step.node().path("most");
    if (least.isNumber() && most.isNumber()) {
      BigDecimal low = least.decimalValue();
      if (low.compareTo(most.decimalValue()) > 0) {
        String expected = "at most the most, " + Shown.value(most);
        String pointer = step.at("least").pointer();
        faults.value(ProcedureCode.LIMITS_CROSSED, pointer, Shown.value(least), expected);
      }
    }
  }

  /** What moves the car or a wheel, or a height that others are held to, counts at once. */
  private void witness(Located step) {
    if (!step.node().path("witness").asBoolean(false)) {
      return;
    }
    boolean moves =
        step.node().has("car")
            || step.node().has("wheelsOn")
            || step.node().path("notesRideHeight").asBoolean(false);
    if (moves) {
      faults.value(
          ProcedureCode.WITNESS_MISPLACED,
          step.at("witness").pointer(),
          Shown.value(step.at("witness").node()),
          "no witness at a step that moves the car or a wheel, or notes the ride height");
    }
  }

  private void heights(Located step, boolean perSide, boolean tolerance) {
    Located note = step.at("notesRideHeight");
    if (!note.node().isBoolean() || !note.node().booleanValue()) {
      return;
    }
    if (!tolerance) {
      String expected = "\"rideHeight\" with its tolerance at the top of the file";
      faults.value(
          ProcedureCode.NO_HEIGHT_TOLERANCE, note.pointer(), "a noted ride height", expected);
    }
    String unit = step.node().path("unit").asText();
    if (!perSide || !unit.equals("mm")) {
      String seen = perSide ? "unit " + Shown.quoted(unit) : "a phase for the car";
      String expected = "a ride height in mm, in a phase for each side or corner";
      faults.value(ProcedureCode.HEIGHT_NOTE_MISPLACED, note.pointer(), seen, expected);
    }
  }
}
