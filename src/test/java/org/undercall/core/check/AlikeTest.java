package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.undercall.core.check.Job.car;
import static org.undercall.core.check.Job.fasten;
import static org.undercall.core.check.Job.found;
import static org.undercall.core.check.Job.phase;
import static org.undercall.core.check.Job.step;
import static org.undercall.core.check.Job.torque;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.port.Fault;

@DisplayName("Steps that are alike")
class AlikeTest {

  private static String only(List<Finding> findings) {
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0).found() + "; " + findings.get(0).expected();
  }

  @Nested
  @DisplayName("have one torque")
  class Torques {

    private static String[] both(String one, String other, String plusMinus) {
      return new String[] {
        car(
            fasten("one", "the bolt", torque(one, plusMinus)),
            fasten("other", "the bolt", torque(other, plusMinus)))
      };
    }

    @ParameterizedTest(name = "{0} and {1} N·m: {2}")
    @CsvSource({
      "60, 90, ''",
      "60, 90.1, CHK-020",
      "90, 60, ''",
      "90.1, 60, CHK-020",
      // one lbf·ft is 1.35582 N·m: within 1 in 100 it is taken for a slip
      "60, 81.35, CHK-045",
      "81.35, 60, CHK-045",
      "60, 80.6, CHK-045",
      "60, 80.5, ''",
      "60, 82.1, CHK-045",
      "60, 82.2, ''"
    })
    @DisplayName("within one and a half, and not apart by the factor of two units")
    void ratio(String one, String other, String code) throws Fault {
      List<String> expected =
          code.isEmpty()
              ? List.of()
              : List.of(code + " /phases/0/steps/1/fastener/variants/0/stages/0/torque");
      assertEquals(expected, found(both(one, other, "4")));
    }

    @Test
    @DisplayName("and the finding names both, and the step of the first")
    void told() throws Fault {
      assertEquals(
          "95 N·m; about 60 N·m, as in step \"one\"", only(Job.findings(both("60", "95", "4"))));
      assertEquals(
          "81.35 N·m, a ratio of lbf·ft to N·m; about 60 N·m, as in step \"one\"",
          only(Job.findings(both("60", "81.35", "4"))));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "the bolt | 'thread': 'M12x1.75'",
          "the bolt | 'lubrication': 'as-delivered'",
          "the other bolt | 'thread': 'M12x1.5'"
        })
    @DisplayName("unless thread, state or name are others")
    void unlike(String name, String more) throws Fault {
      assertEquals(
          List.of(),
          found(
              car(
                  fasten("one", "the bolt", torque("50", "4")),
                  fasten("other", name, torque("80", "4") + ", " + more))));
    }

    @Test
    @DisplayName("for each head marking by itself")
    void markings() throws Fault {
      String two =
          "'variants': [{'marking': '8.8', 'stages': [{'torque': 60, 'unit': 'N·m', 'plusMinus':"
              + " 4}]}, {'marking': '10.9', 'stages': [{'torque': 85, 'unit': 'N·m', 'plusMinus':"
              + " 5}]}]";
      assertEquals(
          List.of(), found(car(fasten("one", "the bolt", two), fasten("other", "the bolt", two))));
    }

    @Test
    @DisplayName("that of the last stage, not of the first")
    void lastStage() throws Fault {
      String staged =
          "'stages': [{'torque': 20, 'unit': 'N·m', 'plusMinus': 2},"
              + " {'torque': 70, 'unit': 'N·m', 'plusMinus': 4}]";
      assertEquals(
          List.of(),
          found(car(fasten("one", "the bolt", staged), fasten("other", "the bolt", ""))));
    }
  }

  @Nested
  @DisplayName("have an angle, or none")
  class Angles {
    private static final String ANGLE =
        "'oneTimeUse': true, 'variants': [{'marking': '10.9', 'stages': [{'torque': 60, 'unit':"
            + " 'N·m', 'plusMinus': 4}, {'angle': 60, 'plusMinus': 5}]}]";

    private static String alone(String torque) {
      return "'oneTimeUse': true, 'variants': [{'marking': '10.9', 'stages': [{'torque': "
          + torque
          + ", 'unit': 'N·m', 'plusMinus': 4}]}]";
    }

    private static List<String> angles(String one, String other) throws Fault {
      return found(car(fasten("one", "the bolt", one), fasten("other", "the bolt", other))).stream()
          .filter(f -> !f.startsWith("CHK-047"))
          .toList();
    }

    @Test
    @DisplayName("and the one without is found, whichever comes first")
    void missing() throws Fault {
      String where = "/fastener/variants/0/stages/0/torque";
      assertEquals(List.of("CHK-046 /phases/0/steps/1" + where), angles(ANGLE, alone("60")));
      assertEquals(List.of("CHK-046 /phases/0/steps/0" + where), angles(alone("60"), ANGLE));
      Finding finding =
          Job.findings(
                  car(fasten("one", "the bolt", alone("70")), fasten("other", "the bolt", ANGLE)))
              .stream()
              .filter(f -> f.rule() == CheckRule.LIKE_WITHOUT_ANGLE)
              .findFirst()
              .orElseThrow();
      assertEquals("70 N·m alone", finding.found());
      assertEquals("an angle after it, as in step \"other\"", finding.expected());
    }

    @ParameterizedTest
    @CsvSource({"89, 1", "90, 0", "40.1, 1", "40, 0"})
    @DisplayName("where the torque is about the same, so that it can be the same job")
    void aboutTheSame(String torque, int count) throws Fault {
      assertEquals(count, angles(ANGLE, alone(torque)).size());
      assertEquals(count, angles(alone(torque), ANGLE).size());
    }
  }

  @Nested
  @DisplayName("left and right")
  class Sides {
    private static final String RIGHT = "/phases/0/steps/1/fastener/variants/0/stages/0/torque";

    private static List<String> sides(String one, String other, String left, String right)
        throws Fault {
      return found(
          car(
              fasten(one, "Tighten it", left, torque("60", "4")),
              fasten(other, "Tighten it as well", right, torque("70", "4"))));
    }

    @Test
    @DisplayName("have one torque; two whose tolerances part are found")
    void apart() throws Fault {
      assertEquals(
          List.of("CHK-064 " + RIGHT), sides("one", "other", "left arm bolt", "right arm bolt"));
      assertEquals(
          List.of("CHK-064 " + RIGHT), sides("bolt-right", "bolt-left", "arm bolt", "arm bolt"));
    }

    @Test
    @DisplayName("may differ within their tolerances")
    void within() throws Fault {
      for (String plusMinus : List.of("5", "6")) {
        assertEquals(
            List.of(),
            found(
                car(
                    fasten("one", "left arm bolt", torque("60", plusMinus)),
                    fasten("other", "right arm bolt", torque("70", plusMinus)))));
        assertEquals(
            List.of(),
            found(
                car(
                    fasten("one", "left arm bolt", torque("70", plusMinus)),
                    fasten("other", "right arm bolt", torque("60", plusMinus)))));
      }
      for (String torque : List.of("60", "69", "51")) {
        assertEquals(
            torque.equals("60") ? List.of() : List.of("CHK-064 " + RIGHT),
            found(
                car(
                    fasten("one", "left arm bolt", torque("60", "4")),
                    fasten("other", "right arm bolt", torque(torque, "4")))));
      }
    }

    @Test
    @DisplayName("are told by words alone: none, one and the same, or both in one name are no pair")
    void words() throws Fault {
      assertEquals(List.of(), unlike("one", "other"));
      assertEquals(List.of(), unlike("left-1", "left-2"));
      assertEquals(List.of(), unlike("left-right", "right"));
      assertEquals(List.of(), unlike("left", "other"));
      assertEquals(List.of("CHK-064 " + RIGHT), unlike("left", "right"));
    }

    private static List<String> unlike(String one, String other) throws Fault {
      return sides(one, other, "arm bolt", "arm bolt").stream()
          .filter(f -> f.startsWith("CHK-064"))
          .toList();
    }

    @Test
    @DisplayName("are told by the corner of the step as well")
    void corner() throws Fault {
      String left = fasten("one", "arm bolt", torque("60", "4"));
      String right = fasten("other", "arm bolt", torque("70", "4"));
      assertEquals(
          List.of("CHK-064 " + RIGHT),
          found(
              car(
                  left.replaceFirst("\\{", "{'corner': 'front-left',"),
                  right.replaceFirst("\\{", "{'corner': 'front-right',"))));
      assertEquals(
          List.of(),
          found(
              car(
                  left.replaceFirst("\\{", "{'corner': 'front-left',"),
                  right.replaceFirst("\\{", "{'corner': 'rear-left',"))));
    }
  }

  @Nested
  @DisplayName("name a side")
  class Named {

    private static List<String> titles(String... titles) throws Fault {
      String[] steps = new String[titles.length];
      for (int i = 0; i < titles.length; i++) {
        steps[i] = step("s" + i, "do", titles[i], "");
      }
      return found(car(steps));
    }

    @Test
    @DisplayName("once for the car only with one for the other side")
    void alone() throws Fault {
      assertEquals(List.of("CHK-009 /phases/0/steps/0/title"), titles("Wipe the left arm"));
      assertEquals(List.of("CHK-009 /phases/0/steps/0/title"), titles("Wipe the right arm"));
      assertEquals(List.of(), titles("Wipe the left arm", "Wipe the right arm"));
      assertEquals(List.of(), titles("Wipe the left and the right arm"));
      assertEquals(List.of(), titles("Wipe the leftover grease"));
      assertEquals(
          List.of("CHK-009 /phases/0/steps/0/title", "CHK-009 /phases/0/steps/1/title"),
          titles("Wipe the left arm", "Look at the right arm"));
    }

    @Test
    @DisplayName("with a twin known by its id")
    void twin() throws Fault {
      assertEquals(
          List.of(),
          found(
              car(
                  step("arm-left", "do", "Wipe the left arm", ""),
                  step("arm-right", "do", "And now the right one", ""))));
      assertEquals(
          List.of("CHK-009 /phases/0/steps/0/id"),
          found(car(step("arm-left", "do", "Wipe it", ""))));
      assertEquals(
          List.of(),
          found(
              car(
                  step("arm-left", "do", "Wipe it", ""),
                  step("arm-right", "do", "Wipe that too", ""))));
    }

    @Test
    @DisplayName("not where the step is walked for both")
    void perSide() throws Fault {
      assertEquals(
          List.of("CHK-010 /phases/0/steps/0/title"),
          found(phase("side", step("arm", "do", "Wipe the left arm", ""))));
      assertEquals(
          List.of("CHK-010 /phases/0/steps/0/id"),
          found(phase("corner", step("arm-left", "do", "Wipe the arm", ""))));
      assertEquals(
          List.of(), found(phase("side", step("arm", "do", "Compare left with right", ""))));
      assertEquals(
          List.of("CHK-009 /phases/0/steps/0/title", "CHK-010 /phases/1/steps/0/title"),
          found(
              car(step("one", "do", "Wipe the left arm", "")),
              phase("side", step("two", "do", "Wipe the right arm", ""))),
          "a step for both sides is no twin of one for the car");
    }

    @Test
    @DisplayName("and the finding says which, and what is missing")
    void told() throws Fault {
      assertEquals(
          "\"left\" alone; another step for the car that names \"right\"",
          only(Job.findings(car(step("one", "do", "Wipe the left arm", "")))));
      assertEquals(
          "\"right\" alone; another step for the car that names \"left\"",
          only(Job.findings(car(step("one", "do", "Wipe the right arm", "")))));
    }
  }

  @Nested
  @DisplayName("hold one arm by its bushes")
  class Bushes {
    private static final String WHERE = "CHK-007 /phases/0/steps/1/fastener/needs";

    private static String bush(String id, String name, String needs, String more) {
      return fasten(id, name, "'joint': 'bonded-bush', 'needs': '" + needs + "'" + more);
    }

    private static List<String> both(String one, String other) throws Fault {
      return found(
          car(
              bush("one", "front bolt", "ride-height", one),
              bush("other", "rear bolt", "full-droop", other)));
    }

    @Test
    @DisplayName("at one load condition")
    void oneArm() throws Fault {
      assertEquals(List.of(WHERE), both(", 'arm': 'lower arm'", ", 'arm': 'Lower Arm'"));
      assertEquals(List.of(), both(", 'arm': 'lower arm'", ", 'arm': 'upper arm'"));
      assertEquals(List.of(), both("", ""));
      assertEquals(
          List.of(WHERE),
          found(
              car(
                  bush("one", "arm bolt", "ride-height", ""),
                  bush("other", "Arm bolt", "full-droop", ""))));
      assertEquals(
          List.of(),
          found(
              car(
                  bush("one", "arm bolt", "full-droop", ""),
                  bush("other", "arm bolt", "full-droop", ""))));
    }

    @Test
    @DisplayName("unless a reason is stated with either of them")
    void reason() throws Fault {
      String arm = ", 'arm': 'lower arm'";
      String why = ", 'needsReason': 'the maker says so'";
      assertEquals(List.of(), both(arm + why, arm));
      assertEquals(List.of(), both(arm, arm + why));
    }

    @Test
    @DisplayName("a joint that turns, or a bush at any load, is not compared")
    void others() throws Fault {
      String turns =
          fasten("other", "pin", "'joint': 'spherical-joint', 'needs': 'full-droop', 'arm': 'a'");
      String any = fasten("other", "pin", "'joint': 'bonded-bush', 'needs': 'any', 'arm': 'a'");
      String first = bush("one", "front bolt", "ride-height", ", 'arm': 'a'");
      assertEquals(List.of(), found(car(first, turns)));
      assertEquals(List.of("CHK-005 /phases/0/steps/1/fastener/needs"), found(car(first, any)));
    }

    @Test
    @DisplayName("and the finding names the step that it is compared with")
    void told() throws Fault {
      List<Finding> findings =
          Job.findings(
              car(
                  bush("one", "arm bolt", "ride-height", ""),
                  bush("other", "arm bolt", "full-droop", "")));
      assertEquals(
          "\"full-droop\", other than step \"one\"; the same load condition, or \"needsReason\"",
          only(findings));
    }
  }
}
