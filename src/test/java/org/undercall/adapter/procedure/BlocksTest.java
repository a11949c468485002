package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("A procedure with blocks and given values")
class BlocksTest {
  private static final Path FILES = Path.of("src/test/resources/procedures");
  private static final String MARK = "OUTSIDE";

  @TempDir private Path folder;
  private Path inside;

  @BeforeEach
  void folders() throws IOException {
    inside = Files.createDirectories(folder.resolve("inside/blocks")).getParent();
    Files.writeString(
        folder.resolve("secret.json"), Blocks.block("", Blocks.step("a").replace("Do it", MARK)));
    Files.writeString(inside.resolve("blocks/good.json"), Blocks.block("", Blocks.step("good")));
  }

  private Path written(String given, String... steps) throws IOException {
    return Files.writeString(
        inside.resolve("procedure.json"), Blocks.procedure(given, List.of(steps)));
  }

  private static List<Fault.Finding> faultsOf(Path file) {
    return assertThrows(Fault.class, () -> ProcedureFile.load(file)).findings();
  }

  private static List<Fault.Code> codesOf(Path file) {
    return faultsOf(file).stream().map(Fault.Finding::code).toList();
  }

  @Nested
  @DisplayName("put together")
  class PutTogether {
    @ParameterizedTest
    @ValueSource(strings = {"with-blocks.json", "with-blocks.yaml"})
    @DisplayName("is the same as written out by hand, from JSON and YAML that include each other")
    void sameByHand(String name) throws Exception {
      Procedure byHand = ProcedureFile.load(FILES.resolve("without-blocks.json")).procedure();
      LoadedProcedure loaded = ProcedureFile.load(FILES.resolve(name));
      assertEquals(byHand, loaded.procedure());
      assertEquals(
          List.of(name, "blocks/bolt.json", "blocks/road.yaml"),
          loaded.assembled().parts().stream().map(Part::file).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"with-blocks.json", "with-blocks.yaml"})
    @DisplayName("is, read from its whole text alone, the same and states the same files")
    void wholeText(String name) throws Exception {
      LoadedProcedure loaded = ProcedureFile.load(FILES.resolve(name));
      Path alone = Files.write(folder.resolve(loaded.wholeName()), loaded.wholeBytes());
      LoadedProcedure again = ProcedureFile.load(alone);
      assertEquals(loaded.procedure(), again.procedure());
      assertEquals(loaded.sha256(), again.sha256());
      assertEquals(loaded.assembled().parts(), again.assembled().parts());
      assertFalse(again.assembled().made(), "whole as it is");
      for (Part part : again.assembled().parts()) {
        byte[] bytes = Files.readAllBytes(FILES.resolve(part.file()));
        assertEquals(Sha256.hex(bytes), part.sha256(), part.file());
        assertEquals(part.file().startsWith("blocks/"), part.block().isPresent());
      }
    }

    @Test
    @DisplayName("keeps the digits of every number as written")
    void digits() throws Exception {
      String text = ProcedureFile.load(FILES.resolve("with-blocks.json")).assembled().text();
      assertTrue(text.contains("\"torque\": 55.50,"), text);
    }

    @Test
    @DisplayName("takes a number, a text, truth, an object and a list as given values")
    void everyType() throws Exception {
      String given =
          """
          "given": {"number": 12.5, "text": "A question?", "truth": true,
          "object": {"id": "made", "kind": "do", "title": "Made"}, "list": ["Mind the edge."]},
          """;
      String measure =
          "{\"id\": \"play\", \"kind\": \"measure\", \"title\": \"Play\", \"unit\": \"mm\","
              + " \"most\": {\"given\": \"number\"}}";
      String check =
          "{\"id\": \"look\", \"kind\": \"do\", \"title\": \"Look\", \"check\": {\"given\":"
              + " \"text\"}, \"changesLoad\": {\"given\": \"truth\"},"
              + " \"cautions\": {\"given\": \"list\"}}";
      Path file = written(given, measure, check, "{\"given\": \"object\"}");
      String byHand =
          Blocks.procedure(
              "",
              List.of(
                  measure.replace("{\"given\": \"number\"}", "12.5"),
                  check
                      .replace("{\"given\": \"text\"}", "\"A question?\"")
                      .replace("{\"given\": \"truth\"}", "true")
                      .replace("{\"given\": \"list\"}", "[\"Mind the edge.\"]"),
                  "{\"id\": \"made\", \"kind\": \"do\", \"title\": \"Made\"}"));
      assertEquals(
          ProcedureFile.of(inside.resolve("hand.json"), byHand).procedure(),
          ProcedureFile.load(file).procedure());
    }

