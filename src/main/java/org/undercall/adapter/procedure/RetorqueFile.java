package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercall.core.procedure.Again;
import org.undercall.port.Fault;

/**
 * The short procedure of a visit: the fasteners of another procedure that are to be tightened
 * again, each with its last torque as that procedure has it, and whether one of them moved.
 */
public final class RetorqueFile {
  private static final List<String> HEAD =
      List.of(
          "$schema",
          "title",
          "vehicle",
          "author",
          "revision",
          "values",
          "valuesBrief",
          "cautions",
          "rideHeight",
          "loadHoldsMinutes",
          "tools");
  private static final Set<String> STEP = Set.of("id", "kind", "cautions", "corner");

  /** What is kept of a fastener that stays where it is and is only tightened on. */
  private static final Set<String> FASTENER =
      Set.of(
          "name",
          "thread",
          "drive",
          "driveUnit",
          "hardware",
          "lubrication",
          "needs",
          "count",
          "order",
          "wheel",
          "leftHand",
          "counterHold");

  private static final String TITLE = "title";
  private static final String STAGES = "stages";
  private static final int LONGEST = 300;
  private static final int LONGEST_ID = 60;

  private RetorqueFile() {}

  /**
   * The procedure of a visit.
   *
   * @param kept the procedure that was worked on
   * @param places the fasteners to tighten again
   * @param markings the head markings that were read at each step, by its id; none where it has no
   *     variants
   * @throws Fault if it is not one that can be used, which no sound procedure causes
   */
  public static LoadedProcedure of(
      LoadedProcedure kept, List<Again.Place> places, Map<String, Set<String>> markings)
      throws Fault {
    String name = String.valueOf(kept.file().getFileName());
    Faults faults = new Faults(name);
    JsonNode root = LocatedJson.read(name, FileText.of(kept.wholeBytes(), faults).text(), faults);
    ObjectNode visit = LocatedJson.NODES.objectNode();
    for (String field : HEAD) {
      if (root.has(field)) {
        visit.set(field, root.get(field));
      }
    }
    visit.put(TITLE, cut("Re-torque: " + root.get(TITLE).textValue(), LONGEST));
    ArrayNode phases = visit.putArray("phases");
    for (JsonNode phase : root.get("phases")) {
      ArrayNode steps = LocatedJson.NODES.arrayNode();
      for (JsonNode step : phase.get("steps")) {
        String id = step.path("id").asText();
        if (places.stream().anyMatch(place -> place.step().head().id().equals(id))) {
          steps.add(tightened(step, markings.getOrDefault(id, Set.of())));
          steps.add(stayed(step));
        }
      }
      if (!steps.isEmpty()) {
        ObjectNode again = phases.addObject();
        again.put("name", "re-torque").set("each", phase.get("each"));
        again.set("steps", steps);
      }
    }
    return ProcedureFile.of(Path.of("retorque.json"), Assembled.written(visit));
  }

  private static ObjectNode tightened(JsonNode step, Set<String> markings) {
    ObjectNode again = LocatedJson.NODES.objectNode();
    JsonNode fastener = step.get("fastener");
    step.properties().stream()
        .filter(field -> STEP.contains(field.getKey()))
        .forEach(field -> again.set(field.getKey(), field.getValue()));
    again.put(TITLE, cut("Re-torque the " + fastener.get("name").textValue(), LONGEST));
    ObjectNode kept = again.putObject("fastener");
    fastener.properties().stream()
        .filter(field -> FASTENER.contains(field.getKey()))
        .forEach(field -> kept.set(field.getKey(), field.getValue()));
    kept.put("oneTimeUse", false);
    if (fastener.has(STAGES)) {
      kept.set(STAGES, last(fastener));
      return again;
    }
    ArrayNode variants = LocatedJson.NODES.arrayNode();
    for (JsonNode variant : fastener.get("variants")) {
      if (markings.contains(variant.path("marking").asText())) {
        ObjectNode one = variants.addObject();
        one.set("marking", variant.get("marking"));
        one.set(STAGES, last(variant));
      }
    }
    if (variants.size() == 1) {
      kept.set(STAGES, variants.get(0).get(STAGES));
    } else {
      kept.set("variants", variants);
    }
    return again;
  }

  /**
   * The last torque, as a check pass. One over an adaptor or in a range stays as it is, since a
   * check pass has neither.
   */
  private static ArrayNode last(JsonNode of) {
    JsonNode stages = of.get(STAGES);
    ObjectNode last = stages.get(stages.size() - 1).deepCopy();
    if (!last.has("adaptor") && !last.has("upTo")) {
      last.put("checkPass", true);
    }
    return LocatedJson.NODES.arrayNode().add(last);
  }

  private static ObjectNode stayed(JsonNode step) {
    String id = step.get("id").textValue();
    String name = step.get("fastener").get("name").textValue();
    boolean several = step.get("fastener").path("count").asInt(1) > 1;
    ObjectNode check = LocatedJson.NODES.objectNode();
    check.put("id", cut(id, LONGEST_ID - 6).replaceAll("-+$", "") + "-stayed");
    check.put("kind", "do");
    check.put(TITLE, cut("See whether one of the " + name + " turned before the click", LONGEST));
    if (!several) {
      check.put(TITLE, cut("See whether the " + name + " turned before the click", LONGEST));
    }
    check.put("brief", "movement");
    check.put("check", several ? "Did all stay put?" : "Did it stay put?");
    if (step.has("corner")) {
      check.set("corner", step.get("corner"));
    }
    return check;
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most).strip();
  }
}
