package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.port.Fault;
import picocli.CommandLine;

@DisplayName("The command export")
class ExportCommandTest {
  private static final Path PROCEDURES = Path.of("shared/procedures");

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return line.execute(arguments);
  }

  @Test
  @DisplayName("writes a table of which import makes the same procedure")
  void roundTrip() throws Fault {
    Path procedure = PROCEDURES.resolve("front-control-arms.json");
    String table = folder.resolve("t.csv").toString();
    String again = folder.resolve("again.json").toString();
    assertEquals(0, run("export", procedure.toString(), "--csv", table), err::toString);
    int status = run("import", table, "--out", again, "--despite-findings");
    assertTrue(status == 0 || status == 3, err::toString);
    assertEquals(
        ProcedureFile.load(procedure).procedure(), ProcedureFile.load(Path.of(again)).procedure());
  }

  @Test
  @DisplayName("leaves nothing that a spreadsheet would calculate, and still gives it back")
  void formulas() throws IOException, Fault {
    String text = Files.readString(PROCEDURES.resolve("demo-lateral-link.json"));
    Path evil =
        Files.writeString(
            folder.resolve("evil.json"),
            text.replace("Run the new bush bolt in by hand", "=HYPERLINK(1)")
                .replace("Tighten the joint nut", "@SUM, \\\"+1\\\"")
                .replace("wrench 1", "+1"));
    String table = folder.resolve("evil.csv").toString();
    assertEquals(0, run("export", evil.toString(), "--csv", table), err::toString);
    String csv = Files.readString(Path.of(table));
    assertTrue(csv.contains("'=HYPERLINK(1)") && csv.contains("'@SUM") && csv.contains("'+1"), csv);
    assertTrue(csv.lines().noneMatch(l -> l.matches("(.*,)?\"?[=+@].*")), csv);
  }

  @Test
  @DisplayName("says if a word does not come back as it was")
  void changed() throws IOException {
    String text = Files.readString(PROCEDURES.resolve("demo-lateral-link.json"));
    Path odd =
        Files.writeString(
            folder.resolve("odd.json"), text.replace("Tighten the joint nut", "Tighten  the nut"));
    assertEquals(3, run("export", odd.toString(), "--csv"));
    assertTrue(err.toString().contains("Not in the table: a word or blank"), err::toString);
  }
}