    @Test
    @DisplayName("puts the ids of all includes before those of inner blocks")
    void nested() throws Exception {
      Files.writeString(
          inside.resolve("blocks/outer.json"),
          Blocks.block(
              "\"due\": \"when\"",
              "{\"include\": \"inner.yaml\", \"ids\": \"b-\", \"with\": {\"when\": {\"given\":"
                  + " \"due\"}}}"));
      Files.writeString(
          inside.resolve("blocks/inner.yaml"),
          """
          title: Inner
          author: Test
          revision: "1"
          values: none of its own
          takes: { when: when }
          steps: [{ id: c, kind: hand-over, title: Later, due: { given: when } }]
          """);
      Path file =
          written(
              "",
              "{\"include\": \"blocks/outer.json\", \"ids\": \"a-\", \"with\": {\"due\":"
                  + " \"soon\"}}");
      String made = ProcedureFile.load(file).procedure().phases().get(0).steps().toString();
      assertTrue(made.contains("a-b-c") && made.contains("soon"), made);
    }

    @Test
    @DisplayName("leaves out what refers to a null that the block permits, also through another")
    void leftOut() throws Exception {
      Files.writeString(
          inside.resolve("blocks/inner.json"),
          Blocks.block(
              "\"more\": {\"what\": \"a step\", \"orNull\": true}, \"ask\": {\"what\": \"it\","
                  + " \"orNull\": true}",
              Blocks.step("a"),
              "{\"id\": \"b\", \"kind\": \"do\", \"title\": \"Do it\", \"check\": {\"given\":"
                  + " \"ask\"}, \"after\": [\"a\", {\"given\": \"more\"}]}"));
      Files.writeString(
          inside.resolve("blocks/outer.json"),
          Blocks.block(
              "\"ask\": {\"what\": \"it\", \"orNull\": true}",
              "{\"include\": \"inner.json\", \"ids\": \"x-\", \"with\": {\"ask\": {\"given\":"
                  + " \"ask\"}, \"more\": null}}"));
      String none = "{\"include\": \"blocks/outer.json\", \"with\": {\"ask\": null}}";
      String given = none.replace("null", "\"Well?\"");
      String b = "{\"id\": \"x-b\", \"kind\": \"do\", \"title\": \"Do it\", \"after\": [\"x-a\"]}";
      assertEquals(byHand(Blocks.step("x-a"), b), loaded(none));
      String asked = b.replace("\"after\"", "\"check\": \"Well?\", \"after\"");
      assertEquals(byHand(Blocks.step("x-a"), asked), loaded(given));
    }

    @Test
    @DisplayName("takes ids that are given as they are, and those of the block with what is before")
    void idsGiven() throws Exception {
      Files.writeString(
          inside.resolve("blocks/bound.json"),
          Blocks.block(
              "\"first\": \"ids\", \"too\": \"an id\"",
              Blocks.step("a").replace("}", ", \"after\": {\"given\": \"first\"}}"),
              Blocks.step("b").replace("}", ", \"after\": [\"a\", {\"given\": \"too\"}]}")));
      String include =
          "{\"include\": \"blocks/bound.json\", \"ids\": \"x-\", \"with\": {\"first\": [\"p\"],"
              + " \"too\": \"p\"}}";
      assertEquals(
          byHand(
              Blocks.step("p"),
              Blocks.step("x-a").replace("}", ", \"after\": [\"p\"]}"),
              Blocks.step("x-b").replace("}", ", \"after\": [\"x-a\", \"p\"]}")),
          loaded(Blocks.step("p"), include));
    }

    private Procedure loaded(String... steps) throws Exception {
      return ProcedureFile.load(written("", steps)).procedure();
    }

    private Procedure byHand(String... steps) throws Exception {
      return ProcedureFile.of(inside.resolve("hand.json"), Blocks.procedure("", List.of(steps)))
          .procedure();
    }

