package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.procedure.Step;

@DisplayName("A question at the keyboard")
class NewAgainTest extends AskedAtKeyboard {
  @Test
  @DisplayName("has none before the first")
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
    "65 ± 3 Nm, 60-70-80 Nm, TAB-017",
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
  @DisplayName("is asked again if its answer cannot be taken, with the code, and no other is")
  void again(String right, String wrong, String code) throws Exception {
    String typed = HEAD + BUSH;
    int at = typed.indexOf("\n" + right + "\n") + 1;
    String all = typed.substring(0, at) + wrong + "\n" + typed.substring(at) + "\nyes\n";
    assertEquals(0, asked(all), out + "\n" + err);
    assertTrue(out.toString().contains("  " + code + " found "), out.toString());
    assertEquals(2, fastener().variants().size());
  }

  @Test
  @DisplayName("for a reason comes if a bush of the same arm is tightened otherwise")
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
}
