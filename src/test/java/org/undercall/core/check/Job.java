package org.undercall.core.check;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;

/**
 * A procedure of a few steps, as text, for the rules that look at more than one of them. What is
 * not said is good: a dry M12 bolt at 70 N·m, to be used again, at any load. Quotes may be single.
 */
final class Job {
  static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  static final String OFF = step("off", "do", "Take the wheel off", "'wheelsOn': false");
  static final String ON = step("on", "do", "Fit the wheel", "'wheelsOn': true");
  static final String RAISED =
      step("up", "do", "Raise the car", "'car': 'raised', 'changesLoad': true");
  static final String LOWERED =
      step("down", "do", "Lower the car", "'car': 'lowered', 'changesLoad': true");
  static final String AGAIN =
      step(
          "again",
          "hand-over",
          "Check the torque of the wheel bolts again",
          "'due': 'after 50 km'");
  static final String WHEEL =
      "'name': 'wheel bolts', 'thread': 'M14x1.5', 'drive': 19, 'count': 5, 'wheel': true, 'order':"
          + " [1, 3, 5, 2, 4], 'stages': [{'torque': 130, 'unit': 'N·m', 'plusMinus': 10}]";

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String FRAME =
      """
      {'title': 'A job', 'vehicle': 'Invented', 'author': 'Test', 'revision': '1',
       'values': 'written for a test', 'cautions': ['Stands carry the car.'],
       'tools': [
         {'id': 'small', 'least': 1, 'most': 30, 'unit': 'N·m'},
         {'id': 'large', 'least': 10, 'most': 210, 'unit': 'N·m'}],
       'phases': []}
      """;
  private static final String FASTENER =
      """
      {'name': 'the bolt', 'thread': 'M12x1.5', 'drive': 18, 'hardware': 'bolt',
       'oneTimeUse': false, 'lubrication': 'dry', 'needs': 'any',
       'stages': [{'torque': 70, 'unit': 'N·m', 'plusMinus': 4}]}
      """;

  private Job() {}

  /** What is found, each as its code and its pointer. */
  static List<String> found(String... phases) throws Fault {
    return findings(phases).stream().map(f -> f.rule().code() + " " + f.pointer()).toList();
  }

  static List<Finding> findings(String... phases) throws Fault {
    return ProcedureCheck.of(procedure("", phases), DAY);
  }

  /** What is found of a frame with other fields, used so often. */
  static List<Finding> findings(String more, Map<String, Integer> uses) throws Fault {
    return ProcedureCheck.of(procedure(more, car(fasten("one", "the bolt", ""))), DAY, uses);
  }

  static Procedure procedure(String more, String... phases) throws Fault {
    ObjectNode root = object(FRAME);
    root.set("phases", object("{'phases': [" + String.join(",", phases) + "]}").get("phases"));
    root.setAll(object("{" + more + "}"));
    return ProcedureFile.of(Path.of("job.json"), root.toString()).procedure();
  }

  static String car(String... steps) {
    return phase("car", steps);
  }

  static String phase(String each, String... steps) {
    return "{'name': 'work', 'each': '" + each + "', 'steps': [" + String.join(",", steps) + "]}";
  }

  static String step(String id, String kind, String title, String more) {
    String rest = more.isEmpty() ? "" : ", " + more;
    return "{'id': '" + id + "', 'kind': '" + kind + "', 'title': '" + title + "'" + rest + "}";
  }

  /** A step that tightens what its title names. */
  static String fasten(String id, String name, String more) {
    return fasten(id, "Tighten " + name, name, more);
  }

  static String fasten(String id, String title, String name, String more) {
    ObjectNode fastener = object(FASTENER).put("name", name);
    ObjectNode fields = object("{" + more + "}");
    if (fields.has("variants")) {
      fastener.remove("stages");
    }
    fastener.setAll(fields);
    return step(id, "fasten", title, "'fastener': " + fastener);
  }

  /** The last torque of a fastener. */
  static String torque(String torque, String plusMinus) {
    return "'stages': [{'torque': " + torque + ", 'unit': 'N·m', 'plusMinus': " + plusMinus + "}]";
  }

  private static ObjectNode object(String text) {
    try {
      return (ObjectNode) MAPPER.readTree(text.replace('\'', '"'));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(text, e);
    }
  }
}
