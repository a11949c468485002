package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.port.Fault;

@DisplayName("The file of a desk")
class DeskFileTest {
  private static final Path SHARED = Path.of("shared/procedures");

  @TempDir Path folder;
  private Path file;
  private DeskFile desk;

  @BeforeEach
  void copy() throws IOException {
    file = folder.resolve("own.json");
    Files.copy(SHARED.resolve("demo-lateral-link.json"), file);
    desk = new DeskFile(file, ServedDesk.DAY);
  }

  private ObjectNode asked() throws Fault {
    return asked(desk);
  }

  private static ObjectNode asked(DeskFile of) throws Fault {
    JsonNode read = of.read();
    ObjectNode asked = JsonNodeFactory.instance.objectNode();
    asked.put("base", read.path("base").asText()).set("tree", read.path("tree").deepCopy());
    return asked;
  }

  private static ObjectNode tree(ObjectNode asked) {
    return (ObjectNode) asked.get("tree");
  }

  private static String code(Fault fault) {
    return fault.code().id();
  }

  @Test
  @DisplayName("is saved with what was changed, and read as it was written")
  void saved() throws Exception {
    ObjectNode asked = asked();
    tree(asked).put("title", "Changed");
    JsonNode answer = desk.save(asked);
    assertFalse(answer.path("draft").asBoolean());
    assertEquals("Changed", ProcedureFile.load(file).procedure().about().title());
    assertEquals(answer.path("base"), desk.read().path("base"));
  }

  @Test
  @DisplayName("of two pages keeps what the first saved; the second is told, and saves beside it")
  void twoPages() throws Exception {
    ObjectNode first = asked();
    ObjectNode second = asked();
    tree(first).put("title", "First");
    tree(second).put("title", "Second");
    desk.save(first);
    assertEquals("DSK-002", code(assertThrows(Fault.class, () -> desk.save(second))));
    assertEquals("First", ProcedureFile.load(file).procedure().about().title());
    assertEquals("own-2.json", desk.beside(second).path("name").asText());
    assertEquals(
        "Second", ProcedureFile.load(folder.resolve("own-2.json")).procedure().about().title());
    assertEquals("own-3.json", desk.beside(second).path("name").asText());
  }

  @Test
  @DisplayName("is not written over if it was changed, removed or made into something else")
  void changed() throws Exception {
    ObjectNode asked = asked();
    Files.writeString(file, "no JSON any more");
    assertEquals("DSK-002", code(assertThrows(Fault.class, () -> desk.save(asked))));
    assertEquals("no JSON any more", Files.readString(file));
    assertEquals("own-2.json", desk.beside(asked).path("name").asText());
    Files.delete(file);
    assertEquals("DSK-002", code(assertThrows(Fault.class, () -> desk.save(asked))));
    assertFalse(Files.exists(file));
  }

  @Test
  @DisplayName("that was new is not written over a file that came meanwhile")
  void came() throws Exception {
    DeskFile fresh = new DeskFile(folder.resolve("new.yaml"), ServedDesk.DAY);
    ObjectNode asked = asked(fresh);
    asked.put("draft", true);
    Files.writeString(folder.resolve("new.yaml"), "title: mine\n");
    assertEquals("DSK-002", code(assertThrows(Fault.class, () -> fresh.save(asked))));
    assertEquals("title: mine\n", Files.readString(folder.resolve("new.yaml")));
  }

  @Test
  @DisplayName("with a fault is saved as a draft only, which can be gone on with")
  void draft() throws Exception {
    ObjectNode asked = asked();
    ((ObjectNode) tree(asked).at("/tools/0")).put("least", "70,5");
    assertEquals("DSK-003", code(assertThrows(Fault.class, () -> desk.save(asked))));
    asked.put("draft", true);
    assertTrue(desk.save(asked).path("draft").asBoolean());
    assertThrows(Fault.class, () -> ProcedureFile.load(file));
    assertEquals("70,5", desk.read().at("/tree/tools/0/least").asText());
  }

  @Test
  @DisplayName("that could not be opened again is not saved, not as a draft either")
  void unreadable() throws Exception {
    ObjectNode asked = asked().put("draft", true);
    tree(asked).put("title", "a bell \u0007");
    String before = Files.readString(file);
    assertEquals("PRO-017", code(assertThrows(Fault.class, () -> desk.save(asked))));
    assertEquals(before, Files.readString(file));
  }

  @Test
  @DisplayName("of YAML loses a comment only if that is said")
  void comments() throws Exception {
    Path yaml = folder.resolve("own.yaml");
    Files.writeString(yaml, "title: a # of a\n# of b\nvehicle: b\n");
    DeskFile hand = new DeskFile(yaml, ServedDesk.DAY);
    ObjectNode asked = asked(hand).put("draft", true);
    tree(asked).put("title", "c");
    hand.save(asked);
    assertEquals("title: c # of a\n# of b\nvehicle: b\n", Files.readString(yaml));
    ObjectNode next = asked(hand).put("draft", true);
    tree(next).remove("vehicle");
    Fault fault = assertThrows(Fault.class, () -> hand.save(next));
    assertEquals("DSK-004", code(fault));
    next.put("comments", true);
    hand.save(next);
    assertEquals("title: c\n", Files.readString(yaml).replaceAll(" +#.*", ""));
  }

