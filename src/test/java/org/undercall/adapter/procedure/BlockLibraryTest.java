package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("The library of blocks")
class BlockLibraryTest {
  private static final Path SHARED = Path.of("shared", "procedures");
  private static final Path PAGE = Path.of("docs/reference/blocks.md");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final int EXAMPLES_WITH_BLOCKS = 12;

  @TempDir private Path folder;

  private static Set<String> blocks() throws IOException {
    try (Stream<Path> files = Files.list(SHARED.resolve("blocks"))) {
      return files
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(SHARED)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** A copy of an example and of all blocks, in which one text of one file is another. */
  private Path changed(String example, String file, String from, String to) throws IOException {
    Blocks.copy(SHARED.resolve("blocks"), Files.createDirectories(folder).resolve("blocks"));
    Path copy = Files.copy(SHARED.resolve(example + ".json"), folder.resolve("example.json"));
    Path at = file.equals("-") ? copy : folder.resolve("blocks").resolve(file);
    String text = Files.readString(at);
    assertTrue(text.contains(from), () -> file + " has no " + from);
    Files.writeString(at, text.replace(from, to));
    return copy;
  }

  @Test
  @DisplayName("is used whole by twelve examples or more, and each block is told of on its page")
  void usedAndTold() throws Exception {
    Set<String> used = new TreeSet<>();
    int with = 0;
    for (Path example : examples()) {
      List<Part> parts = ProcedureFile.load(example).assembled().parts();
      with += parts.isEmpty() ? 0 : 1;
      parts.stream().skip(1).forEach(part -> used.add(part.file().substring("blocks/".length())));
    }
    assertEquals(blocks(), used);
    assertTrue(with >= EXAMPLES_WITH_BLOCKS, with + " examples with blocks");
    Matcher rows = Pattern.compile("(?m)^\\| `([\\w.-]+)` \\|").matcher(Files.readString(PAGE));
    assertEquals(
        blocks(),
        rows.results().map(row -> row.group(1)).collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  @DisplayName("holds no torque, angle, thread, size or tolerance of its own")
  void noValues() throws IOException {
    for (String block : blocks()) {
      String text = Files.readString(SHARED.resolve("blocks").resolve(block)).replace("\"", "");
      for (String field :
          List.of("torque", "angle", "plusMinus", "upTo", "backOff", "marking", "friction")) {
        assertTrue(
            !Pattern.compile("\\b" + field + ": *[\\d\\[]").matcher(text).find(), block + field);
      }
      for (String field :
          List.of("thread", "drive", "count", "order", "stages", "variants", "seconds", "due")) {
        Matcher at = Pattern.compile("(?m)^ {8,}" + field + ": (.*?),?$").matcher(text);
        while (at.find()) {
          assertTrue(at.group(1).startsWith("{ given: "), block + ": " + at.group());
        }
      }
    }
  }

  /**
   * The sums of what these examples were when each step was written out in them: fields in the
   * order of their names, without schema, files and what a reason to renew says already. Whoever
   * changes an example on purpose writes its new sum, which the test prints.
   */
  @ParameterizedTest
  @CsvSource({
    "brake-caliper-carrier, b89ae75855a65ed8d1bfc0a105cea0abe4d0df1dc6bbf45368d0e7792180eb3f",
    "front-control-arms, 7cff860b64eef6a1eb427ccb70da3f2fb0a4c000157b2778a1383e70a4e73fd1",
    "light-van-rear-axle, 8f9532913d732d065f454ace46b1fed8bb3a5b5d085eac1a024e97449a440044",
    "rear-trailing-arm-droop, b88b46f4ea906dc0b2d1b06cdca5620336b15f862878f9931aa0f3853a750b31",
    "strut-top-mount, 85f07593a5d99e604b5502891713da7cdec31f1e5c1529c1386e1b1698a65674",
    "subframe-star-order, ddaf1eeba97b8322b81e8ebf3e8cefd8125374103d8681d343501933df14c745",
    "tie-rod-counter-nut, 64b75ce9d9f913962fd4d04bb5c03781736419a1b456a657742d8d2ce933723b",
    "wheel-change-retorque, e3cea10c3b2f1a6b4b6bd604d05afaed0bc5401d63b6c8f1876e5a48d5d3dee4",
    "wheel-hub-axle-nut, 24dc3913459eb6ee357de64fe26f9a755aad7caa9014c11ed5d76316f1ea8390"
  })
  @DisplayName("leaves the examples that were written out before as they were")
  void same(String example, String sum) throws Exception {
    String whole = ProcedureFile.load(SHARED.resolve(example + ".json")).assembled().text();
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode tree = (ObjectNode) mapper.readTree(whole);
    tree.remove(List.of("$schema", "assembledFrom"));
    for (JsonNode fastener : tree.findValues("fastener")) {
      if (fastener.has("renew")) {
        ((ObjectNode) fastener).remove("oneTimeUse");
      }
    }
    mapper.configure(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS, true);
    String text = mapper.writeValueAsString(mapper.treeToValue(tree, Object.class));
    assertEquals(sum, Sha256.hex(text.getBytes(StandardCharsets.UTF_8)), text);
  }

  @Nested
  @DisplayName("filled or changed in a wrong way")
  class Wrong {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "trailing-arm-from-blocks | bonded-bush.yaml | needs: ride-height | needs: any | CHK-005",
          "light-van-rear-axle | bonded-bush.yaml | needs: ride-height | needs: any | CHK-005",
          "trailing-arm-from-blocks | bonded-bush.yaml | oneTimeUse: true | oneTimeUse: false | CHK-004",
          "tie-rod-counter-nut | ball-joint.yaml | oneTimeUse: true | oneTimeUse: false | CHK-041",
          "anti-roll-bar-links | anti-roll-bar-link.yaml | oneTimeUse: true | oneTimeUse: false | CHK-041",
          "strut-top-mount | strut-top-mount.yaml | oneTimeUse: true | oneTimeUse: false | CHK-041",
          "wheel-hub-axle-nut | axle-nut.yaml | oneTimeUse: true | oneTimeUse: false | CHK-041",
          "subframe-star-order | subframe-bolts.yaml | oneTimeUse: true | oneTimeUse: false | CHK-004",
          "tie-rod-counter-nut | wheel-fitting.json | \"dry\" | \"greased\" | CHK-040",
          "wheel-change-retorque | wheel-corner.yaml | lubrication: dry | lubrication: greased | CHK-040",
          "wheel-change-retorque | wheel-check-pass.yaml | lubrication: dry | lubrication: oiled | CHK-040",
          "wheel-hub-axle-nut | caliper-carrier.yaml | lubrication: as-delivered | lubrication: unstated | CHK-017",
          "tie-rod-counter-nut | - | [1, 3, 5, 2, 4] | [1, 2, 3, 4, 5] | CHK-014",
          "wheel-change-retorque | - | [1, 3, 5, 2, 4] | [5, 4, 3, 2, 1] | CHK-014",
          "tie-rod-counter-nut | wheel-retorque.yaml | Re-torque the wheel bolts | Fill in the book | CHK-013",
          "tie-rod-counter-nut | wheel-fitting.json | \"wheelsOn\": true | \"wheelsOn\": false | CHK-026",
          "tie-rod-counter-nut | wheel-fitting.json | \"car\": \"lowered\" | \"car\": \"raised\" | CHK-044",
          "tie-rod-counter-nut | lift.yaml | changesLoad: true | changesLoad: false | CHK-042",
          "brake-caliper-carrier | - | \"torque\": 240, \"unit\": \"lbf·in\" | \"torque\": 120, \"unit\": \"N·m\" | CHK-001",
          "wheel-hub-axle-nut | - | \"torque\": 120, \"unit\": \"N·m\", \"plusMinus\": 8 | \"torque\": 120, \"unit\": \"N·m\", \"plusMinus\": 119 | CHK-032",
          "trailing-arm-from-blocks | - | \"marking\": \"8.8\" | \"marking\": \"12.9\" | CHK-038"
        })
    @DisplayName("is found by the check")
    void found(String example, String file, String from, String to, String code) throws Exception {
      Path copy = changed(example, file, from, to);
      List<Finding> findings = ProcedureCheck.of(ProcedureFile.load(copy).procedure(), DAY);
      assertTrue(
          findings.stream()
              .filter(f -> f.rule().severity() != Severity.REMARK)
              .anyMatch(f -> f.rule().code().equals(code)),
          () -> code + " is not in " + findings);
    }

    /** What a tired author could write in the place of something right, in the procedure alone. */
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          // left out, and given by another name
          "\"drive\": 17, | `` | PRO-060 | no \"drive\" | \"drive\": the socket for the wheel bolts, in mm",
          "\"lower-after\": null, | `` | PRO-060 | no \"lower-after\" | one more step that is closed before the car is lowered, an id, or null",
          "\"drive\": 17, | \"socket\": 17, | PRO-060 PRO-061 | no \"drive\" | the socket",
          "\"count\": 4, | \"Count\": 4, | PRO-060 PRO-058 PRO-061 | no \"count\" | how many bolts a wheel has",
          // given twice
          "\"drive\": 17, | \"drive\": 17, \"drive\": 19, | PRO-007 | \"drive\" again | each field once",
          // null where it is not permitted, and a left-out one in its place
          "\"drive\": 17, | \"drive\": null, | PRO-010 | null | a number",
          "\"order\": { \"given\": \"wheel-bolt-order\" } | \"order\": null | PRO-010 PRO-061 | null | a list",
          "\"stages\": { \"given\": \"wheel-bolt-stages\" } | \"stages\": null | PRO-010 PRO-061 | null | a list",
          // of the wrong type, unit or order
          "\"drive\": 17, | \"drive\": \"17\", | PRO-010 | \"17\" | a number",
          "\"torque\": 55, \"unit\": \"N·m\" | \"torque\": 55, \"unit\": \"kgm\" | PRO-019 | \"kgm\" | lbf·ft",
          "\"torque\": 55, \"unit\": \"N·m\" | \"torque\": 55 | PRO-009 | no \"unit\" | \"unit\"",
          "\"torque\": 55, | \"torque\": 550, | PRO-038 | 550 N·m | 40 to 210 N·m",
          "\"thread\": \"M12x1.5\", | \"thread\": \"M12\", | PRO-013 | \"M12\" | M12x1.5",
          "[1, 3, 2, 4] | [1, 3, 5, 2, 4] | PRO-037 | [1,3,5,2,4] | each position from 1 to 4 once",
          // names that nothing has
          "\"given\": \"wheel-bolt-order\" | \"given\": \"wheel-order\" | PRO-059 PRO-061 | \"wheel-order\" | wheel-bolt-order",
          "\"after\": [\"arm-bush-bolt\"] | \"after\": [\"bush-bolt\"] | PRO-062 | \"bush-bolt\" | stands before",
          "blocks/road-test.yaml | blocks/roadtest.yaml | PRO-047 | no such file | blocks/roadtest.yaml",
          "blocks/road-test.yaml | blocks/lift.yaml | PRO-053 | \"blocks/lift.yaml\" | a block of steps",
          // of another revision
          "\"revision\": \"2\", | \"revision\": \"1\", | PRO-081 | revision \"2\" of the block | \"1\"",
          "\"blocks/road-test.yaml\", | \"blocks/road-test.yaml\", \"revision\": 1, | PRO-010 | 1 | the revision of a block",
          // one in a place where its steps are already
          "\"due\": \"after 50 km\" } } | \"due\": \"after 50 km\" } }, { \"include\": \"blocks/wheel-retorque.yaml\", \"with\": { \"due\": \"later\" } } | PRO-057 | nothing before its ids again | \"ids\"",
          "{ \"include\": \"blocks/wheel-retorque.yaml\" | { \"include\": \"blocks/pedal-and-road-test.yaml\", \"with\": { \"after\": [\"lower\"], \"question\": \"Quiet?\" } }, { \"include\": \"blocks/wheel-retorque.yaml\" | PRO-030 | \"road-test\" | another id than that of blocks/road-test.yaml"
        })
    @DisplayName("is a fault with code, place, found and expected")
    void faults(String from, String to, String codes, String found, String expected)
        throws Exception {
      Path copy = changed("trailing-arm-from-blocks", "-", from, to);
      Fault fault = assertThrows(Fault.class, () -> ProcedureFile.load(copy));
      Set<String> seen =
          fault.findings().stream()
              .map(f -> f.code().id())
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(new TreeSet<>(Set.of(codes.split(" "))), seen, fault::getMessage);
      String first = codes.split(" ", -1)[0];
      Fault.Finding one =
          fault.findings().stream().filter(f -> f.code().id().equals(first)).findFirst().get();
      assertTrue(one.place().line() > 0, fault::getMessage);
      assertTrue(one.found().contains(found), one::toString);
      assertTrue(one.expected().contains(expected), one::toString);
    }
  }
}
