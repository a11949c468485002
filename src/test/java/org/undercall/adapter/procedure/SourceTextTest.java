package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

@DisplayName("A file that is changed where it is written")
class SourceTextTest {
  private static final Path HAND = Path.of("hand.yaml");
  private static final String BY_HAND =
      """
      # a file kept by hand
      title: Kept by hand   # its title
      revision: '1'
      cautions:
      # the first
      - Chock the wheels.
      - {text: Stands., brief: Stands}
      tools:
        -   id: wrench 2
            most: 210.0

      phases:
        # one
        - name: one
          steps:
            - { id: a, title: "A: b" }
        # two
        - name: two
          steps:
            # the step
            - id: fit
              title: >-
                A folded
                title
              brief: brf    # of brief
            # the other
            - id: other
              title: Other
      """;

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("shared/procedures"))) {
      return files.filter(ProcedureFile::named).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  @DisplayName("stays as it is, byte by byte, if nothing is changed")
  void unchanged(Path file) throws Fault, IOException {
    SourceText source = SourceText.read(file);
    assertEquals(Files.readString(file), source.with(source.tree().deepCopy()));
  }

  @ParameterizedTest
  @MethodSource("examples")
  @DisplayName("is the same procedure when it is written anew, as JSON and as YAML, and stays so")
  void anew(Path file) throws Fault {
    SourceText source = SourceText.read(file);
    for (String ending : List.of(".json", ".yaml")) {
      Path other = file.resolveSibling("written-anew" + ending);
      String text = SourceText.fresh(other).with(source.tree());
      SourceText again = SourceText.of(other, text);
      assertTrue(again.holds(source.tree()), text);
      assertEquals(ProcedureFile.load(file).procedure(), ProcedureFile.of(other, text).procedure());
      assertEquals(text, again.with(source.tree().deepCopy()));
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  @DisplayName("differs in one line if one value is changed")
  void oneLine(Path file) throws Fault, IOException {
    SourceText source = SourceText.read(file);
    ObjectNode changed = source.tree().deepCopy();
    changed.put("revision", "changed here");
    assertEquals(1, differing(Files.readString(file), source.with(changed)).size());
  }

  private static List<String> differing(String one, String other) {
    List<String> before = one.lines().toList();
    List<String> after = other.lines().toList();
    List<String> differing = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      if (!before.get(i).equals(after.get(i))) {
        differing.add(after.get(i));
      }
    }
    return differing;
  }

  @Test
  @DisplayName("keeps the blocks that it includes, and what it gives them")
  void includes() throws Fault {
    Path file = Path.of("shared/procedures/trailing-arm-from-blocks.json");
    SourceText source = SourceText.read(file);
    ObjectNode changed = source.tree().deepCopy();
    ((ObjectNode) changed.at("/phases/3/steps/0/with")).put("drive", 19);
    String text = source.with(changed);
    assertEquals(List.of("            \"drive\": 19,"), differing(source.read(), text));
  }

  @Test
  @DisplayName("of YAML keeps its comments, its blanks and the way its texts are written")
  void byHand() throws Fault {
    SourceText source = SourceText.of(HAND, BY_HAND);
    ObjectNode changed = source.tree().deepCopy();
    ((ObjectNode) changed.at("/phases/1/steps/0")).put("brief", "fit: it");
    ((ArrayNode) changed.get("cautions")).add("One more");
    ((ObjectNode) changed.at("/tools/0")).put("unit", "N·m");
    String text = source.with(changed);
    assertEquals(
        BY_HAND
            .replace("brief: brf ", "brief: \"fit: it\" ")
            .replace("brief: Stands}\n", "brief: Stands}\n- One more\n")
            .replace("most: 210.0\n", "most: 210.0\n      unit: N·m\n"),
        text);
    assertEquals(List.of(), source.lostIn(text));
  }

  @Test
  @DisplayName("of YAML names the comments that are lost with what is removed")
  void lost() throws Fault {
    SourceText source = SourceText.of(HAND, BY_HAND);
    ObjectNode changed = source.tree().deepCopy();
    ((ArrayNode) changed.get("phases")).remove(0);
    String text = source.with(changed);
    assertTrue(text.contains("brief: brf    # of brief"), text);
    assertTrue(SourceText.of(HAND, text).holds(changed));
    assertEquals(List.of("two"), source.lostIn(text));
  }

  @Test
  @DisplayName("keeps steps that are moved as they are written")
  void moved() throws Fault {
    String json = "{\n \"steps\":[ {\"id\":\"a\",   \"n\":1.50},\n  {\"id\": \"b\"} ]}\n";
    SourceText source = SourceText.of(Path.of("own.json"), json);
    ObjectNode changed = source.tree().deepCopy();
    ArrayNode steps = (ArrayNode) changed.get("steps");
    steps.add(steps.remove(0));
    assertEquals(
        "{\n \"steps\":[ {\"id\": \"b\"},\n  {\"id\":\"a\",   \"n\":1.50} ]}\n",
        source.with(changed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\n"})
  @DisplayName("keeps its ends of lines, and its byte order mark")
  void lines(String eol) throws Fault {
    String json = "\uFEFF{" + eol + "\t\"a\" :1," + eol + "\t\"b\": [ ]" + eol + "}" + eol;
    SourceText source = SourceText.of(Path.of("own.json"), json);
    ObjectNode changed = source.tree().deepCopy();
    changed.put("c", "new");
    String text = source.with(changed);
    assertTrue(text.startsWith("\uFEFF{" + eol + "\t\"a\" :1," + eol), text);
    assertEquals(eol.equals("\r\n"), text.contains("\r\n"));
    assertEquals("new", SourceText.of(Path.of("own.json"), text).tree().path("c").asText());
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes", "12", "a: b", "# no", "- no", "", " x", "N·m", "é", "a\"b", "~"})
  @DisplayName("writes any text so that it is read as that text")
  void texts(String text) throws Fault {
    for (String name : List.of("own.json", "own.yaml")) {
      Path file = Path.of(name);
      JsonNode tree = LocatedJson.NODES.objectNode().put("t", text).set("l", list(text));
      assertTrue(SourceText.of(file, SourceText.fresh(file).with(tree)).holds(tree), name);
    }
  }

  private static ArrayNode list(String text) {
    return LocatedJson.NODES
        .arrayNode()
        .add(text)
        .add(LocatedJson.NODES.objectNode().put("a", text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "{\"a\":1,\"a\":2}", "{\"a\":", "{\"takes\":{}}", "{\"a\":1e5}"})
  @DisplayName("is refused if something of it would be lost")
  void refused(String text) {
    assertThrows(Fault.class, () -> SourceText.of(Path.of("own.json"), text));
  }
}
