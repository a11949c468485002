package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.App;
import org.undercall.adapter.files.ProcedureFile;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Wheels;
import picocli.CommandLine;

@DisplayName("A procedure asked for at the keyboard")
class NewCommandTest {
  private static final String HEAD =
      """
      Rear axle, a trial
      Invented van
      Undercall project

      invented for demonstration


      wrench 2
      40 Nm
      210 Nm
      2026-03-31



      """;
  private static final String BUSH =
      """
      fasten
      Arm bush bolt
      M12x1.5

      18

      yes
      as delivered
      bonded bush

      ride height
      10.9
      65 ± 3 Nm
      60 ± 5 deg
      -
      8.8
      52 +/- 3 Nm
      -



      """;
  private static final String REST =
      """
      phase
      measure
      both
      measure
      Hub centre to arch
      mm
      300
      450

      yes
      10
      Measure on level ground.

      do
      Take the wheel off
      Does the car stand on its stands?
      off
      yes

      wait
      Let the sealant set
      600

      load
      ride height
      yes


      hand-over
      Check the torque of the wheel bolts again
      after 50 km

      done
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int asked(String typed, String... options) {
    Clock clock = Clock.fixed(Instant.parse("2026-06-01T09:00:00Z"), ZoneOffset.UTC);
    List<String> args = new ArrayList<>(List.of(file().toString()));
    args.addAll(List.of(options));
    return run(new CommandLine(new NewCommand(new StringReader(typed), clock)), args);
  }

  private int run(CommandLine line, List<String> args) {
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(
        (fault, command, parsed) -> {
          command.getErr().println(fault.getMessage());
          return 1;
        });
    return line.execute(args.toArray(String[]::new));
  }

  private Path file() {
    return folder.resolve("new.json");
  }

  private Path kept() {
    return folder.resolve("new.json.csv");
  }

  private Procedure written() throws Exception {
    return ProcedureFile.load(file()).procedure();
  }

  private Fastener fastener() throws Exception {
    return ((Step.Fasten) written().phases().get(0).steps().get(0)).fastener();
  }

  @Test
  @DisplayName("is shown, written, and clean under the check")
  void clean() throws Exception {
    assertEquals(0, asked(HEAD + BUSH + "\nyes\n"), out + "\n" + err);
    assertEquals("Rear axle, a trial", written().about().title());
    assertEquals(2, fastener().variants().size());
    assertEquals(2, fastener().variants().get(0).stages().size());
    assertTrue(out.toString().contains("Lay out before you start"), out.toString());
    assertTrue(out.toString().contains("The check finds nothing."), out.toString());
    assertFalse(Files.exists(kept()));
  }

  @Test
  @DisplayName("has steps of every kind, in phases for each side and for the car")
  void kinds() throws Exception {
    int status = asked(HEAD + BUSH + REST + "yes\n");
    assertTrue(status == 0 || status == 3, out + "\n" + err);
    List<Step> steps = written().phases().get(1).steps();
    assertEquals(5, steps.size());
    assertTrue(((Step.Measure) steps.get(0)).notesRideHeight());
    assertEquals(List.of("Measure on level ground."), steps.get(0).head().cautions());
    assertEquals(Wheels.REMOVED, ((Step.Do) steps.get(1)).wheels());
    assertTrue(steps.get(1).head().changesLoad());
    assertEquals(600, ((Step.Wait) steps.get(2)).time().toSeconds());
    assertTrue(((Step.Load) steps.get(3)).byWheels());
    assertEquals("after 50 km", ((Step.HandOver) steps.get(4)).due());
    assertEquals("10", written().rideHeight().orElseThrow().plusMinus().toPlainString());
  }

  @Test
  @DisplayName("is the same after export and import")
  void roundTrip() throws Exception {
    asked(HEAD + BUSH + REST + "yes\n");
    String csv = folder.resolve("t.csv").toString();
    String again = folder.resolve("again.json").toString();
    assertEquals(0, run(App.commandLine(), List.of("export", file().toString(), "--csv", csv)));
    run(App.commandLine(), List.of("import", csv, "--out", again, "--despite-findings"));
    assertEquals(written(), ProcedureFile.load(Path.of(again)).procedure());
  }

  @Test
  @DisplayName("goes back as often as is said, and tells what is asked and what is there")
  void commands() throws Exception {
    String typed =
        HEAD + BUSH.replace("M12x1.5\n", "?\nM14x1.5\nback\nback\nArm bush bolt\nM12x1.5\nlist\n");
    assertEquals(0, asked(typed + "back\nback\n\n\n\nyes\n"), out + "\n" + err);
    assertEquals("M12x1.5", fastener().thread());
    assertTrue(out.toString().contains("  Diameter and pitch, as"), out.toString());
    assertTrue(out.toString().contains("  Thread with pitch: M12x1.5"), out.toString());
    assertTrue(out.toString().contains("  tool; wrench 2; 40; 210; Nm; 2026-03-31"), out + "");
  }

  @Test
  @DisplayName("has nothing before its first question")
  void nothingBefore() {
    assertEquals(1, asked("back\n"));
    assertTrue(out.toString().contains("NEW-005 "), out.toString());
  }

  @ParameterizedTest(name = "{2}: {1} for {0}")
  @CsvSource({
    "M12x1.5, M12, TAB-021",
    "M12x1.5, '', NEW-001",
    "M12x1.5, -, NEW-001",
    "65 ± 3 Nm, 65 Nm, TAB-016",
    "65 ± 3 Nm, 60-70 Nm, TAB-015",
    "65 ± 3 Nm, 65 ± 3, TAB-012",
    "65 ± 3 Nm, 6.5 ± 0.3 kgm, TAB-013",
    "65 ± 3 Nm, '1,234 ± 3 Nm', TAB-011",
    "65 ± 3 Nm, 300 ± 3 Nm, PRO-038",
    "65 ± 3 Nm, 65 ± 70 Nm, PRO-036",
    "65 ± 3 Nm, 60 ± 5°, PRO-034",
    "60 ± 5 deg, 60 ± 5, TAB-011",
    "60 ± 5 deg, none at all, TAB-010",
    "10.9, 10. Sep, TAB-017",
    "10.9, 11.9, TAB-022",
    "8.8, 10.9, TAB-024",
    "18, eighteen, TAB-010",
    "fasten, tighten, NEW-002",
    "fasten, d, NEW-002",
    "fasten, done, NEW-004",
    "ride height, anyhow, NEW-002",
    "ride height, '', NEW-001",
    "as delivered, '', NEW-001",
    "yes, maybe, NEW-002",
    "invented for demonstration, '', NEW-001",
    "40 Nm, forty, TAB-010",
    "40 Nm, 40, TAB-013",
    "210 Nm, 30 Nm, PRO-039",
    "210 Nm, 210 lbf, TAB-010",
    "2026-03-31, 31.3.2026, PRO-018"
  })
  @DisplayName("asks again for what cannot be taken, with its code, and for nothing else")
  void again(String right, String wrong, String code) throws Exception {
    String typed = HEAD + BUSH;
    int at = typed.indexOf("\n" + right + "\n") + 1;
    String all = typed.substring(0, at) + wrong + "\n" + typed.substring(at) + "\nyes\n";
    assertEquals(0, asked(all), out + "\n" + err);
    assertTrue(out.toString().contains("  " + code + " found "), out.toString());
    assertEquals(2, fastener().variants().size());
  }

  @Test
  @DisplayName("asks for a reason if a bush of the same arm is tightened otherwise")
  void reason() throws Exception {
    String other =
        BUSH.replace("Arm bush bolt", "Rear bush bolt")
            .replace("bonded bush\n\nride height", "bonded bush\nlower arm\nfull droop\nsays so");
    String first = BUSH.replace("bonded bush\n\n", "bonded bush\nlower arm\n");
    assertEquals(0, asked(HEAD + first + other + "done\nyes\n"), out + "\n" + err);
    Step.Fasten second = (Step.Fasten) written().phases().get(0).steps().get(1);
    assertEquals("says so", second.fastener().joint().reason().orElseThrow());
  }

  @Test
  @DisplayName("takes a set with its order, and a nut with its class")
  void set() throws Exception {
    String bolts =
        """
        fasten
        wheel nuts
        M12x1.5
        nut
        10
        19
        5
        1-2-3
        1-3-5-2-4
        no
        dry
        rigid
        any
        yes
        -
        110 ± 5 Nm
        -