    @Test
    @DisplayName("that has neither is kept byte for byte and states no file")
    void plain() throws Exception {
      Path file = FILES.resolve("small.json");
      LoadedProcedure loaded = ProcedureFile.load(file);
      assertEquals(Sha256.hex(Files.readAllBytes(file)), loaded.sha256());
      assertEquals(loaded.sha256(), Sha256.hex(loaded.wholeBytes()));
      assertEquals("small.yaml", ProcedureFile.load(FILES.resolve("small.yaml")).wholeName());
      assertEquals(List.of(), loaded.assembled().parts());
    }
  }

  @Nested
  @DisplayName("with a path that leads elsewhere")
  class Paths {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "../secret.json",
          "blocks/../../secret.json",
          "blocks/./good.json",
          "./blocks/good.json",
          "/etc/passwd",
          "/secret.json",
          "//host/share/good.json",
          "blocks//good.json",
          "blocks\\\\good.json",
          "..\\\\secret.json",
          "C:/secret.json",
          "C:good.json",
          "blocks/good.json:stream.json",
          "file:///secret.json",
          "~/secret.json",
          "blocks/nul.json",
          "NUL .json",
          "con/good.json",
          "blocks/.json",
          "blocks/good.json/",
          "blocks/good.json ",
          " blocks/good.json",
          "blocks /good.json",
          "blocks./good.json",
          "blocks/good",
          "blocks/*.json",
          ""
        })
    @DisplayName("is refused by its form")
    void form(String path) throws IOException {
      assertEquals(
          List.of(ProcedureCode.INCLUDE_PATH), codesOf(written("", Blocks.include(path))), path);
    }

    @Test
    @DisplayName("is refused with a NUL, and if it is very long")
    void odd() throws IOException {
      assertEquals(
          List.of(ProcedureCode.CONTROL_CHARACTER),
          codesOf(written("", Blocks.include("blocks/good.json\\u0000.json"))));
      List<Fault.Finding> faults =
          faultsOf(written("", Blocks.include("b/".repeat(100_000) + "good.json")));
      assertEquals(ProcedureCode.INCLUDE_PATH, faults.get(0).code());
      assertTrue(faults.get(0).toString().length() < 300, faults.get(0)::toString);
    }

    @Test
    @DisplayName("is refused if a link leads out, of a file or of a folder")
    void links() throws IOException {
      Files.createSymbolicLink(inside.resolve("blocks/file.json"), folder.resolve("secret.json"));
      Files.createSymbolicLink(inside.resolve("out"), folder);
      for (String path : List.of("blocks/file.json", "out/secret.json")) {
        List<Fault.Finding> faults = faultsOf(written("", Blocks.include(path)));
        assertEquals(ProcedureCode.BLOCK_OUTSIDE, faults.get(0).code());
        assertFalse(faults.toString().contains(MARK), faults::toString);
      }
    }

    @Test
    @DisplayName("may be a link that stays inside")
    void innerLink() throws Exception {
      Files.createSymbolicLink(
          inside.resolve("blocks/other.json"), inside.resolve("blocks/good.json"));
      LoadedProcedure loaded = ProcedureFile.load(written("", Blocks.include("blocks/other.json")));
      assertEquals(1, loaded.procedure().phases().get(0).steps().size());
    }
  }

  @Nested
  @DisplayName("with faults")
  class Faulty {
    @Test
    @DisplayName("is refused in circles, also through others and through a link")
    void circles() throws IOException {
      Files.writeString(
          inside.resolve("blocks/one.json"), Blocks.block("", Blocks.include("two.json")));
      Files.writeString(
          inside.resolve("blocks/two.json"), Blocks.block("", Blocks.include("three.json")));
      Files.createSymbolicLink(
          inside.resolve("blocks/three.json"), inside.resolve("blocks/one.json"));
      Fault.Finding fault = faultsOf(written("", Blocks.include("blocks/one.json"))).get(0);
      assertEquals(ProcedureCode.INCLUDE_CIRCLE, fault.code());
      assertEquals("blocks/two.json", fault.place().name());
      assertEquals(
          List.of(ProcedureCode.INCLUDE_CIRCLE),
          codesOf(written("", Blocks.step("a"), Blocks.include("procedure.json"))));
    }

    @Test
    @DisplayName("is refused with too many includes, reported once")
    void many() throws IOException {
      String[] includes =
          IntStream.rangeClosed(0, Assembly.MOST_INCLUDES)
              .mapToObj(i -> "{\"include\": \"blocks/good.json\", \"ids\": \"s" + i + "-\"}")
              .toArray(String[]::new);
      assertEquals(List.of(ProcedureCode.TOO_MANY_INCLUDES), codesOf(written("", includes)));
    }

    @Test
    @DisplayName("is refused if it grows beyond a file, by references or by blocks")
    void growing() throws IOException {
      String given = "\"given\": {\"long\": [" + "\"x\", ".repeat(2_000) + "\"x\"]}, ";
      String use =
          "{\"id\": \"s%d\", \"kind\": \"do\", \"title\": \"Do it\", \"cautions\": {\"given\":"
              + " \"long\"}}";
      String[] steps =
          IntStream.range(0, 100).mapToObj(i -> use.formatted(i)).toArray(String[]::new);
      assertEquals(List.of(ProcedureCode.ASSEMBLED_TOO_LARGE), codesOf(written(given, steps)));
      String wide =
          Blocks.step("w").replace("}", ", \"cautions\": [" + "\"x\", ".repeat(900) + "\"x\"]}");
      Files.writeString(inside.resolve("blocks/wide.json"), Blocks.block("", wide));
      String[] includes =
          IntStream.range(0, 100)
              .mapToObj(i -> "{\"include\": \"blocks/wide.json\", \"ids\": \"s" + i + "-\"}")
              .toArray(String[]::new);
      assertEquals(List.of(ProcedureCode.ASSEMBLED_TOO_LARGE), codesOf(written("", includes)));
    }

    @Test
    @DisplayName("is not said to use no given value where the include itself is at fault")
    void oneFaultAlone() throws IOException {
      String include =
          "{\"include\": \"../x.json\", \"ids\": \"a-\", \"with\": {\"t\": {\"given\": \"t\"}}}";
      assertEquals(
          List.of(ProcedureCode.INCLUDE_PATH),
          codesOf(written("\"given\": {\"t\": \"Do it\"}, ", include)));
    }

    @Test
    @DisplayName("is refused with an odd name or mark of what a block takes")
    void takes() throws IOException {
      for (String odd : List.of("1", "{}", "{\"what\": \"it\"}", "{\"what\": 1, \"orNull\": 1}")) {
        String use = "{\"id\": \"a\", \"kind\": \"do\", \"title\": {\"given\": \"t\"}}";
        Files.writeString(inside.resolve("blocks/odd.json"), Blocks.block("\"t\": " + odd, use));
        String include = "{\"include\": \"blocks/odd.json\", \"with\": {\"t\": \"Do it\"}}";
        Fault.Finding fault = faultsOf(written("", include)).get(0);
        assertEquals("blocks/odd.json", fault.place().name(), odd);
      }
    }

    @ParameterizedTest
    @CsvSource({
      "block-value.json, blocks/thread.json",
      "takes-not-used.json, blocks/idle.json",
      "block-not-json.json, blocks/not-json.json",
      "block-head.json, blocks/no-values.json",
      "include-circle.json, blocks/circle.json",
      "given-value.json, given-value.json"
    })
    @DisplayName("names the file that has to be mended")
    void file(String procedure, String faulty) {
      Fault.Finding fault = faultsOf(FILES.resolve("bad").resolve(procedure)).get(0);
      assertEquals(faulty, fault.place().name());
      assertTrue(fault.place().line() > 0 && fault.place().column() > 0, fault::toString);
    }

    @Test
    @DisplayName("reports those of all files together, and says where a given value is used")
    void together() throws IOException {
      Files.writeString(
          inside.resolve("blocks/bad.json"),
          Blocks.block("\"kind\": \"kind\"", "{\"id\": \"B\", \"kind\": {\"given\": \"kind\"}}"));
      Path file =
          written(
              "",
              "{\"include\": \"blocks/bad.json\", \"with\": {\"kind\": \"dance\", \"more\": 1}}",
              Blocks.include("blocks/absent.json"),
              Blocks.step("same"),
              Blocks.step("same"));
      List<String> seen =
          faultsOf(file).stream().map(f -> f.code().id() + " " + f.place().name()).toList();
      assertEquals(
          List.of(
              "PRO-012 procedure.json",
              "PRO-061 procedure.json",
              "PRO-047 procedure.json",
              "PRO-030 procedure.json",
              "PRO-009 blocks/bad.json",
              "PRO-027 blocks/bad.json"),
          seen);
      assertTrue(
          faultsOf(file).get(0).expected().endsWith(", as used at blocks/bad.json:2:58"),
          () -> faultsOf(file).get(0).toString());
    }
  }
}
