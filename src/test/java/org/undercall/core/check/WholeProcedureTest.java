package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.check.Job.AGAIN;
import static org.undercall.core.check.Job.WHEEL;
import static org.undercall.core.check.Job.car;
import static org.undercall.core.check.Job.fasten;
import static org.undercall.core.check.Job.found;
import static org.undercall.core.check.Job.step;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

@DisplayName("The check of a whole procedure")
class WholeProcedureTest {
  private static final String FASTENER = "/phases/0/steps/0/fastener";

  private static String told(List<Finding> findings) {
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0).found();
  }

  @Nested
  @DisplayName("finds")
  class Finds {

    @Test
    @DisplayName("errors first, then by the number of the rule, the same never twice")
    void sorted() throws Fault {
      List<Finding> findings =
          Job.findings(
              car(
                  fasten("one", "the bolt", "'drive': 11, 'lubrication': 'unstated'"),
                  fasten("two", "the pin", "'joint': 'bonded-bush', 'drive': 11")));
      assertEquals(
          List.of("CHK-005", "CHK-017", "CHK-021", "CHK-021"),
          findings.stream().map(f -> f.rule().code()).toList());
      assertEquals("/phases/0/steps/0/fastener/drive", findings.get(2).pointer());
      assertEquals(Optional.of(Severity.ERROR), ProcedureCheck.heaviest(findings));
      List<Finding> remarks = findings.subList(2, 4);
      assertEquals(Optional.of(Severity.REMARK), ProcedureCheck.heaviest(remarks));
      assertEquals(Optional.empty(), ProcedureCheck.heaviest(List.of()));
    }

    @Test
    @DisplayName("with a line to show")
    void line() throws Fault {
      Finding finding = Job.findings(car(fasten("one", "the bolt", "'drive': 11"))).get(0);
      assertEquals(
          "CHK-021 drive: found 11 mm for M12x1.5, expected one of [10, 15, 16, 17, 18, 19] mm",
          finding.at("drive"));
    }
  }

  @Nested
  @DisplayName("reads its cautions")
  class Cautions {

    private static List<Finding> cautions(String list) throws Fault {
      return Job.findings("'cautions': [" + list + "]", Map.of());
    }

    @Test
    @DisplayName("of which one tells that stands carry the car")
    void told() throws Fault {
      assertEquals(List.of(), cautions("'Mind your hands.', 'Stands carry the car.'"));
      assertEquals(
          "2 of which none tells it, as far as their words can be guessed",
          WholeProcedureTest.told(cautions("'Mind your hands.', 'Stands are heavy.'")));
    }

    @Test
    @DisplayName("of which none says that they are not needed, however often another tells it")
    void needless() throws Fault {
      assertEquals(
          "one that says stands are not needed, as far as its words can be guessed",
          WholeProcedureTest.told(
              cautions("'Stands carry the car.', 'No stands are needed here.'")));
      assertEquals(
          1,
          cautions(
                  "'Stands carry the car.', {'text': 'A jack is at hand.', 'brief': 'No stands are"
                      + " needed.'}")
              .size());
    }

    @ParameterizedTest
    @CsvSource({
      "Stands., 0",
      "Mind the jack., 1",
      "No stands., 1",
      "The stands are in the store., 1",
      "Never a jack without stands., 1",
      "Never work without stands., 0"
    })
    @DisplayName("of which the brief form names them still")
    void brief(String brief, int count) throws Fault {
      String caution = "{'text': 'Stands carry the car, never a jack.', 'brief': '" + brief + "'}";
      assertEquals(count, cautions(caution).size());
    }
  }

  @Nested
  @DisplayName("asks for a time to cure")
  class Cures {
    private static final String LOCKED =
        fasten("locked", "the screw", "'lubrication': 'threadlocker'");
    private static final String WAIT = step("rest", "wait", "Let it cure", "'seconds': 600");
    private static final String MARK = step("mark", "do", "Mark it", "");

    @Test
    @DisplayName("stated, or as a later step that waits")
    void waits() throws Fault {
      String where = "/fastener/lubrication";
      assertEquals(List.of("CHK-062 /phases/0/steps/0" + where), found(car(LOCKED, MARK)));
      assertEquals(List.of(), found(car(LOCKED, MARK, WAIT)));
      assertEquals(List.of("CHK-062 /phases/0/steps/1" + where), found(car(WAIT, LOCKED)));
      String cures = fasten("one", "it", "'lubrication': 'threadlocker', 'cureMinutes': 30");
      assertEquals(List.of(), found(car(cures)));
      assertEquals(List.of(), found(car(fasten("one", "it", ""))), "a dry one cures not");
    }
  }

  @Nested
  @DisplayName("knows a wheel")
  class Wheels {

    private static List<String> named(String name, int count, String thread) throws Fault {
      String more =
          "'count': " + count + ", 'thread': '" + thread + "', 'drive': 19, 'hardware': 'nut'";
      return found(
              car(fasten("one", "Tighten it", name, more + ", " + Job.torque("100", "9")), AGAIN))
          .stream()
          .filter(f -> f.startsWith("CHK-043") || f.startsWith("CHK-012"))
          .toList();
    }

    private static final List<String> GUESSED =
        List.of("CHK-012 " + FASTENER, "CHK-043 " + FASTENER + "/name");

    @ParameterizedTest
    @ValueSource(
        strings = {"lug nuts", "Lug-nuts", "rim nuts", "road wheels", "studs", "front stud nuts"})
    @DisplayName("by other words for it, of three or more, and says that they are a guess")
    void otherWords(String name) throws Fault {
      assertEquals("road wheels".equals(name) ? 1 : 2, named(name, 5, "M12x1.5").size());
      assertEquals(List.of(), named(name, 2, "M12x1.5"));
      if (!"road wheels".equals(name)) {
        assertEquals(GUESSED, named(name, 3, "M14x1.5"));
      }
    }

    @ParameterizedTest
    @CsvSource({
      "manifold studs, M12x1.5",
      "studs, M10x1.5",
      "luggage rack nuts, M12x1.5",
      "nuts, M12x1.5"
    })
    @DisplayName("and not by studs of another part, or of another thread")
    void notGuessed(String name, String thread) throws Fault {
      assertEquals(List.of(), named(name, 5, thread));
    }

    @Test
    @DisplayName("that is stated needs no word for it, one of one fastener no order")
    void stated() throws Fault {
      String one = "'wheel': true, 'thread': 'M14x1.5', 'drive': 19, " + Job.torque("130", "10");
      assertEquals(List.of(), found(car(fasten("one", "the centre bolt", one), AGAIN)));
      List<Finding> two = Job.findings(car(fasten("one", "them", one + ", 'count': 2"), AGAIN));
      assertEquals("no order for 2 wheel fasteners", told(two));
      assertEquals("a diagonal order", two.get(0).expected());
      List<Finding> five = Job.findings(car(fasten("one", "them", one + ", 'count': 5"), AGAIN));
      assertEquals("a diagonal order such as [1, 3, 5, 2, 4]", five.get(0).expected());
    }

    @Test
    @DisplayName("whose order goes round, and shows the order")
    void round() throws Fault {
      String round = WHEEL + ", 'order': [1, 2, 3, 4, 5]";
      assertEquals(
          "[1, 2, 3, 4, 5]", told(Job.findings(car(fasten("one", "wheel bolts", round), AGAIN))));
    }

    @ParameterizedTest
    @CsvSource({"oiled, 1", "greased, 1", "paste, 1", "dry, 0", "as-delivered, 0"})
    @DisplayName("whose fasteners are dry")
    void dry(String state, int count) throws Fault {
      String more = WHEEL + ", 'lubrication': '" + state + "'";
      assertEquals(
          count,
          Job.findings(car(fasten("one", "wheel bolts", more), AGAIN)).stream()
              .filter(f -> f.rule() == CheckRule.GREASED_WHEEL)
              .filter(f -> f.found().equals("\"" + state + "\""))
              .count());
    }

    @Test
    @DisplayName("that is checked again later, by a hand-over and by nothing else")
    void again() throws Fault {
      String wheel = fasten("bolts", "wheel bolts", WHEEL);
      String title = "Check the torque of the wheel bolts again";
      assertEquals(List.of(), found(car(wheel, AGAIN)));
      assertEquals(List.of("CHK-013 " + FASTENER), found(car(wheel)));
      assertEquals(
          List.of("CHK-013 " + FASTENER), found(car(wheel, step("again", "do", title, ""))));
      assertEquals(
          List.of("CHK-013 " + FASTENER),
          found(car(wheel, step("again", "hand-over", "Wash it", "'due': 'after a month'"))));
      assertEquals(
          List.of(),
          found(
              car(
                  wheel,
                  step("again", "hand-over", "Wheels", "'due': 'check their torque at 50 km'"))),
          "title and due are read together");
      assertEquals(List.of(), found(car(fasten("one", "the bolt", ""))), "no wheel");
      assertTrue(
          told(Job.findings(car(wheel)))
              .startsWith("no hand-over tells it, as far as titles can be guessed"));
    }
  }

  @Nested
  @DisplayName("knows a bush")
  class Bushes {

    private static List<String> bush(String name, String more) throws Fault {
      return found(car(fasten("one", name, more)));
    }

    @Test
    @DisplayName("that needs a load")
    void load() throws Fault {
      assertEquals(
          List.of("CHK-005 " + FASTENER + "/needs"), bush("the bolt", "'joint': 'bonded-bush'"));
      assertEquals(List.of(), bush("the bolt", "'joint': 'bonded-bush', 'needs': 'ride-height'"));
    }

    @Test
    @DisplayName("by its name where no joint is stated")
    void name() throws Fault {
      assertEquals(List.of("CHK-008 " + FASTENER + "/needs"), bush("rear Bush bolt", ""));
      assertEquals(List.of(), bush("rear bush bolt", "'joint': 'spherical-joint'"));
      assertEquals(List.of(), bush("rear bush bolt", "'needs': 'full-droop'"));
      assertEquals(List.of(), bush("ambush bolt", ""));
      assertEquals(
          "\"any\", a bush guessed from the name \"bush bolt\"",
          told(Job.findings(car(fasten("one", "bush bolt", "")))));
    }

    @Test
    @DisplayName("from a joint that turns, which needs none")
    void turns() throws Fault {
      String turns = "'joint': 'spherical-joint', 'needs': ";
      assertEquals(List.of("CHK-006 " + FASTENER + "/needs"), bush("pin", turns + "'ride-height'"));
      assertEquals(List.of(), bush("pin", turns + "'full-droop'"));
      assertEquals(List.of(), bush("pin", turns + "'any'"));
      assertEquals(List.of(), bush("pin", "'needs': 'ride-height'"));
    }
  }

  @Nested
  @DisplayName("knows a left-hand thread")
  class LeftHand {

    @ParameterizedTest
    @CsvSource({
      "Left-hand thread nut, 1",
      "left handed thread nut, 1",
      "LH thread nut, 1",
      "left-threaded nut, 1",
      "left hand nut and right hand nut, 0"
    })
    @DisplayName("by the words for it, in name or title")
    void words(String words, int count) throws Fault {
      String title = fasten("one", "Tighten it: " + words, "it", "'hardware': 'nut'");
      String name = fasten("one", "Tighten it", words, "'hardware': 'nut'");
      for (String step : List.of(title, name)) {
        assertEquals(
            count,
            found(car(step)).stream().filter(("CHK-050 " + FASTENER + "/thread")::equals).count());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "at the next inspection, 1",
    "after the wheel alignment, 1",
    "soon, 1",
    "before the car is driven away, 0",
    "tomorrow, 0",
    "after two weeks, 0",
    "over the first 200 km, 0"
  })
  @DisplayName("remarks that it cannot read when something is due")
  void due(String due, int count) throws Fault {
    String item = step("item", "hand-over", "Look at it again", "'due': '" + due + "'");
    List<String> found = found(car(fasten("one", "the bolt", ""), item));
    assertEquals(count, found.stream().filter("CHK-070 /phases/0/steps/1/due"::equals).count());
  }

  @Test
  @DisplayName("takes a check pass for what it is: it adds nothing, and must not fall")
  void checkPass() throws Fault {
    String stages =
        "'stages': [{'torque': 70, 'unit': 'N·m', 'plusMinus': 4},"
            + " {'torque': %s, 'unit': 'N·m', 'plusMinus': 4%s}]";
    String pass = ", 'checkPass': true";
    String torque = FASTENER + "/stages/1/torque";
    String variant = FASTENER + "/variants/0/stages/1/torque";
    assertEquals(List.of(), found(car(fasten("one", "it", stages.formatted("70", pass)))));
    assertEquals(
        List.of("CHK-037 " + variant), found(car(fasten("one", "it", stages.formatted("70", "")))));
    assertEquals(
        List.of("CHK-036 " + variant),
        found(car(fasten("one", "it", stages.formatted("60", pass)))));
    assertTrue(torque.endsWith("torque"));
  }
}