  @Test
  @DisplayName("is left as it is where the disk refuses, and nothing half written stays")
  void refused() throws Exception {
    ObjectNode asked = asked();
    tree(asked).put("title", "Changed");
    String before = Files.readString(file);
    Files.createDirectory(folder.resolve("own.json.part"));
    assertEquals("TAB-030", code(assertThrows(Fault.class, () -> desk.save(asked))));
    assertEquals(before, Files.readString(file));
    Files.delete(folder.resolve("own.json.part"));
    desk.save(asked);
    assertEquals("Changed", ProcedureFile.load(file).procedure().about().title());
  }

  @Test
  @DisplayName("is judged as check and the reader judge it, each finding at its field")
  void judged() throws Exception {
    ObjectNode asked = asked();
    JsonNode good = desk.judged(asked).json();
    assertTrue(good.path("usable").asBoolean());
    assertTrue(good.path("walk").size() > 20);
    ObjectNode fastener = (ObjectNode) find(tree(asked), "joint-nut").get("fastener");
    fastener.put("oneTimeUse", false).put("hardware", "self-locking-nut");
    fastener.remove("renew");
    assertTrue(codes(asked).contains("CHK-041"), codes(asked).toString());
    fastener.remove("thread");
    fastener.put("drive", "18 mm");
    JsonNode findings = desk.judged(asked).json().path("findings");
    List<String> places = new ArrayList<>();
    findings.forEach(f -> places.add(f.path("code").asText() + f.path("pointer").asText()));
    assertTrue(
        places.stream().anyMatch(p -> p.matches("PRO-009/phases/.*/fastener/thread")),
        places.toString());
    assertTrue(
        places.stream().anyMatch(p -> p.matches("PRO-010/phases/.*/fastener/drive")),
        places.toString());
  }

  private List<String> codes(ObjectNode asked) throws Fault {
    List<String> codes = new ArrayList<>();
    desk.judged(asked).json().path("findings").forEach(f -> codes.add(f.path("code").asText()));
    return codes;
  }

  private static JsonNode find(JsonNode tree, String id) {
    for (JsonNode phase : tree.path("phases")) {
      for (JsonNode step : phase.path("steps")) {
        if (step.path("id").asText().equals(id)) {
          return step;
        }
      }
    }
    throw new IllegalStateException(id);
  }

  @Test
  @DisplayName("with blocks stays with blocks: their walk and their findings stand at the include")
  void blocks() throws Exception {
    Path whole = folder.resolve("blocks-own.json");
    Files.copy(SHARED.resolve("trailing-arm-from-blocks.json"), whole);
    Files.createDirectory(folder.resolve("blocks"));
    try (var all = Files.list(SHARED.resolve("blocks"))) {
      for (Path block : all.toList()) {
        Files.copy(block, folder.resolve("blocks").resolve(block.getFileName()));
      }
    }
    DeskFile own = new DeskFile(whole, ServedDesk.DAY);
    assertTrue(own.read().path("blocks").size() >= 19);
    ObjectNode asked = asked(own);
    List<String> at = new ArrayList<>();
    JsonNode told = own.judged(asked).json();
    told.path("walk").forEach(line -> at.add(line.path("id").asText() + line.path("at").asText()));
    assertTrue(at.contains("arm-bush-bolt/phases/3/steps/0"), at.toString());
    assertTrue(at.contains("wheel-off/phases/2/steps/0"), at.toString());
    assertTrue(at.stream().anyMatch(a -> a.endsWith("/phases/1")), at.toString());
    ((ObjectNode) tree(asked).at("/phases/3/steps/0/with")).remove("thread");
    JsonNode lacks = own.judged(asked).json().path("findings").path(0);
    assertEquals("/phases/3/steps/0/with/thread", lacks.path("pointer").asText());
    ((ObjectNode) tree(asked).at("/phases/3/steps/0/with")).put("thread", "M12x1.5");
    ((ArrayNode) tree(asked).at("/phases/2/steps")).remove(0);
    own.save(asked);
    String text = Files.readString(whole);
    assertTrue(text.contains("\"include\": \"blocks/bonded-bush.yaml\""), text);
    assertFalse(text.contains("A bonded bush tightened at droop"), text);
  }

  @Test
  @DisplayName("that is a link stays one: what it leads to is written")
  void link() throws Exception {
    Path link = folder.resolve("link.json");
    try {
      Files.createSymbolicLink(link, file);
    } catch (IOException | UnsupportedOperationException e) {
      return; // No links here.
    }
    DeskFile linked = new DeskFile(link, ServedDesk.DAY);
    ObjectNode asked = asked(linked);
    tree(asked).put("title", "Changed");
    linked.save(asked);
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("Changed", ProcedureFile.load(file).procedure().about().title());
  }
}
