package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.log.Coded;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.port.Fault;

@DisplayName("A procedure in YAML")
class YamlProcedureTest {
  private static final Path FILES = Path.of("src/test/resources/procedures");
  private static final Path YAML = Path.of("odd.yaml");

  private static String seen(Fault.Finding f) {
    return f.code().id()
        + " "
        + f.place().pointer()
        + " "
        + f.place().line()
        + ":"
        + f.place().column();
  }

  private static List<Fault.Finding> faultsOf(String text) {
    return assertThrows(Fault.class, () -> ProcedureFile.of(YAML, text)).findings();
  }

  static Stream<Path> procedures() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("shared/procedures"))) {
      return files.filter(f -> f.toString().endsWith(".json")).toList().stream();
    }
  }

  @Test
  @DisplayName("written by hand is the same procedure as in JSON")
  void byHand() throws Fault {
    assertEquals(
        ProcedureFile.load(FILES.resolve("small.json")).procedure(),
        ProcedureFile.load(FILES.resolve("small.yaml")).procedure());
  }

  @ParameterizedTest
  @MethodSource("procedures")
  @DisplayName("is the same procedure as in JSON, for every example")
  void examples(Path json) throws IOException, Fault {
    JsonNode tree = new ObjectMapper().readTree(json.toFile());
    String yaml = new YAMLMapper().writeValueAsString(tree);
    Path beside = json.resolveSibling("beside.yaml");
    assertEquals(ProcedureFile.load(json).procedure(), ProcedureFile.of(beside, yaml).procedure());
  }

  @Nested
  @DisplayName("with a fault")
  class Faulty {
    /** Faults of the language itself. */
    private static final Set<String> OF_JSON_ALONE = Set.of("PRO-004", "PRO-005");

    @TempDir private Path folder;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/procedures/bad/expected.csv")
    @DisplayName("has the code of the same JSON, and its place where the text is the same")
    void sameCodes(String file, String code, String pointer, String place) throws IOException {
      Path good = FILES.resolve("bad").resolve(file);
      assumeFalse(OF_JSON_ALONE.contains(code), "another text in YAML");
      Path yaml = Files.copy(good, folder.resolve(file.replace(".json", ".yml")));
      Blocks.copy(FILES.resolve("bad/blocks"), folder.resolve("blocks"));
      List<Fault.Finding> faults =
          assertThrows(Fault.class, () -> ProcedureFile.load(yaml)).findings();
      assertEquals(
          List.of(code + " " + (pointer == null ? "" : pointer) + " " + place),
          faults.stream().map(YamlProcedureTest::seen).toList());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
        delimiter = '>',
        value = {
          "'title: *a'> PRO-045 /title 1:8",
          "'title: !!str b'> PRO-045 /title 1:8",
          "'{title: a, title: b}'> PRO-007 /title 1:12",
          "'[1, 2'> PRO-005  1:6",
          "''> PRO-005  1:1",
          "'title: [}'> PRO-004  1:9",
          "'a: b: c'> PRO-004  1:5",
          "'? [a]: b'> PRO-004  1:3",
        })
    @DisplayName("of its language is reported with its place")
    void ownFaults(String text, String expected) {
      assertTrue(
          faultsOf(text).stream().map(YamlProcedureTest::seen).toList().contains(expected),
          () -> faultsOf(text).toString());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
        delimiter = '>',
        value = {
          "N·m, calibrated: 2026-02-17> N·m, calibrated: 17.02.2026> PRO-018 12:60",
          "'marking: \"8.8\"'> marking: 8.8> PRO-010 38:24",
          "oneTimeUse: true> oneTimeUse: yes> PRO-010 34:23",
          "drive: 18> drive: 017> PRO-026 32:18",
          "drive: 18> drive: 0x12> PRO-026 32:18",
          "drive: 18> drive: 1_8> PRO-026 32:18",
          "drive: 18> 'drive: '> PRO-010 32:17",
          "name: bolt> 'name: \u0007'> PRO-017 30:17",
          "seconds: 10> 'seconds: 10\n        <<: a'> PRO-008 26:9",
        })
    @DisplayName("is not read as something else")
    void notGuessed(String good, String bad, String expected) throws IOException {
      String text = Files.readString(FILES.resolve("small.yaml"));
      assertTrue(text.contains(good), good);
      List<String> places =
          faultsOf(text.replaceFirst(java.util.regex.Pattern.quote(good), bad)).stream()
              .map(f -> f.code().id() + " " + f.place().line() + ":" + f.place().column())
              .toList();
      assertEquals(List.of(expected), places);
    }

    @Test
    @DisplayName("of references that would grow is refused unread, however many")
    void bomb() {
      StringBuilder bomb = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x,x,x]\n");
      for (int i = 1; i < 30; i++) {
        String before = "*a" + (i - 1);
        bomb.append("a" + i + ": &a" + i + " [" + (before + ",").repeat(9) + before + "]\n");
      }
      assertTrue(
          faultsOf(bomb.toString()).stream()
              .anyMatch(f -> f.code() == ProcedureCode.YAML_REFERENCE && f.place().line() == 2));
    }

    @Test
    @DisplayName("of depth is refused, in brackets and in lines")
    void deep() {
      StringBuilder lines = new StringBuilder();
      for (int i = 0; i < 40; i++) {
        lines.append(" ".repeat(i)).append("a:\n");
      }
      for (String text : List.of("[".repeat(5_000), lines.toString(), "- ".repeat(2_000) + "a")) {
        assertEquals(ProcedureCode.TOO_DEEP, faultsOf(text).get(0).code());
      }
    }

    @Test
    @DisplayName("of very many values or a second document is refused")
    void many() throws IOException {
      String text = Files.readString(FILES.resolve("small.yaml"));
      assertEquals(
          ProcedureCode.FILE_TOO_LARGE,
          faultsOf("phases:\n" + "- 1\n".repeat(LocatedJson.MOST_VALUES)).get(0).code());
      assertEquals("PRO-004  46:1", seen(faultsOf(text + "---\na: b\n").get(0)));
    }

    @Test
    @DisplayName("of any cut or any odd character is reported, never thrown as another error")
    void anything() throws IOException {
      String text = Files.readString(FILES.resolve("small.yaml"));
      int reported = 0;
      for (int i = 0; i < text.length(); i += 17) {
        for (String odd : List.of("\t", "%", "&", "\u0000", "|", "'", ": ", "-\n", "\ud800", "")) {
          String changed =
              odd.isEmpty() ? text.substring(0, i) : text.substring(0, i) + odd + text.substring(i);
          try {
            ProcedureFile.of(YAML, changed);
          } catch (Fault e) {
            e.findings().forEach(f -> Coded.requireCode("PRO", f.toString()));
            reported++;
          }
        }
      }
      assertTrue(reported > text.length() / 17 * 5, "reported " + reported);
    }
  }

  @Test
  @DisplayName("is kept by its session as it is, and found there again")
  void session(@TempDir Path folder) throws IOException, Fault {
    byte[] bytes = Files.readAllBytes(FILES.resolve("small.yaml"));
    OffsetDateTime now = OffsetDateTime.parse("2026-03-03T10:00:00Z");
    SessionFolder session = SessionFolder.create(folder, "Small.yaml", bytes, now);
    assertEquals("2026-03-03-100000-small", session.name());
    assertEquals("procedure.yaml", session.procedure().getFileName().toString());
    LoadedProcedure kept = ProcedureFile.load(session.procedure());
    assertEquals(bytes.length, session.procedureBytes(kept.sha256()).length);
    assertEquals("Link", kept.procedure().about().title());
  }
}
