package org.undercall.core.difference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;

@DisplayName("The difference between two procedures")
class DifferencesTest {
  /** So many changes of one field are compared in each example, so that the test stays short. */
  private static final int MOST_OF_A_FIELD = 40;

  private static final Path EVERY = Path.of("src/test/resources/procedures/every-joint-field.json");

  private static final String PROCEDURE =
      """
      {"title": "Rear arms", "vehicle": "Invented van", "author": "Test", "revision": "1",
       "values": "invented for a test", "cautions": ["Stands carry the van."],
       "tools": [{"id": "w1", "least": 20, "most": 200, "unit": "N·m"}],
       "phases": [{"name": "tighten", "each": "side", "steps": [
         {"id": "arm", "kind": "fasten", "title": "Tighten the arm bolt", "fastener": {
           "name": "arm bolt", "thread": "M12x1.5", "drive": 18, "hardware": "bolt",
           "oneTimeUse": true, "lubrication": "dry", "needs": "ride-height",
           "stages": [{"torque": 65, "unit": "N·m", "plusMinus": 3},
                      {"angle": 90, "plusMinus": 5}]}},
         {"id": "link", "kind": "fasten", "title": "Tighten the link nut", "fastener": {
           "name": "link nut", "thread": "M10x1.5", "drive": 16, "hardware": "nut",
           "oneTimeUse": false, "lubrication": "dry", "needs": "any",
           "stages": [{"torque": 40, "unit": "N·m", "plusMinus": 2}]}},
         {"id": "damper", "kind": "fasten", "title": "Tighten the damper bolt", "fastener": {
           "name": "damper bolt", "thread": "M14x1.5", "drive": 21, "hardware": "bolt",
           "oneTimeUse": false, "lubrication": "dry", "needs": "any",
           "stages": [{"torque": 100, "unit": "N·m", "plusMinus": 5}]}}
       ]}]}
      """;

  private static Procedure of(String json) {
    try {
      return ProcedureFile.of(Path.of("t.json"), json).procedure();
    } catch (Fault e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }

  private static List<String> lines(String newer) {
    return Differences.of(of(PROCEDURE), of(newer)).stream()
        .map(d -> d.weight().word() + " " + d.line())
        .toList();
  }

  private static List<Procedure> examples() throws IOException, Fault {
    List<Procedure> all = new ArrayList<>();
    all.add(ProcedureFile.load(EVERY).procedure());
    try (Stream<Path> files = Files.list(Path.of("shared/procedures"))) {
      for (Path file : files.filter(ProcedureFile::named).sorted().toList()) {
        all.add(ProcedureFile.load(file).procedure());
      }
    }
    return all;
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "\"torque\": 65; \"torque\": 70; tightens arm bolt: stage 1 torque 65 -> 70 N·m",
        "\"angle\": 90; \"angle\": 60; tightens arm bolt: stage 2 angle 90° -> 60°",
        "\"plusMinus\": 3}; \"plusMinus\": 4}; tightens arm bolt: stage 1 tolerance 3 -> 4 N·m",
        "\"ride-height\"; \"any\"; tightens arm bolt: load condition ride-height -> any",
        "\"oneTimeUse\": true; \"oneTimeUse\": false;"
            + " tightens arm bolt: new hardware each time yes -> no",
        "\"drive\": 16; \"drive\": 17; tightens link nut: socket 16 -> 17 mm",
        "Tighten the link nut; Fit the link nut;"
            + " text link nut: title Tighten the link nut -> Fit the link nut",
        "\"name\": \"link nut\"; \"name\": \"coupling nut\";"
            + " text coupling nut: name link nut -> coupling nut",
        "\"each\": \"side\"; \"each\": \"front\"; tightens phase tighten: each side -> front",
        "\"name\": \"tighten\"; \"name\": \"fit\"; text phase fit: phase tighten -> fit",
        "\"most\": 200; \"most\": 210; work wrench w1: most 200 -> 210 N·m",
      })
  @DisplayName("is told by fastener, field, old and new value")
  void told(String old, String fresh, String expected) {
    assertEquals(List.of(expected), lines(PROCEDURE.replace(old, fresh)));
  }

  @Test
  @DisplayName("is none between equal procedures, and between all examples and themselves")
  void none() throws IOException, Fault {
    assertEquals(List.of(), lines(PROCEDURE));
    assertEquals(List.of(), lines(PROCEDURE.replace("\"torque\": 65", "\"torque\": 65.0")));
    for (Procedure each : examples()) {
      assertEquals(List.of(), Differences.of(each, each));
    }
  }

  @Test
  @DisplayName("is some for every field of the format that is changed, and no field is forgotten")
  void everyField() throws IOException, Fault {
    List<Procedure> examples = examples();
    Changed changed = new Changed();
    examples.forEach(changed::learn);
    Set<String> met = new TreeSet<>();
    for (Procedure each : examples) {
      Map<String, Integer> times = new HashMap<>();
      for (Changed.One one : changed.of(each)) {
        met.add(one.field());
        if (times.merge(one.field(), 1, Integer::sum) > MOST_OF_A_FIELD) {
          continue;
        }
        List<Difference> found = Differences.of(each, (Procedure) one.value());
        assertFalse(found.isEmpty(), () -> one.field() + " in " + each.about().title());
      }
    }
    Set<String> missed = new TreeSet<>(Changed.fields(Procedure.class));
    missed.removeAll(met);
    assertEquals(Set.of(), missed);
  }

