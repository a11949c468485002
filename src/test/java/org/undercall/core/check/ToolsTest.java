package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Tool;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;

@DisplayName("The wrenches of a procedure")
class ToolsTest {

  private static String tools(String... more) {
    StringBuilder tools = new StringBuilder();
    for (int i = 0; i < more.length; i++) {
      tools.append(i == 0 ? "" : ", ").append("{'id': 'w").append(i).append("', 'unit': 'N·m', ");
      tools.append(more[i]).append('}');
    }
    return "'tools': [" + tools + "]";
  }

  private static List<String> told(String more, Map<String, Integer> uses) throws Fault {
    return Job.findings(more, uses).stream()
        .map(f -> f.rule().code() + " " + f.pointer() + ": " + f.found() + "; " + f.expected())
        .toList();
  }

  @Nested
  @DisplayName("are calibrated")
  class Calibrated {
    private static final String OLD = "'least': 10, 'most': 210, 'calibrated': '2025-06-01'";
    private static final String NEW = "'least': 1, 'most': 30, 'calibrated': '2025-06-02'";

    @Test
    @DisplayName("within twelve months, each with its own place")
    void byDay() throws Fault {
      assertEquals(
          List.of(
              "CHK-016 /tools/1/calibrated: w1 calibrated on 2025-06-01;"
                  + " a day up to 12 months before 2026-06-01"),
          told(tools(NEW, OLD), Map.of()));
    }

    @Test
    @DisplayName("within 5000 uses, as far as they were counted")
    void byUses() throws Fault {
      String tools = tools("'least': 10, 'most': 210", NEW);
      assertEquals(
          List.of(
              "CHK-016 /tools/1/calibrated: w1 used 5000 times since its calibration;"
                  + " less than 5000 uses"),
          told(tools, Map.of("w1", 5000, "w0", 6000)));
      assertEquals(List.of(), told(tools, Map.of("w1", 4999)));
      assertEquals(List.of(), told(tools, Map.of("w0", 6000)), "no day is stated");
    }

    @Test
    @DisplayName("with an uncertainty of at most what the standard permits: 4 %, up to 10 N·m 6 %")
    void uncertain() throws Fault {
      String large = "'least': 10, 'most': 210, 'uncertainty': ";
      String small = "'least': 1, 'most': 10, 'uncertainty': ";
      assertEquals(List.of(), told(tools(large + "4", small + "6"), Map.of()));
      assertEquals(
          List.of(
              "CHK-066 /tools/0/uncertainty: w0 with 4.1 %; at most 4 %",
              "CHK-066 /tools/1/uncertainty: w1 with 6.5 %; at most 6 %"),
          told(tools(large + "4.1", small + "6.5"), Map.of()));
    }
  }

  @Nested
  @DisplayName("cover a torque")
  class Cover {

    /** As long as the wrench it halves the setting; half as long and turned back it doubles it. */
    @ParameterizedTest
    @CsvSource({"20, 0, 10, 0", "18, 0, 9, 1", "105, 180, 210, 0", "110, 180, 220, 1"})
    @DisplayName("from their least to their most, as it is set with an adaptor")
    void ends(String torque, int angle, String setting, int count) throws Fault {
      String extension = angle == 0 ? "400" : "200";
      String stages =
          "'stages': [{'torque': "
              + torque
              + ", 'unit': 'N·m', 'plusMinus': 4, 'adaptor': {'wrench': 400, 'extension': "
              + extension
              + ", 'angle': "
              + angle
              + ", 'unit': 'mm'}}]";
      Procedure procedure =
          Job.procedure(
              tools("'least': 10, 'most': 210", "'least': 300, 'most': 500"),
              Job.car(Job.fasten("one", "the bolt", stages)));
      List<String> told =
          ProcedureCheck.of(procedure, Job.DAY).stream()
              .filter(f -> f.rule() == CheckRule.TOOL_AT_ITS_END)
              .map(f -> f.found() + ": " + f.expected())
              .toList();
      String expected =
          setting + " N·m: a setting within a wrench: 10 N·m to 210 N·m, 300 N·m to 500 N·m";
      assertEquals(count == 0 ? List.of() : List.of(expected), told);
    }
  }

  @Nested
  @DisplayName("deviate")
  class Deviate {
    private static final Torque HUNDRED = Torque.newtonMetres("100");

    private static Tool tool(String least, String most, String uncertainty) {
      return new Tool(
          "w",
          Tool.Kind.CLICKING,
          Torque.newtonMetres(least),
          Torque.newtonMetres(most),
          Optional.empty(),
          Optional.ofNullable(uncertainty).map(BigDecimal::new));
    }

    private static double percent(String torque, Tool... tools) {
      return ToolRules.wrench(List.of(tools), Torque.newtonMetres(torque)).percent();
    }

    @Test
    @DisplayName("by what the certificate states, or by what the standard permits")
    void stated() {
      assertEquals(4, percent("100", tool("10", "210", null)));
      assertEquals(2.5, percent("100", tool("10", "210", "2.5")));
      assertEquals(6, percent("8", tool("1", "10", null)));
      assertEquals(4, percent("8", tool("1", "30", null)), "its largest torque counts");
    }

    @Test
    @DisplayName("by that of the best which covers the torque")
    void best() {
      Tool good = tool("10", "210", "2");
      Tool bad = tool("10", "210", "3");
      assertEquals(2, percent("100", bad, good));
      assertEquals(2, percent("100", good, bad));
      assertEquals(3, percent("100", bad, tool("150", "300", "1")));
      assertEquals(Optional.empty(), ToolRules.deviation(List.of(), HUNDRED));
    }

    @Test
    @DisplayName("by what the standard permits where none covers it")
    void none() {
      assertEquals(4, percent("100"));
      assertEquals(6, percent("8", tool("10", "210", "1")));
    }
  }
}
