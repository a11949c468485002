package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.files.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import picocli.CommandLine;

@DisplayName("A procedure asked for at the keyboard")
class NewCommandTest {
  private final String head =
      """
      Rear axle, a trial
      Invented van
      Undercall project

      invented for demonstration

      wrench 2; 40; 210; Nm; %s
      """
          .formatted(LocalDate.now(ZoneId.systemDefault()).minusDays(30));
  private static final String FASTENER =
      """
      Arm bolt

      M12x1.5

      10.9
      65 ± 3 Nm
      60 ± 5
      18
      ride height
      bonded bush
      yes

      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int asked(String typed, String... options) {
    CommandLine line = new CommandLine(new NewCommand(new StringReader(typed)));
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    line.setExecutionExceptionHandler(
        (fault, command, parsed) -> {
          command.getErr().println(fault.getMessage());
          return 1;
        });
    List<String> args = new ArrayList<>(List.of(file().toString()));
    args.addAll(List.of(options));
    return line.execute(args.toArray(String[]::new));
  }

  private Path file() {
    return folder.resolve("new.json");
  }

  private Procedure written() throws Exception {
    return ProcedureFile.load(file()).procedure();
  }

  @Test
  @DisplayName("is written, and clean under the check")
  void clean() throws Exception {
    assertEquals(0, asked(head + FASTENER + "\n"), out + "\n" + err);
    assertEquals("Rear axle, a trial", written().about().title());
    assertEquals(1, written().phases().size());
    assertTrue(Files.readString(file()).contains("ride-height"));
  }

  @Test
  @DisplayName("asks again for what cannot be taken, and for nothing else")
  void again() throws Exception {
    String wrong =
        FASTENER.replace("M12x1.5", "M12").replace("65 ± 3 Nm", "65 Nm") + "M12x1.5\n65 ± 3 Nm\n";
    assertEquals(0, asked(head + wrong + "\n"), out + "\n" + err);
    assertTrue(out.toString().contains("TAB-021 found \"M12\", expected"), out.toString());
    assertTrue(out.toString().contains("TAB-016 "), out.toString());
    assertEquals(1, written().phases().get(0).steps().size());
  }

  @Test
  @DisplayName("asks again for a wrench that cannot be taken, and for a blank that must be filled")
  void wrench() throws Exception {
    String wrong = head.replace("wrench 2; 40", "\nwrench 2; forty\nwrench 2; 40");
    assertEquals(0, asked(wrong + FASTENER + "\n"), out + "\n" + err);
    assertTrue(out.toString().contains("found nothing, expected an answer"), out.toString());
    assertTrue(out.toString().contains("TAB-"), out.toString());
  }

  @Test
  @DisplayName("that is broken off is kept as a table that import reads")
  void brokenOff() throws Exception {
    assertEquals(1, asked(head + FASTENER + "Second bolt\n\nM14x1.5\n"));
    assertFalse(Files.exists(file()));
    Path kept = folder.resolve("new.json.csv");
    CommandLine line = new CommandLine(new ImportCommand());
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    int status = line.execute(kept.toString(), "--out", file().toString());
    assertEquals(0, status, out + "\n" + err);
    assertEquals("Rear axle, a trial", written().about().title());
  }

  @Test
  @DisplayName("is not written over a file that is there, and needs a fastener")
  void refused() throws Exception {
    Files.writeString(file(), "mine");
    assertEquals(1, asked(head + FASTENER + "\n"));
    assertEquals("mine", Files.readString(file()));
    assertTrue(err.toString().contains("TAB-029"), err.toString());
    assertFalse(out.toString().contains("Title"), "refused before anything is asked");
    Files.delete(file());
    assertEquals(1, asked(head + "\n"));
    assertTrue(err.toString().contains("USE-001"), err.toString());
  }
}
