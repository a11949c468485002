package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.check.Job.AGAIN;
import static org.undercall.core.check.Job.LOWERED;
import static org.undercall.core.check.Job.OFF;
import static org.undercall.core.check.Job.ON;
import static org.undercall.core.check.Job.RAISED;
import static org.undercall.core.check.Job.WHEEL;
import static org.undercall.core.check.Job.car;
import static org.undercall.core.check.Job.fasten;
import static org.undercall.core.check.Job.found;
import static org.undercall.core.check.Job.phase;
import static org.undercall.core.check.Job.step;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.port.Fault;

@DisplayName("The car in the walk of a check")
class WheelsOffTest {
  private static final String ALL_ON = step("all-on", "do", "Fit the wheels", "'wheelsOn': true");
  private static final String RIDE_HEIGHT = "'condition': 'ride-height'";
  private static final String ON_ITS_WHEELS = RIDE_HEIGHT + ", 'byWheels': true";

  private static String wheels(String id) {
    return fasten(id, "wheel bolts", WHEEL);
  }

  private static String load(String id, String more) {
    return step(id, "load", "Load it", more);
  }

  private static String at(String corner, String id, String more) {
    return step(id, "do", "Work there", more + ", 'corner': '" + corner + "'");
  }

  private static String told(String... phases) throws Fault {
    List<Finding> findings = Job.findings(phases);
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0).found();
  }

  @Nested
  @DisplayName("loses a wheel")
  class Lost {

    @Test
    @DisplayName("if no later step fits it: once for the step that takes it off, with the sides")
    void stays() throws Fault {
      assertEquals(List.of("CHK-026 /phases/0/steps/0/wheelsOn"), found(phase("side", OFF)));
      assertEquals("stays off: left and right", told(phase("side", OFF)));
      assertEquals(List.of(), found(phase("side", OFF, ON)));
      assertEquals(List.of(), found(phase("side", OFF), car(ALL_ON)));
    }

    @Test
    @DisplayName("on the side only that is not fitted again")
    void oneSide() throws Fault {
      String left = at("left", "on-one", "'wheelsOn': true");
      assertEquals("stays off: right", told(phase("side", OFF), car(left)));
    }

    @Test
    @DisplayName("at the step that took it off first, not where it is taken off again")
    void first() throws Fault {
      String again = step("off-2", "do", "Take the wheel off as well", "'wheelsOn': false");
      assertEquals(List.of("CHK-026 /phases/0/steps/0/wheelsOn"), found(phase("side", OFF, again)));
      assertEquals(
          List.of("CHK-026 /phases/0/steps/2/wheelsOn"), found(phase("side", OFF, ON, again)));
    }

    @Test
    @DisplayName("and names each step that took one")
    void severalSteps() throws Fault {
      String front = at("front-left", "off-front", "'wheelsOn': false");
      String rear = at("rear-right", "off-rear", "'wheelsOn': false");
      assertEquals(
          List.of("CHK-026 /phases/0/steps/0/wheelsOn", "CHK-026 /phases/0/steps/1/wheelsOn"),
          found(car(front, rear)));
    }
  }

  @Nested
  @DisplayName("needs its wheels on")
  class Needed {

    @Test
    @DisplayName("for wheel bolts, where they are off, and not where they are on")
    void bolts() throws Fault {
      assertEquals(
          List.of("CHK-018 /phases/0/steps/1/fastener"),
          found(phase("side", OFF, wheels("bolts"), ON), car(AGAIN)));
      assertEquals(
          "wheels off: left and right", told(phase("side", OFF, wheels("bolts"), ON), car(AGAIN)));
      assertEquals(List.of(), found(phase("side", OFF, ON, wheels("bolts")), car(AGAIN)));
      assertEquals(List.of(), found(phase("side", wheels("bolts"), OFF, ON), car(AGAIN)));
    }

    @Test
    @DisplayName("for other bolts not")
    void otherBolts() throws Fault {
      assertEquals(List.of(), found(phase("side", OFF, fasten("one", "the bolt", ""), ON)));
    }

    @Test
    @DisplayName("for a load that they bring about, and for no other")
    void loads() throws Fault {
      assertEquals(
          List.of("CHK-018 /phases/0/steps/1/byWheels"),
          found(phase("side", OFF, load("load", ON_ITS_WHEELS), ON)));
      assertEquals(List.of(), found(phase("side", OFF, load("load", RIDE_HEIGHT), ON)));
    }

    @Test
    @DisplayName("on the side that is off, and names that side alone")
    void side() throws Fault {
      String off = at("left", "off-one", "'wheelsOn': false");
      assertEquals(
          "wheels off: left",
          told(car(off), phase("side", load("load", ON_ITS_WHEELS)), car(ALL_ON)));
    }

    @Test
    @DisplayName("at its corner, not at another")
    void corner() throws Fault {
      String off = at("front-left", "off-front", "'wheelsOn': false");
      assertEquals(
          List.of(), found(car(off), phase("rear", load("load", ON_ITS_WHEELS)), car(ALL_ON)));
      assertEquals(
          "wheels off: front left",
          told(car(off), phase("front", load("load", ON_ITS_WHEELS)), car(ALL_ON)));
    }

    @Test
    @DisplayName("and says that a wheel is a guess")
    void guessed() throws Fault {
      String named = fasten("bolts", "wheel bolts", WHEEL + ", 'wheel': false");
      assertEquals(
          "wheels off: left and right, a wheel guessed from the name \"wheel bolts\"",
          told(phase("side", OFF, named, ON), car(AGAIN)));
    }
  }

  @Nested
  @DisplayName("cannot hold a load")
  class Load {

    @Test
    @DisplayName("at ride height as a whole with a wheel off; one side of it can be jacked")
    void rideHeight() throws Fault {
      String bolt = fasten("one", "the bolt", "'needs': 'ride-height'");
      assertEquals(
          List.of("CHK-028 /phases/1/steps/0/fastener/needs"),
          found(phase("side", OFF), car(bolt, ALL_ON)));
      assertEquals(
          List.of("CHK-028 /phases/1/steps/0/condition"),
          found(phase("side", OFF), car(load("load", RIDE_HEIGHT), ALL_ON)));
      assertEquals(List.of(), found(phase("side", OFF, bolt, ON)));
      assertEquals(List.of(), found(phase("side", OFF), car(ALL_ON, bolt)));
      assertEquals(
          List.of(), found(phase("side", OFF), car(fasten("one", "the bolt", ""), ALL_ON)));
      assertEquals(
          List.of(),
          found(phase("side", OFF), car(load("load", "'condition': 'full-droop'"), ALL_ON)));
    }

    @Test
    @DisplayName("hanging free on its wheels")
    void fullDroop() throws Fault {
      String hang = load("hang", "'condition': 'full-droop'");
      String bolt = fasten("one", "the bolt", "'needs': 'full-droop'");
      assertEquals(List.of("CHK-028 /phases/0/steps/1/condition"), found(car(LOWERED, hang)));
      assertEquals(
          List.of("CHK-028 /phases/0/steps/2/fastener/needs"), found(car(RAISED, LOWERED, bolt)));
      assertEquals("full droop with the car on its wheels", told(car(LOWERED, hang)));
      assertEquals(List.of(), found(car(LOWERED, RAISED, hang)));
      assertEquals(List.of(), found(car(hang)), "nobody said how the car stands");
      assertEquals(List.of(), found(car(LOWERED, load("load", RIDE_HEIGHT))));
    }

    @Test
    @DisplayName("a step that says nothing of the car leaves it as it stands")
    void leftAsItIs() throws Fault {
      String wipe = step("wipe", "do", "Wipe it", "");
      assertEquals(
          List.of("CHK-028 /phases/0/steps/2/condition"),
          found(car(LOWERED, wipe, load("hang", "'condition': 'full-droop'"))));
    }
  }

  @Nested
  @DisplayName("in the air")
  class InTheAir {

    @Test
    @DisplayName("gets no final torque on its wheels")
    void wheelBolts() throws Fault {
      assertEquals(
          List.of("CHK-044 /phases/0/steps/1/fastener"),
          found(car(RAISED, wheels("bolts"), AGAIN)));
      assertEquals("the car is raised", told(car(RAISED, wheels("bolts"), AGAIN)));
      assertEquals(List.of(), found(car(RAISED, LOWERED, wheels("bolts"), AGAIN)));
      assertEquals(List.of(), found(car(wheels("bolts"), RAISED, AGAIN)));
    }

    @Test
    @DisplayName("gets it on everything else")
    void otherBolts() throws Fault {
      assertEquals(List.of(), found(car(RAISED, fasten("one", "the bolt", ""))));
    }

    @Test
    @DisplayName("is said once for a step that is walked for both sides")
    void once() throws Fault {
      assertEquals(1, Job.findings(car(RAISED), phase("side", wheels("b")), car(AGAIN)).size());
    }
  }

  @ParameterizedTest
  @CsvSource({"raised", "lowered"})
  @DisplayName("changes its load when it is lifted or let down")
  void lifts(String how) throws Fault {
    String silent = step("lift", "do", "Move the car", "'car': '" + how + "'");
    assertEquals(List.of("CHK-042 /phases/0/steps/0/car"), found(car(silent)));
    assertEquals(how + " without \"changesLoad\"", told(car(silent)));
    String said = step("lift", "do", "Move it", "'changesLoad': true, 'car': '" + how + "'");
    assertEquals(List.of(), found(car(said)));
  }

  @Nested
  @DisplayName("has what is undone tightened again")
  class Undone {
    private static final String UNDO = step("undo", "do", "Undo the bolt of the arm", "");
    private static final String WHERE = "CHK-027 /phases/0/steps/0/title";

    @Test
    @DisplayName("by a later step for a fastener of its kind")
    void later() throws Fault {
      String tighten = fasten("one", "the arm bolt", "");
      assertEquals(List.of(), found(car(UNDO, tighten)));
      assertEquals(List.of("CHK-027 /phases/0/steps/1/title"), found(car(tighten, UNDO)));
      assertEquals(List.of(WHERE), found(car(UNDO)));
      assertEquals(
          List.of(WHERE),
          found(car(UNDO, step("look", "do", "Look whether the bolt is tight", ""))));
      assertTrue(told(car(UNDO)).startsWith("\"Undo the bolt of the arm\", guessed"));
    }

    @Test
    @DisplayName("known by the title of the step or the name of the fastener")
    void words() throws Fault {
      assertEquals(List.of(), found(car(UNDO, fasten("one", "Tighten the bolts", "the arm", ""))));
      assertEquals(List.of(), found(car(UNDO, fasten("one", "Tighten it", "arm bolt", ""))));
      assertEquals(List.of(WHERE), found(car(UNDO, fasten("one", "Tighten it", "the arm", ""))));
    }

    @Test
    @DisplayName("not by a nut for a bolt")
    void kind() throws Fault {
      String nut = fasten("one", "the link nut", "'hardware': 'nut'");
      assertEquals(List.of(WHERE), found(car(UNDO, nut)));
      assertEquals(List.of(), found(car(step("undo", "do", "Loosen the link nut", ""), nut)));
      assertEquals(
          List.of(WHERE), found(car(step("undo", "do", "Slacken the screw of the cap", ""), nut)));
    }

    @Test
    @DisplayName("on its side, or once for the car")
    void side() throws Fault {
      String left = fasten("one", "the bolt", "");
      assertEquals(List.of(), found(phase("side", UNDO), car(left)));
      assertEquals(List.of(), found(car(UNDO), phase("side", left)));
      assertEquals(List.of(), found(phase("side", UNDO, left)));
      assertEquals(List.of(WHERE), found(phase("front", UNDO), phase("rear", left)));
      assertEquals(1, Job.findings(phase("front", UNDO), phase("rear", left)).size());
    }

    @Test
    @DisplayName("if it was undone, and not if it was looked at, or must not be")
    void undone() throws Fault {
      for (String title : List.of("Look at the bolt", "Do not undo the bolt", "Undo the clip")) {
        assertEquals(List.of(), found(car(step("one", "do", title, ""))), title);
      }
      assertEquals(
          List.of(),
          found(car(step("one", "hand-over", "Loosen the bolt", "'due': 'after a month'"))),
          "what others do later");
    }
  }
}
