package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.undercall.core.check.Job.car;
import static org.undercall.core.check.Job.fasten;
import static org.undercall.core.check.Job.found;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

@DisplayName("Words about the load")
class LoadWordsTest {
  private static List<String> rule(String needs, String caution) throws Fault {
    String step =
        fasten("one", "arm bolt", "'needs': '" + needs + "'")
            .replace("{'id'", "{'cautions': ['" + caution + "'], 'id'");
    return found(car(step)).stream().filter(f -> f.startsWith("CHK-069")).toList();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "any; Tighten at ride height",
        "any; Tighten only when laden.",
        "any; Ride height only!",
        "any; At normal ride height",
        "any; Do not tighten until at ride height",
        "any; Never tighten hanging",
        "any; Not at ride height",
        "any; Tighten with the suspension hanging free",
        "full-droop; Tighten at ride height",
        "full-droop; Tighten with the weight on its wheels",
        "full-droop; Tighten with the car on the ground",
        "full-droop; Do not tighten before the car is on its wheels",
        "full-droop; Tighten after lowering",
        "full-droop; Must be tightened laden, not hanging",
        "full-droop; Never at full droop",
        "ride-height; Tighten at full droop",
        "ride-height; Final torque with wheels hanging",
        "ride-height; Do not tighten at ride height",
        "ride-height; Not at ride height, please",
        "ride-height; Tighten before it is at ride height",
        "ride-height; Fit it, then tighten at full droop",
      })
  @DisplayName("that ask for another condition than the fastener are found")
  void found069(String needs, String caution) throws Fault {
    assertEquals(List.of("CHK-069 /phases/0/steps/0/cautions/0"), rule(needs, caution));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "ride-height; Tighten at ride height",
        "ride-height; Never tighten hanging",
        "ride-height; Tighten before lowering the car onto its wheels",
        "ride-height; Do not tighten before it is at ride height",
        "ride-height; Tighten laden, not at full droop",
        "ride-height; A bush that is tightened hanging tears",
        "ride-height; A bonded bush tightened at droop is twisted for life.",
        "ride-height; Snug at full droop, torque at ride height",
        "ride-height; Not on the ground",
        "full-droop; Tighten before lowering",
        "full-droop; Tighten at full droop, not at ride height",
        "full-droop; Not at ride height",
        "full-droop; This one at full droop: the other way round than most.",
        "full-droop; Tighten with the arm lowered",
        "any; Tighten with the car on the ground",
        "any; Tighten before lowering",
        "any; Tighten at ride height or full droop",
        "any; Can be tightened at ride height",
        "any; Whether laden or not",
        "any; Tighten the ride height sensor bolt",
        "any; Tighten the droop limiter bolt",
        "any; Measure the ride height afterwards",
        "any; Lower the car to ride height",
        "any; Do you tighten it at ride height?",
        "any; Tighten unladen",
        "any; Final torque later at ride height",
        "any; Tighten with the exhaust hanging",
      })
  @DisplayName("that agree, tell something else, or can be read in two ways are let be")
  void letBe(String needs, String caution) throws Fault {
    assertEquals(List.of(), rule(needs, caution));
  }

  @Test
  @DisplayName("are read in title and reason too, and may be about another step for the fastener")
  void elsewhere() throws Fault {
    String title = fasten("one", "Tighten the arm bolt at ride height", "arm bolt", "");
    assertEquals(
        List.of("CHK-069 /phases/0/steps/0/title"),
        found(car(title)).stream().filter(f -> f.startsWith("CHK-069")).toList());
    String again = fasten("two", "arm bolt", "'needs': 'ride-height'");
    assertEquals(
        List.of(), found(car(title, again)).stream().filter(f -> f.startsWith("CHK-069")).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Tighten on the ground", "Tighten at full droop"})
  @DisplayName("at the fasteners of a wheel are left to the rules of wheels")
  void wheels(String title) throws Fault {
    String wheel = fasten("one", title, Job.WHEEL);
    assertEquals(
        List.of(), found(car(wheel)).stream().filter(f -> f.startsWith("CHK-069")).toList());
  }
}
