package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A stage of 175 newton metres")
class CalledWordingsTest {
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "one seven five",
        "one seventy five",
        "one hundred seventy five",
        "one hundred and seventy five",
        "a hundred seventy five",
        "a hundred and seventy five",
        "175",
        "175 Nm"
      })
  @DisplayName("is closed by every wording of 175, and read out digit by digit")
  void everyWording(String wording) {
    Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("175")));
    assertEquals(
        "One seven five newton metres, matches. Say: torque reached.",
        String.join(" ", bay.say("it reads " + wording)));
    bay.say("tightened to " + wording);
    assertEquals("nut", bay.closed());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "one seven",
        "seventy five",
        "one seven five five",
        "one seventeen five",
        "one hundred and seventy",
        "one hundred seven five",
        "a hundred and five",
        "seven five one",
        "one seven point five",
        "175.5"
      })
  @DisplayName("is not closed by any other number")
  void otherNumbers(String wording) {
    Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("175")));
    bay.after("tightened to " + wording, wording, "torque reached");
    assertEquals("", bay.closed());
  }
}
