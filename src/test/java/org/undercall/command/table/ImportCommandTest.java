package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.TorqueUnit;
import org.undercall.port.Fault;
import picocli.CommandLine;

@DisplayName("The command import")
class ImportCommandTest {
  private static final Path TABLES = Path.of("src/test/resources/tables");

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return line.execute(arguments);
  }

  private int imported(String table, String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "import",
                TABLES.resolve(table).toString(),
                "--source=invented for demonstration",
                "--set=side=both",
                "--set=hardware=self-locking nut",
                "--out=" + folder.resolve("out.json")));
    all.addAll(List.of(more));
    return run(all.toArray(String[]::new));
  }

  @Test
  @DisplayName("makes the right procedure of a table that was mended, clean under the check")
  void mended() throws Fault {
    assertEquals(0, imported("mended.csv"), err::toString);
    Procedure procedure = ProcedureFile.load(folder.resolve("out.json")).procedure();
    List<Step.Fasten> steps =
        procedure.phases().get(0).steps().stream().map(Step.Fasten.class::cast).toList();
    assertEquals(
        List.of("bush-bolt", "joint-nut", "damper-bolt"),
        steps.stream().map(s -> s.head().id()).toList());
    assertEquals(2, steps.get(0).fastener().variants().size());
    assertEquals("62 lbf·ft", torque(steps.get(1)));
    assertEquals("70 N·m", torque(steps.get(2)));
    assertEquals(TorqueUnit.POUND_FORCE_FOOT, procedure.tools().get(1).least().unit());
    assertEquals(List.of("Hold the pin; it must not turn"), steps.get(1).head().cautions());
    assertFalse(
        ProcedureCheck.of(procedure, LocalDate.of(2026, 6, 1)).stream()
            .anyMatch(f -> f.rule().severity() != Severity.REMARK));
  }

  private static String torque(Step.Fasten step) {
    org.undercall.core.procedure.Stage stage = step.fastener().variants().get(0).stages().get(0);
    return ((org.undercall.core.procedure.Stage.TorqueStage) stage).target().toString();
  }

  @Test
  @DisplayName("writes nothing with a doubtful cell, and names all of them")
  void messy() {
    assertEquals(1, imported("messy.csv"));
    assertFalse(Files.exists(folder.resolve("out.json")));
    assertTrue(err.toString().contains("TAB-017 messy.csv E13: found \"10. Sep\", expected"));
    assertTrue(err.toString().contains("Nothing written: "), err::toString);
    assertTrue(out.toString().contains("not taken"), out::toString);
  }

  @Test
  @DisplayName("never writes over a file unless it is told to, and keeps what was there")
  void force() throws IOException {
    Files.writeString(folder.resolve("out.json"), "mine");
    assertEquals(1, imported("mended.csv"));
    assertTrue(err.toString().contains("TAB-029 out.json: "), err::toString);
    assertEquals("mine", Files.readString(folder.resolve("out.json")));
    assertEquals(0, imported("mended.csv", "--force"));
    assertTrue(Files.readString(folder.resolve("out.json")).startsWith("{"));
    assertEquals("mine", Files.readString(folder.resolve("out.json.old")));
    assertEquals(0, imported("mended.csv"));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(2, files.count());
    }
  }

  @Test
  @DisplayName("needs to be told where the values come from")
  void source() {
    int status =
        run("import", TABLES.resolve("mended.csv").toString(), "--set=side=both", "--preview");
    assertEquals(1, status);
    assertTrue(err.toString().contains("no source, expected a line above"), err::toString);
  }

  @Test
  @DisplayName("takes and leaves columns as it is told, and says if it cannot")
  void mapped() {
    assertEquals(0, imported("mended.csv", "--map=L=-", "--map=Shelf=-", "--preview"));
    assertFalse(Files.exists(folder.resolve("out.json")));
    assertEquals(1, imported("mended.csv", "--map=Nowhere=torque"));
    assertEquals(1, imported("mended.csv", "--map=D=-"));
    assertTrue(err.toString().contains("TAB-016 mended.csv C12"), err::toString);
    assertEquals(2, imported("mended.csv", "--set=tolerance"));
  }

  @Test
  @DisplayName("gives the row of what the rules and the check of procedures find")
  void findings() throws IOException {
    String text =
        Files.readString(
            TABLES.resolve("mended.csv"), java.nio.charset.Charset.forName("windows-1252"));
    Path file = folder.resolve("t.csv");
    Files.writeString(file, text.replace(";70 Nm", ";300 Nm"));
    String[] command = {
      "import",
      file.toString(),
      "--source=invented",
      "--set=side=both",
      "--set=hardware=nut",
      "--preview"
    };
    assertEquals(1, run(command));
    assertTrue(err.toString().contains("PRO-038 t.csv row 16: found 300 N·m"), err::toString);
    Files.writeString(file, text.replace("Ride height", "any"));
    assertEquals(3, run(command));
    assertTrue(out.toString().contains("CHK-005 t.csv row 12: found "), out::toString);
  }
}
