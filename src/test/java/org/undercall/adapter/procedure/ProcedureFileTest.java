package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;

class ProcedureFileTest {
  private static final Path FILES = Path.of("src/test/resources/procedures");
  private static final Path EXPECTED = FILES.resolve("bad/expected.csv");

  private static List<Fault.Finding> faultsOf(Path file) {
    return assertThrows(Fault.class, () -> ProcedureFile.load(file)).findings();
  }

  @Nested
  class AGoodFile {

    @Test
    void isReadWithItsTools() throws Fault {
      Procedure procedure = ProcedureFile.load(FILES.resolve("small.json")).procedure();
      Tool wrench =
          new Tool(
              "w1",
              Torque.newtonMetres("40"),
              Torque.newtonMetres("200"),
              LocalDate.of(2026, 2, 17));
      assertAll(
          () -> assertEquals(List.of(wrench), procedure.tools()),
          () -> assertEquals("Link", procedure.about().title()),
          () -> assertEquals("invented for a test", procedure.about().values()),
          () -> assertEquals(List.of(Caution.of("Stands carry the car.")), procedure.cautions()),
          () ->
              assertEquals(
                  Optional.of(BigDecimal.TEN), procedure.rideHeight().map(h -> h.plusMinus())));
    }

    @Test
    void isReadWithItsSteps() throws Fault {
      Procedure procedure = ProcedureFile.load(FILES.resolve("small.json")).procedure();
      List<Step> steps = procedure.phases().get(0).steps();
      Step.Measure height = (Step.Measure) steps.get(0);
      Step.Fasten bolt = (Step.Fasten) steps.get(2);
      assertAll(
          () -> assertEquals(Each.SIDE, procedure.phases().get(0).each()),
          () -> assertEquals(MeasureUnit.MILLIMETRE, height.unit()),
          () -> assertTrue(height.notesRideHeight()),
          () -> assertEquals(Duration.ofSeconds(10), ((Step.Wait) steps.get(1)).time()),
          () -> assertEquals(LoadCondition.RIDE_HEIGHT, bolt.fastener().needs()),
          () -> assertTrue(bolt.fastener().part().oneTimeUse()),
          () -> assertEquals(1, bolt.fastener().set().count()));
    }

    @Test
    void keepsNumbersExactly() throws Fault {
      Procedure procedure = ProcedureFile.load(FILES.resolve("small.json")).procedure();
      Step.Fasten bolt = (Step.Fasten) procedure.phases().get(0).steps().get(2);
      List<Stage> stages =
          bolt.fastener().stagesFor(Optional.of(new HeadMarking("8.8"))).orElseThrow();
      assertEquals(
          new Stage.TorqueStage(Torque.newtonMetres("55.5"), new BigDecimal("0.1")), stages.get(0));
    }

    @Test
    void comesWithTheFingerprintOfItsBytes(@TempDir Path folder) throws Exception {
      String text = Files.readString(FILES.resolve("small.json"));
      Path file = Files.writeString(folder.resolve("a.json"), text);
      Path other = Files.writeString(folder.resolve("b.json"), text + "\n");
      LoadedProcedure loaded = ProcedureFile.load(file);
      assertAll(
          () -> assertEquals(file, loaded.file()),
          () -> assertEquals(SMALL_SHA256, loaded.sha256()),
          () -> assertFalse(loaded.sha256().equals(ProcedureFile.load(other).sha256())));
    }

    @Test
    void mayStartWithAByteOrderMark(@TempDir Path folder) throws Exception {
      String text = "\uFEFF" + Files.readString(FILES.resolve("small.json"));
      Path file = Files.writeString(folder.resolve("marked.json"), text);
      assertEquals("Link", ProcedureFile.load(file).procedure().about().title());
    }
  }

  /** As printed by {@code sha256sum small.json}. */
  private static final String SMALL_SHA256 =
      "a69cb8911d497612864af36a36f5b64823493ed2f7e560a6e31071b57d5eb37a";

  @Nested
  class TheDemoFiles {

    @ParameterizedTest
    @ValueSource(strings = {"light-van-rear-axle.json", "demo-lateral-link.json"})
    void loadAndSayThatTheirValuesAreInvented(String name) throws Fault {
      Procedure procedure = ProcedureFile.load(Path.of("shared/procedures", name)).procedure();
      assertTrue(procedure.about().values().startsWith("invented for demonstration"));
      assertTrue(Walk.of(procedure).places().size() >= 15);
    }
  }