        """;
    int status = asked(HEAD + bolts + "done\nyes\n");
    assertEquals(3, status, out + "\n" + err);
    assertEquals(List.of(1, 3, 5, 2, 4), fastener().set().order());
    assertTrue(fastener().joint().wheel());
    assertEquals("10", fastener().joint().nutClass().orElseThrow());
    assertTrue(out.toString().contains("  PRO-037 found [1,2,3]"), out.toString());
  }

  @Test
  @DisplayName("does not let two steps become one fastener")
  void twice() throws Exception {
    String second = BUSH.replace("10.9", "9.8").replace("8.8", "5.8");
    int end = second.length() - 3;
    String typed = HEAD + BUSH + second.substring(0, end) + "\n\nTighten it again\n\n";
    int status = asked(typed + "done\nyes\n");
    assertTrue(status == 0 || status == 3, out + "\n" + err);
    assertTrue(out.toString().contains("NEW-003 "), out.toString());
    assertEquals(2, written().phases().get(0).steps().size());
  }

  @Test
  @DisplayName("that is broken off is kept as a table that import reads, and taken up again")
  void brokenOff() throws Exception {
    String begun = "fasten\nSecond bush bolt\nM14x1.5\n";
    assertEquals(1, asked(HEAD + BUSH + begun));
    assertFalse(Files.exists(file()));
    String other = folder.resolve("other.json").toString();
    List<String> imported = List.of("import", kept().toString(), "--out", other);
    assertEquals(0, run(App.commandLine(), imported), out + "\n" + err);
    assertEquals(1, ProcedureFile.load(Path.of(other)).procedure().phases().get(0).steps().size());

    String rest = BUSH.substring(BUSH.indexOf("M12x1.5") + 8).replace("ride height", "ride height");
    assertEquals(0, asked("\n" + rest + "done\nyes\n"), out + "\n" + err);
    assertEquals(2, written().phases().get(0).steps().size());
    Step.Fasten second = (Step.Fasten) written().phases().get(0).steps().get(1);
    assertEquals("M14x1.5", second.fastener().thread());
    assertFalse(Files.exists(kept()));
  }

  @Test
  @DisplayName("that is broken off anywhere and taken up is the same as in one go")
  void anywhere() throws Exception {
    String all = HEAD + BUSH + REST + "yes\n";
    asked(all);
    Procedure whole = written();
    List<String> lines = all.lines().toList();
    for (int cut = 1; cut < lines.size(); cut += 3) {
      Files.delete(file());
      String first = String.join("\n", lines.subList(0, cut)) + "\n";
      String rest = "yes\n" + String.join("\n", lines.subList(cut, lines.size())) + "\n";
      assertEquals(1, asked(first), out + "");
      asked(rest);
      assertTrue(Files.exists(file()), "cut after " + lines.get(cut - 1) + "\n" + out);
      assertEquals(whole, written(), "cut after " + lines.get(cut - 1));
    }
  }

  @Test
  @DisplayName("puts aside what was kept if it is not wanted")
  void aside() throws Exception {
    asked(HEAD + "stop\n");
    String before = Files.readString(kept());
    assertEquals(0, asked("no\n" + HEAD + BUSH + "done\nyes\n"), out + "\n" + err);
    assertEquals(before, Files.readString(folder.resolve("new.json.csv.old")));
  }

  @Test
  @DisplayName("is not taken up from a table that is doubtful, or holds more than is asked for")
  void changed() throws Exception {
    asked(HEAD + BUSH + "stop\n");
    String table = Files.readString(kept());
    Files.writeString(kept(), table.replace("M12x1.5", "M12"));
    assertEquals(1, asked("yes\n"));
    assertTrue(err.toString().contains("TAB-021 new.json.csv "), err.toString());
    Files.writeString(
        kept(),
        table.replace("phase,side", "id,phase,side").replace("\r\ntighten", "\r\nx,tighten"));
    assertEquals(1, asked("yes\n"));
    assertTrue(err.toString().contains("NEW-006 new.json.csv"), err.toString());
  }

  @Test
  @DisplayName("is not written over a file that is there, and is asked nothing then")
  void refused() throws Exception {
    Files.writeString(file(), "mine");
    assertEquals(1, asked(HEAD + BUSH));
    assertEquals("mine", Files.readString(file()));
    assertTrue(err.toString().contains("TAB-029"), err.toString());
    assertFalse(Files.exists(kept()));
    assertEquals(0, asked(HEAD + BUSH + "done\nyes\n", "--force"), out + "\n" + err);
  }

  @Test
  @DisplayName("is written only when that is wanted")
  void notWanted() {
    assertEquals(1, asked(HEAD + BUSH + "done\nperhaps\nno\n"));
    assertTrue(out.toString().contains("NEW-002 found \"perhaps\""), out.toString());
    assertTrue(Files.exists(kept()));
    assertFalse(Files.exists(file()));
  }
}
