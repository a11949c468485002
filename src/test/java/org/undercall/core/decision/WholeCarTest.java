package org.undercall.core.decision;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A load condition")
class WholeCarTest {
  @Nested
  @DisplayName("of the whole car")
  class WholeCar {
    @Test
    @DisplayName("needs the whole car read back")
    void wholeCar() {
      Bay.working(Jobs.droop())
          .goes(
              """
              > step completed
              < No. First confirm full droop, whole car.
              > wheels carry the car
              < Whole car, wheels carry the car.
              < Read it back: whole car at ride height.
              > whole car at ride height
              < Ride height confirmed, whole car.
              < Full droop?
              > suspension hangs free
              < That is a different height. Confirm the load again.
              < Say: whole car at full droop.
              > left side at full droop
              < That was the left side. Whole car, please.
              < Read it back: whole car at full droop.
              < Or say: that was wrong.
              > whole car at full droop
              < Full droop, whole car.
              < Strut title.
              < Torque, four zero newton metres.
              > torque reached four zero
              < Stage one closed at four zero newton metres.
              < All steps are closed. Say: end of work.
              """);
    }

    @Test
    @DisplayName("is not released by what shows one side")
    void oneSideOnly() {
      Bay.working(Jobs.droop())
          .goes(
              """
              > knuckle jacked body lifting
              < No. That is one side only.
              > arch height three five zero
              < No. No ride height was noted before the work, whole car.
              """);
    }
  }
}
