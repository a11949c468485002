package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.log.Coded;
import org.undercall.port.Fault;
import org.undercall.text.Yaml;

@DisplayName("The schemas for editors")
class EditorSchemaTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path FILES = Path.of("src/test/resources/procedures");
  private static final List<String> ODD =
      List.of("null", "true", "-1", "\"\"", "[]", "{}", "{\"given\": \"stages\"}", "[{}]");

  static JsonNode tree(Path file) throws IOException {
    ObjectMapper mapper = Yaml.named(file.toString()) ? new YAMLMapper() : MAPPER;
    return mapper.readTree(file.toFile());
  }

  private static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(ProcedureFile::named).filter(Files::isRegularFile).sorted().toList();
    }
  }

  static Stream<Path> procedures() throws IOException {
    return Stream.concat(in(Path.of("shared/procedures")).stream(), in(FILES).stream());
  }

  static Stream<Path> blocks() throws IOException {
    return Stream.concat(
        in(Path.of("shared/procedures/blocks")).stream(), in(FILES.resolve("blocks")).stream());
  }

  @Test
  @DisplayName("are made from those of the program and not stale")
  void fresh() throws IOException {
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.writeString(EditorSchema.file("procedure"), EditorSchema.procedure());
      Files.writeString(EditorSchema.file("block"), EditorSchema.block());
    }
    assertEquals(EditorSchema.procedure(), Files.readString(EditorSchema.file("procedure")));
    assertEquals(EditorSchema.block(), Files.readString(EditorSchema.file("block")));
  }

  @ParameterizedTest
  @MethodSource("procedures")
  @DisplayName("take every procedure that the program takes, as it is written")
  void goodProcedures(Path file) throws Exception {
    assertTrue(ProcedureFile.load(file).procedure().phases().size() > 0);
    assertEquals(List.of(), new EditorSchema("procedure").faults(tree(file)));
  }

  @ParameterizedTest
  @MethodSource("procedures")
  @DisplayName("take every procedure as it is assembled")
  void assembled(Path file) throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(file);
    ObjectMapper mapper = Yaml.named(loaded.wholeName()) ? new YAMLMapper() : MAPPER;
    JsonNode whole = mapper.readTree(loaded.wholeBytes());
    assertEquals(List.of(), new EditorSchema("procedure").faults(whole));
  }

  @ParameterizedTest
  @MethodSource("blocks")
  @DisplayName("take every block, and none of them as a procedure")
  void goodBlocks(Path file) throws Exception {
    assertEquals(List.of(), new EditorSchema("block").faults(tree(file)));
    assertFalse(new EditorSchema("procedure").faults(tree(file)).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "include-up.json",
        "ids-form.json",
        "given-name.json",
        "include-field.json",
        "include-number.json",
        "with-list.json",
        "given-list.json",
        "reference-number.json",
        "block-alone.json",
        "unknown-field.json",
        "wrong-type.json",
        "torque-unit.json",
        "step-id.json",
        "no-steps.json"
      })
  @DisplayName("refuse what can be seen in one file")
  void bad(String name) throws Exception {
    assertFalse(new EditorSchema("procedure").faults(tree(FILES.resolve("bad/" + name))).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"both.json", "no-values.json", "thread.json"})
  @DisplayName("refuse blocks that the program refuses")
  void badBlocks(String name) throws Exception {
    Path file = FILES.resolve("bad/blocks").resolve(name);
    assertFalse(new EditorSchema("block").faults(tree(file)).isEmpty());
  }

  @Test
  @DisplayName("take whatever the program takes of a procedure with odd values in every place")
  void oddValues(@TempDir Path folder) throws Exception {
    Blocks.copy(FILES.resolve("blocks"), folder.resolve("blocks"));
    JsonNode good = tree(FILES.resolve("with-blocks.json"));
    List<JsonPointer> places = new ArrayList<>();
    collect(good, JsonPointer.empty(), places);
    EditorSchema schema = new EditorSchema("procedure");
    int taken = 0;
    for (JsonPointer place : places) {
      for (String odd : ODD) {
        JsonNode changed = replaced(good, place, MAPPER.readTree(odd));
        if (isTaken(folder.resolve("odd.json"), changed)) {
          assertEquals(List.of(), schema.faults(changed), place + " as " + odd);
          taken++;
        }
      }
    }
    assertTrue(taken > 0 && taken < places.size() * ODD.size() / 2, taken + " taken");
  }

  private static boolean isTaken(Path file, JsonNode root) throws IOException {
    Files.writeString(file, MAPPER.writeValueAsString(root));
    try {
      return !ProcedureFile.load(file).sha256().isEmpty();
    } catch (Fault e) {
      e.findings().forEach(fault -> Coded.requireCode("PRO", fault.toString()));
      return false;
    }
  }

  private static void collect(JsonNode node, JsonPointer pointer, List<JsonPointer> places) {
    node.properties()
        .forEach(
            field -> {
              places.add(pointer.appendProperty(field.getKey()));
              collect(field.getValue(), pointer.appendProperty(field.getKey()), places);
            });
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
