package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.port.Fault;

/** Puts every odd value in every place of a good file, and takes every field out. */
class DamagedProcedureTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path GOOD = Path.of("src/test/resources/procedures/small.json");
  private static final List<String> ODD =
      List.of(
          "null",
          "true",
          "-1",
          "0",
          "1",
          "0.5",
          "99999999999",
          "\"\"",
          "\"8.8\"",
          "[]",
          "{}",
          "[[]]",
          "[{}]",
          "[null]",
          "{\"torque\":1}");

  @TempDir private Path folder;

  @Test
  void isLoadedOrReportedWithAPlaceButNeverEscapesAsAnotherError() throws IOException {
    JsonNode good = MAPPER.readTree(GOOD.toFile());
    List<JsonPointer> places = new ArrayList<>();
    collect(good, JsonPointer.empty(), places);
    int reported = 0;
    for (JsonPointer place : places) {
      for (String odd : ODD) {
        reported += reportedWith(replaced(good, place, MAPPER.readTree(odd))) ? 1 : 0;
      }
    }
    assertTrue(reported > places.size() * ODD.size() / 2, "reported " + reported);
  }

  @Test
  void withoutAFieldIsReportedUnlessTheFieldIsFree() throws IOException {
    JsonNode good = MAPPER.readTree(GOOD.toFile());
    List<JsonPointer> places = new ArrayList<>();
    collect(good, JsonPointer.empty(), places);
    List<String> free = new ArrayList<>();
    for (JsonPointer place : places) {
      JsonNode copy = good.deepCopy();
      if (copy.at(place.head()) instanceof ObjectNode parent) {
        parent.remove(place.last().getMatchingProperty());
        if (!reportedWith(copy)) {
          free.add(place.toString());
        }
      }
    }
    assertEquals(List.of("/tools/0/calibrated", "/phases/0/steps/0/notesRideHeight"), free);
  }

  private boolean reportedWith(JsonNode root) throws IOException {
    Path file = Files.writeString(folder.resolve("odd.json"), MAPPER.writeValueAsString(root));
    try {
      ProcedureFile.load(file);
      return false;
    } catch (Fault e) {
      e.findings().forEach(fault -> assertTrue(fault.place().line() > 0, fault.toString()));
      return true;
    }
  }

  private static void collect(JsonNode node, JsonPointer pointer, List<JsonPointer> places) {
    if (node.isObject()) {
      node.fieldNames().forEachRemaining(name -> places.add(pointer.appendProperty(name)));
      node.properties()
          .forEach(p -> collect(p.getValue(), pointer.appendProperty(p.getKey()), places));
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      places.add(pointer.appendIndex(i));
      collect(node.get(i), pointer.appendIndex(i), places);
    }
  }

  private static JsonNode replaced(JsonNode good, JsonPointer place, JsonNode odd) {
    JsonNode copy = good.deepCopy();
    JsonNode parent = copy.at(place.head());
    if (parent instanceof ObjectNode object) {
      object.set(place.last().getMatchingProperty(), odd);
    } else if (parent instanceof ArrayNode array) {
      array.set(place.last().getMatchingIndex(), odd);
    }
    return copy;
  }
}
