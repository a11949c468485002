package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Wheels;

@DisplayName("A procedure asked for at the keyboard")
class NewCommandTest extends AskedAtKeyboard {
  @Test
  @DisplayName("is shown, written, and checked")
  void clean() throws Exception {
    assertEquals(0, asked(HEAD + BUSH + "\nyes\n"), out + "\n" + err);
    assertEquals("Rear axle, a trial", written().about().title());
    assertEquals(2, fastener().variants().size());
    assertEquals(2, fastener().variants().get(0).stages().size());
    assertTrue(out.toString().contains("Lay out before you start"), out.toString());
    assertTrue(out.toString().contains("10.9 at 65 N·m + 60° clamps about"), out.toString());
    assertTrue(out.toString().contains("Found: 1"), out.toString());
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
    assertEquals(Optional.of("check the torque"), steps.get(4).head().brief());
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
  @DisplayName("asks for more about a wrench and a joint only where the check can judge by it")
  void joint() throws Exception {
    String head = HEAD.replace("2026-03-31\n\n", "2026-03-31\n1.8\n");
    String bush =
        BUSH.replace("as delivered\n\n", "as delivered\n0.10 to 0.14\n")
            .replace("60 ± 5 deg\n-\n\n\n", "45 ± 5 deg\n45 ± 5 deg\n-\nyes\n64\n");
    String wheel =
        """
        fasten
        wheel bolts
        M14x1.5

        17
        5
        1-3-5-2-4
        no
        no
        dry
        rigid
        any
        yes
        cone
        60
        -
        120 ± 5 Nm
        -


        """;
    int status = asked(head + bush + wheel + "done\nyes\n");
    assertTrue(status == 0 || status == 3, out + "\n" + err);
    assertEquals("1.8", written().tools().get(0).uncertainty().orElseThrow().toPlainString());
    var sizes = fastener().joint().sizes();
    assertEquals("64", sizes.clamped().orElseThrow().length().toPlainString());
    assertEquals("0.14", sizes.friction().orElseThrow().seat().most().toPlainString());
    var stages = fastener().variants().get(0).stages();
    assertEquals(
        List.of(Optional.empty(), Optional.of(true)),
        stages.stream()
            .filter(Stage.AngleStage.class::isInstance)
            .map(stage -> ((Stage.AngleStage) stage).beyondYield())
            .toList());
    Step.Fasten wheels = (Step.Fasten) written().phases().get(0).steps().get(1);
    var seat = wheels.fastener().joint().sizes().seat().orElseThrow();
    assertEquals("60", seat.angle().orElseThrow().toPlainString());
    assertEquals(1, out.toString().split("Clamped length", -1).length - 1, out.toString());
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
}