  @Test
  @DisplayName("of a unit alone is told apart from that of the value, with what was rounded")
  void units() {
    String pounds =
        PROCEDURE.replace(
            "\"torque\": 65, \"unit\": \"N·m\", \"plusMinus\": 3",
            "\"torque\": 47.9, \"unit\": \"lbf·ft\", \"plusMinus\": 2.2");
    List<String> lines =
        lines(
            pounds.replace(
                "\"unit\": \"N·m\"}]",
                "\"unit\": \"N·m\"}, {\"id\": \"w2\","
                    + " \"least\": 20, \"most\": 150, \"unit\": \"lbf·ft\"}]"));
    assertTrue(
        lines.contains(
            "unit arm bolt: stage 1 torque 65 N·m -> 47.9 lbf·ft (the same value in another unit,"
                + " rounded by 0.09 %)"),
        lines::toString);
    assertTrue(
        lines.contains(
            "unit arm bolt: stage 1 tolerance 3 N·m -> 2.2 lbf·ft (the same value in another unit,"
                + " rounded by 0.57 %)"),
        lines::toString);
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("tightens")), lines::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "47.9, unit",
    "47.94, unit",
    "48, unit",
    "47.8, tightens",
    "49, tightens",
    "65, tightens",
    "50, tightens"
  })
  @DisplayName("of 65 N·m in lbf·ft is a unit only where it is that number, rounded")
  void rounded(String amount, String weight) {
    String pounds =
        PROCEDURE
            .replace(
                "\"torque\": 65, \"unit\": \"N·m\", \"plusMinus\": 3",
                "\"torque\": " + amount + ", \"unit\": \"lbf·ft\", \"plusMinus\": 2.2")
            .replace(
                "\"unit\": \"N·m\"}]",
                "\"unit\": \"N·m\"}, {\"id\": \"w2\", \"least\": 20, \"most\": 150,"
                    + " \"unit\": \"lbf·ft\"}]");
    assertTrue(
        lines(pounds).stream().anyMatch(l -> l.startsWith(weight + " arm bolt: stage 1 torque")),
        () -> lines(pounds).toString());
  }

  @Test
  @DisplayName("of a fastener that is gone comes first, whatever else was changed")
  void gone() {
    int from = PROCEDURE.indexOf("{\"id\": \"damper\"");
    String shorter = PROCEDURE.substring(0, PROCEDURE.lastIndexOf(',', from)) + "]}]}";
    List<String> lines =
        lines(shorter.replace("\"torque\": 65", "\"torque\": 70").replace("Rear arms", "Arms"));
    assertEquals(
        List.of(
            "removed damper bolt: removed (fasten, Tighten the damper bolt)",
            "tightens arm bolt: stage 1 torque 65 -> 70 N·m",
            "text procedure: title Rear arms -> Arms"),
        lines);
  }

  @Test
  @DisplayName("of the order is told of as few steps as explain it")
  void moved() {
    int arm = PROCEDURE.indexOf("{\"id\": \"arm\"");
    int link = PROCEDURE.indexOf("{\"id\": \"link\"");
    int damper = PROCEDURE.indexOf("{\"id\": \"damper\"");
    int end = PROCEDURE.indexOf("]}]}", damper);
    String last = PROCEDURE.substring(damper, end).strip();
    String moved =
        PROCEDURE.substring(0, arm)
            + last
            + ","
            + PROCEDURE.substring(arm, link)
            + PROCEDURE.substring(link, damper).strip().replaceFirst(",$", "")
            + PROCEDURE.substring(end);
    assertEquals(List.of("work damper bolt: moved (now the first step)"), lines(moved));
  }

  @Test
  @DisplayName("finds a fastener again under another id, and under another name by its values")
  void again() {
    String other = PROCEDURE.replace("\"id\": \"link\"", "\"id\": \"link-nut\"");
    assertEquals(List.of("text link nut: id link -> link-nut"), lines(other));
    List<String> lines =
        lines(other.replace("\"name\": \"link nut\"", "\"name\": \"coupling nut\""));
    assertEquals(
        "tightens coupling nut: another name link nut -> coupling nut (taken for the same"
            + " fastener, since all its values are the same)",
        lines.get(0));
    List<String> apart =
        lines(
            other
                .replace("\"name\": \"link nut\"", "\"name\": \"coupling nut\"")
                .replace("\"torque\": 40", "\"torque\": 45"));
    assertEquals("removed link nut: removed (fasten, Tighten the link nut)", apart.get(0));
    assertTrue(apart.contains("tightens coupling nut: added (fasten, Tighten the link nut)"));
  }

  @Test
  @DisplayName("of a class that is now told compares the stages all the same")
  void classes() {
    String marked =
        PROCEDURE.replace(
            "\"stages\": [{\"torque\": 40, \"unit\": \"N·m\", \"plusMinus\": 2}]",
            "\"variants\": [{\"marking\": \"8.8\", \"stages\":"
                + " [{\"torque\": 40, \"unit\": \"N·m\", \"plusMinus\": 2}]}]");
    assertEquals(List.of("tightens link nut: classes any -> 8.8"), lines(marked));
  }
}
