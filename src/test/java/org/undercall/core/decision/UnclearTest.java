package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A value")
class UnclearTest {
  @Nested
  @DisplayName("is not heard")
  class Unclear {
    @Test
    @DisplayName("from half phrases, turned phrases or phrases with a word too many")
    void halfPhrases() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
              .goes(
                  """
            > torque
            < Say again.
            > reached torque seven five
            < Say again.
            > torque reached seven five please
            < Say again.
            > torque reached seven five okay
            """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("from chatter, which gets no answer")
    void chatter() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
              .goes(
                  """
            > they finished tightening yesterday
            """);
      assertEquals("NOT_UNDERSTOOD", bay.last());
    }

    @Test
    @DisplayName("from words that were hardly understood")
    void lowConfidence() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("75")));
      assertEquals(List.of("Say again."), bay.mumble("torque reached seven five", 0.59));
      assertEquals("", bay.closed());
      bay.mumble("torque reached seven five", 0.6);
      assertEquals("nut", bay.closed());
    }
  }
}
