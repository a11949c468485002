package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.port.Fault;

/** Puts odd but permitted values in every field of a good file and checks the procedure. */
class OddProcedureCheckTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path GOOD = Path.of("src/test/resources/procedures/check/good.json");
  private static final List<String> ODD =
      List.of(
          "true",
          "0.0001",
          "1",
          "32",
          "3000",
          "[]",
          "\"any\"",
          "\"left\"",
          "\"M99x9\"",
          "\"05\"",
          "\"M4x0.5\"",
          "\"-\"",
          "\"bolt\"",
          "[{\"torque\":3000,\"unit\":\"Nm\",\"plusMinus\":0}]",
          "[{\"marking\":\"9.8\",\"stages\":[{\"torque\":41,\"unit\":\"Nm\",\"plusMinus\":0},"
              + "{\"angle\":720,\"plusMinus\":0}]}]");

  @TempDir private Path folder;
  private int checked;

  @Test
  void givesFindingsWithAPlaceAndNeverAnError() throws Exception {
    JsonNode good = MAPPER.readTree(GOOD.toFile());
    everyField(good, good);
    assertTrue(checked > 100, "checked " + checked);
  }

  private void everyField(JsonNode root, JsonNode node) throws Exception {
    if (node instanceof ObjectNode object) {
      for (String name : List.copyOf(object.properties().stream().map(p -> p.getKey()).toList())) {
        JsonNode before = object.get(name);
        for (String odd : ODD) {
          object.set(name, MAPPER.readTree(odd));
          check(root);
        }
        object.set(name, before);
      }
    }
    for (JsonNode child : node) {
      everyField(root, child);
    }
  }

  private void check(JsonNode root) throws Exception {
    Path file = Files.writeString(folder.resolve("odd.json"), MAPPER.writeValueAsString(root));
    LoadedProcedure loaded;
    try {
      loaded = ProcedureFile.load(file);
    } catch (Fault e) {
      return;
    }
    checked++;
    for (Finding finding : ProcedureCheck.of(loaded.procedure(), LocalDate.of(2026, 6, 1))) {
      Fault.Place place = loaded.places().of(finding.pointer());
      assertTrue(place.line() > 0 && !place.pointer().isEmpty(), finding.toString());
    }
  }
}
