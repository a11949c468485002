package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.MeasureUnit;

@DisplayName("A measured value")
class MeasureTest {
  @Nested
  @DisplayName("is kept")
  class Kept {
    @Test
    @DisplayName("when the read-back is called right")
    void right() {
      Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
          .goes(
              """
              > three hundred
              < Three zero zero millimetres.
              < Say: that is correct.
              > step completed
              < Not yet.
              < Three zero zero millimetres.
              < Say: that is correct.
              < Or say: that was wrong.
              > that is correct
              < Noted.
              < Look title.
              """);
    }

    @Test
    @DisplayName("when it is repeated, also with its unit")
    void repeated() {
      Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
          .goes(
              """
              > one three
              < One three millimetres.
              < Say: that is correct.
              > one three millimeters
              < Noted.
              < Look title.
              """);
    }

    @Test
    @DisplayName("as it was called last")
    void second() {
      Bay bay =
          Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
              .goes(
                  """
                  > one two
                  < One two millimetres.
                  < Say: that is correct.
                  > one three
                  < One three.
                  < Correct?
                  > one two
                  < One two.
                  < Correct?
                  > that is correct
                  < Noted.
                  < Look title.
                  """);
      assertEquals("12 mm", bay.recorded(SessionEvent.Measured.class).get(0).value().toString());
    }

    @Test
    @DisplayName("in the unit of the step")
    void otherUnits() {
      Bay.working(Jobs.measuring(MeasureUnit.BAR, false))
          .goes(
              """
              > ten point five millimeters
              < No. Call it in bar.
              > ten point five bar
              < One zero point five bar.
              < Say: that is correct.
              > ten point five
              < Noted.
              < Look title.
              """);
    }
  }

  @Nested
  @DisplayName("outside its limits")
  class Limits {
    @Test
    @DisplayName("keeps the step open")
    void fault() {
      Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
          .goes(
              """
              > four zero one
              < Four zero one millimetres.
              < Say: that is correct.
              > that is correct
              < Four zero one millimetres is out of limits. The step stays open.
              > nine millimeters
              < Nine.
              < Correct?
              > it reads nine
              < Nine millimetres is out of limits. The step stays open.
              > step completed
              < No. Call the value first.
              > four zero zero
              < Four zero zero.
              < Correct?
              > that is correct
              < Noted.
              < Look title.
              """);
    }

    @Test
    @DisplayName("is a finding that closes the step where that is stated")
    void finding() {
      Bay bay =
          Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, true))
              .goes(
                  """
                  > four zero one millimeters
                  < Four zero one millimetres.
                  < Say: that is correct.
                  > that is correct
                  < Recorded. Out of limits.
                  < Look title.
                  """);
      assertFalse(bay.recorded(SessionEvent.Measured.class).get(0).withinLimits());
    }
  }

  @Nested
  @DisplayName("in another unit")
  class Unit {
    @Test
    @DisplayName("is not kept, even when it repeats the number")
    void otherUnit() {
      Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
          .goes(
              """
              > one two inches
              < No. Call it in millimetres.
              > one two
              < One two millimetres.
              < Say: that is correct.
              > one two inches
              < No. Call it in millimetres.
              < One two millimetres.
              < Say: that is correct.
              < Or say: that was wrong.
              > that is correct
              < Noted.
              < Look title.
              """);
    }
  }

  @Nested
  @DisplayName("that may be below zero")
  class Signed {
    @Test
    @DisplayName("is taken with its sign alone")
    void sign() {
      Bay bay =
          Bay.working(Jobs.signed())
              .goes(
                  """
                  > zero point eight degrees
                  < No. Call it with plus or minus.
                  > minus zero point eight degrees
                  < Minus zero point eight degrees.
                  < Say: that is correct.
                  > zero point eight
                  < No. Call it with plus or minus.
                  < Minus zero point eight degrees.
                  < Say: that is correct.
                  < Or say: that was wrong.
                  > no plus zero point eight
                  < Plus zero point eight.
                  < Correct?
                  > no minus zero point eight
                  < Minus zero point eight.
                  < Correct?
                  > it reads minus zero point eight degrees
                  < Noted.
                  < Look title.
                  """);
      assertEquals("-0.8 °", bay.recorded(SessionEvent.Measured.class).get(0).value().toString());
    }

    @Test
    @DisplayName("is read back in degrees and minutes as it was called, and kept in degrees")
    void minutes() {
      Bay bay =
          Bay.working(Jobs.signed())
              .goes(
                  """
                  > one degree thirty minutes
                  < No. Call it with plus or minus.
                  > minus one degree twenty minutes
                  < Minus one degree twenty minutes.
                  < Say: that is correct.
                  > minus one degree
                  < Minus one.
                  < Correct?
                  > minus eighty minutes
                  < Minus one degree twenty minutes.
                  < Correct?
                  > that is correct
                  < Noted.
                  < Look title.
                  """);
      assertEquals(
          "-80 ′", bay.recorded(SessionEvent.MeasureCalled.class).get(2).value().toString());
      assertEquals(
          "-1.3333 °", bay.recorded(SessionEvent.Measured.class).get(0).value().toString());
    }

    @Test
    @DisplayName("needs no sign at zero, and is judged by its limits with it")
    void limits() {
      Bay.working(Jobs.signed())
          .goes(
              """
              > minus six degrees
              < Minus six degrees.
              < Say: that is correct.
              > that is correct
              < Minus six degrees is out of limits. The step stays open.
              > zero degrees
              < Zero.
              < Correct?
              > zero degrees
              < Noted.
              < Look title.
              """);
    }

    @Test
    @DisplayName("is no value of a step whose values are not")
    void none() {
      Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
          .goes(
              """
              > minus three hundred millimeters
              < No. It cannot be below zero here.
              > three degrees twelve minutes
              < No. Call it in millimetres.
              > plus three hundred
              < Three zero zero millimetres.
              < Say: that is correct.
              > that is correct
              < Noted.
              < Look title.
              """);
    }
  }
}
