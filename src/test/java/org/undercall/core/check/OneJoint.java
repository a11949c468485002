package org.undercall.core.check;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;

/**
 * A procedure that tightens one fastener, from a line of a table.
 *
 * <p>Stages are written so: {@code 65±3 + 90°±5}, a unit after the tolerance if it is not N·m,
 * {@code 25..75} for a range, {@code back 90°±5} for a back-off, in braces an angle that is meant
 * to reach yield, in brackets one that must not; {@code /} between the variants. What is not said
 * is good: a bolt as delivered, to be used again, at any load. A null takes a field away.
 */
final class OneJoint {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final Pattern TORQUE =
      Pattern.compile("([0-9.]+)±([0-9.]+)(?: (lbf·ft|lbf·in|N·m))?");
  private static final Pattern RANGE = Pattern.compile("([0-9.]+)\\.\\.([0-9.]+)");
  private static final Pattern ANGLE =
      Pattern.compile("(back )?[{\\[]?([0-9.]+)°±([0-9.]+)[}\\]]?");
  private static final Map<String, Integer> DRIVES =
      Map.of(
          "6", 10, "8", 13, "10", 16, "12", 18, "14", 21, "16", 24, "18", 27, "20", 30, "22", 32,
          "24", 36);

  private OneJoint() {}

  /** What is found, with a hand-over for the wheels so that they need no other. */
  static List<Finding> findings(String thread, String classes, String stages, String more)
      throws Fault {
    return ProcedureCheck.of(procedure(thread, classes, stages, more), DAY);
  }

  static Procedure procedure(String thread, String classes, String stages, String more)
      throws Fault {
    ObjectNode root = object(FRAME);
    ObjectNode fastener = object("{" + (more == null ? "" : more) + "}");
    fastener.properties().removeIf(field -> field.getValue().isNull());
    JsonNode band = fastener.remove("finalTorque");
    fasten(fastener, fastener.has("thread") ? fastener.get("thread").asText() : thread);
    List<String> markings = classes == null ? List.of() : List.of(classes.split("/", -1));
    List<String> each = List.of(stages.split(" / ", -1));
    ArrayNode variants = fastener.putArray("variants");
    for (int i = 0; i < each.size(); i++) {
      ObjectNode variant = variants.addObject();
      if (!markings.isEmpty()) {
        variant.put("marking", markings.get(i));
      }
      stages(variant.putArray("stages"), each.get(i), band);
    }
    ((ObjectNode) root.at("/phases/0/steps/0")).set("fastener", fastener);
    return ProcedureFile.of(Path.of("one.json"), root.toString()).procedure();
  }

  private static final String FRAME =
      """
      {'title': 'One joint', 'vehicle': 'Invented', 'author': 'Test', 'revision': '1',
       'values': 'written for a test', 'cautions': ['Stands carry the car.'],
       'tools': [
         {'id': 'small', 'least': 1, 'most': 30, 'unit': 'N·m'},
         {'id': 'middle', 'least': 10, 'most': 210, 'unit': 'N·m'},
         {'id': 'large', 'least': 150, 'most': 1000, 'unit': 'N·m'}],
       'phases': [{'name': 'tighten', 'each': 'car', 'steps': [
         {'id': 'one', 'kind': 'fasten', 'title': 'Tighten it'},
         {'id': 'again', 'kind': 'hand-over', 'title': 'Check the torque of the wheels again',
          'due': 'after 50 km'}]}]}
      """;

  private static void fasten(ObjectNode fastener, String thread) {
    put(fastener, "name", "the fastener");
    fastener.put("thread", thread);
    Matcher size = Pattern.compile("M([0-9]+)x.*").matcher(thread);
    if (!fastener.has("drive")) {
      fastener.put("drive", size.matches() ? DRIVES.getOrDefault(size.group(1), 16) : 18);
    }
    put(fastener, "hardware", "bolt");
    put(fastener, "lubrication", "as-delivered");
    put(fastener, "needs", "any");
    if (!fastener.has("oneTimeUse")) {
      fastener.put("oneTimeUse", false);
    }
  }

  private static void put(ObjectNode node, String field, String value) {
    if (!node.has(field)) {
      node.put(field, value);
    }
  }

  private static void stages(ArrayNode list, String stages, JsonNode band) {
    List<ObjectNode> made = new ArrayList<>();
    for (String text : stages.strip().split(" \\+ ", -1)) {
      ObjectNode stage = list.addObject();
      made.add(stage);
      Matcher torque = TORQUE.matcher(text);
      Matcher range = RANGE.matcher(text);
      Matcher angle = ANGLE.matcher(text);
      if (torque.matches()) {
        stage.put("torque", new BigDecimal(torque.group(1)));
        stage.put("plusMinus", new BigDecimal(torque.group(2)));
        stage.put("unit", torque.group(3) == null ? "N·m" : torque.group(3));
      } else if (range.matches()) {
        stage.put("torque", new BigDecimal(range.group(1)));
        stage.put("upTo", new BigDecimal(range.group(2)));
        stage.put("unit", "N·m");
      } else if (angle.matches()) {
        stage.put(angle.group(1) == null ? "angle" : "backOff", new BigDecimal(angle.group(2)));
        stage.put("plusMinus", new BigDecimal(angle.group(3)));
        if (text.startsWith("{") || text.startsWith("[")) {
          stage.put("beyondYield", text.startsWith("{"));
        }
      } else {
        throw new IllegalArgumentException("no stage: " + text);
      }
    }
    if (band != null) {
      ObjectNode last = made.get(made.size() - 1).putObject("finalTorque");
      last.set("least", band.get(0));
      last.set("most", band.get(1));
      last.put("unit", "N·m");
    }
  }

  private static ObjectNode object(String text) {
    try {
      return (ObjectNode) MAPPER.readTree(text.replace('\'', '"'));
    } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
      throw new IllegalArgumentException(text, e);
    }
  }
}