  @Nested
  class ABadFile {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/procedures/bad/expected.csv")
    void isReportedWithCodeAndPlace(String file, String code, String pointer, String place) {
      List<String> seen =
          faultsOf(FILES.resolve("bad").resolve(file)).stream()
              .map(
                  f ->
                      f.code().id()
                          + " "
                          + f.place().pointer()
                          + " "
                          + f.place().line()
                          + ":"
                          + f.place().column())
              .toList();
      assertEquals(List.of(code + " " + (pointer == null ? "" : pointer) + " " + place), seen);
    }

    @Test
    void isReportedWithAllItsFaultsInTheOrderOfTheFile() {
      List<Fault.Code> codes =
          faultsOf(FILES.resolve("bad/many-faults.json")).stream()
              .map(Fault.Finding::code)
              .toList();
      assertEquals(
          List.of(
              ProcedureCode.BLANK_TEXT,
              ProcedureCode.DUPLICATE_STEP,
              ProcedureCode.WAIT_TIME,
              ProcedureCode.UNKNOWN_PROPERTY_CLASS),
          codes);
    }

    @Test
    void isReportedInOneLineWithWhatWasFoundAndExpected() {
      Fault faults =
          assertThrows(
              Fault.class, () -> ProcedureFile.load(FILES.resolve("bad/property-class.json")));
      assertEquals(
          "PRO-014 property-class.json:39:28 /phases/0/steps/2/fastener/variants/1/marking: "
              + "found \"10.8\", expected a property class such as \"8.8\" or \"10.9\"",
          faults.getMessage());
    }

    @Test
    void thatDoesNotExistIsReported() {
      Fault.Finding fault = faultsOf(FILES.resolve("no-such.json")).get(0);
      assertEquals(
          "PRO-001 no-such.json: found no such file, expected a readable procedure file",
          fault.toString());
    }

    @Test
    void thatIsAFolderIsReported() {
      assertEquals(ProcedureCode.FILE_NOT_READABLE, faultsOf(FILES).get(0).code());
    }

    @Test
    void ofMoreThanTwoMegabytesIsRefusedUnread(@TempDir Path folder) throws IOException {
      Path file = folder.resolve("large.json");
      Files.writeString(file, " ".repeat(FileText.MOST_BYTES + 1), StandardCharsets.UTF_8);
      assertEquals(ProcedureCode.FILE_TOO_LARGE, faultsOf(file).get(0).code());
    }

    @Test
    void ofVeryManyValuesIsRefused(@TempDir Path folder) throws IOException {
      String list = "1,".repeat(LocatedJson.MOST_VALUES) + "1";
      Path file = Files.writeString(folder.resolve("many.json"), "{\"phases\":[" + list + "]}");
      assertEquals(
          List.of(ProcedureCode.FILE_TOO_LARGE),
          faultsOf(file).stream().map(Fault.Finding::code).toList());
    }

    @Test
    void cutAnywhereIsReportedAndNeverEscapesAsAnotherError(@TempDir Path folder)
        throws IOException {
      String text = Files.readString(FILES.resolve("small.json")).strip();
      Path file = folder.resolve("cut.json");
      for (int length = 0; length < text.length(); length += 7) {
        Files.writeString(file, text.substring(0, length));
        assertEquals(ProcedureCode.TRUNCATED, faultsOf(file).get(0).code(), "cut at " + length);
      }
    }
  }

  @Nested
  class EveryCode {

    @Test
    void hasABadFileOrATestOfItsOwn() throws IOException {
      Set<String> covered;
      try (Stream<String> lines = Files.lines(EXPECTED)) {
        covered = lines.map(line -> line.split(",", -1)[1]).collect(Collectors.toSet());
      }
      Set<ProcedureCode> missing = EnumSet.allOf(ProcedureCode.class);
      missing.removeIf(code -> covered.contains(code.id()));
      assertEquals(
          EnumSet.of(
              ProcedureCode.FILE_NOT_READABLE,
              ProcedureCode.FILE_TOO_LARGE,
              ProcedureCode.BLOCK_OUTSIDE,
              ProcedureCode.TOO_MANY_INCLUDES,
              ProcedureCode.ASSEMBLED_TOO_LARGE),
          missing);
    }

    @Test
    void hasANumberOfItsOwn() {
      long distinct = Stream.of(ProcedureCode.values()).map(ProcedureCode::id).distinct().count();
      assertEquals(ProcedureCode.values().length, distinct);
    }
  }
}
