package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.term.TorqueUnit;

@DisplayName("A called value")
class CalledValueTest {
  @Nested
  @DisplayName("of the specification")
  class OfTheSpecification {
    @Test
    @DisplayName("is confirmed, and the stage closes when it is called finished")
    void calledFirst() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("175")))
          .goes(
              """
              > torque reached
              < No. Call the value first: one, seven, five newton metres.
              > one seven five
              < One, seven, five newton metres, matches. Say: torque reached.
              > torque reached
              < Stage one closed at one, seven, five newton metres.
              < Step two, look title.
              """);
    }

    @Test
    @DisplayName("may come with the finishing call")
    void calledTogether() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("175")))
          .goes(
              """
              > wrench clicked at one seven five newton meters
              < Stage one closed at one, seven, five newton metres.
              < Step two, look title.
              """);
    }

    @Test
    @DisplayName("may have decimals")
    void decimal() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("7.5")))
          .goes(
              """
              > seven five
              < No. Heard seven, five.
              < It is torque, seven, point, five newton metres.
              > seven point five
              < Seven, point, five newton metres, matches. Say: torque reached.
              > torque reached
              < Stage one closed at seven, point, five newton metres.
              < Step two, look title.
              """);
    }

    @Test
    @DisplayName("is called in foot pounds where the specification is")
    void footPounds() {
      Bay.working(Jobs.nut(Jobs.torque("62", TorqueUnit.POUND_FORCE_FOOT)))
          .goes(
              """
              > six two newton meters
              < No. Call it in the unit of the specification: six, two foot pounds.
              > six two foot pounds
              < Six, two foot pounds, matches. Say: torque reached.
              > wrench clicked
              < Stage one closed at six, two foot pounds.
              < Step two, look title.
              """);
    }
  }

  @Nested
  @DisplayName("that is not the one of the specification")
  class Other {
    @Test
    @DisplayName("is refused, with both values read out, and closes nothing")
    void refused() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("175")))
              .goes(
                  """
                  > torque reached one seven six
                  < No. Heard one, seven, six.
                  < It is torque, one, seven, five newton metres.
                  > one hundred and seventy six newton meters
                  < No. Heard one, seven, six.
                  < It is torque, one, seven, five newton metres.
                  > torque reached
                  < No. Call the value first: one, seven, five newton metres.
                  """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("also drops the right one called before")
    void dropsTheRightOne() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("175")))
              .goes(
                  """
                  > one seven five
                  < One, seven, five newton metres, matches. Say: torque reached.
                  > one seven four
                  < No. Heard one, seven, four.
                  < It is torque, one, seven, five newton metres.
                  > torque reached
                  < No. Call the value first: one, seven, five newton metres.
                  """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("is refused when it sounds alike, however it is said")
    void twin() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("115")))
              .goes(
                  """
                  > torque reached one fifty
                  < No. Heard one, five, zero.
                  < It is torque, one, one, five newton metres.
                  > one five zero
                  < No. Heard one, five, zero.
                  < It is torque, one, one, five newton metres.
                  > torque reached one hundred and fifty
                  < No. Heard one, five, zero.
                  < It is torque, one, one, five newton metres.
                  """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("is refused when the number is right and the unit is not")
    void otherUnit() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("62")))
              .goes(
                  """
                  > six two foot pounds
                  < No. Call it in the unit of the specification: six, two newton metres.
                  > torque reached six two foot pounds
                  < No. Call it in the unit of the specification: six, two newton metres.
                  > torque reached
                  < No. Call the value first: six, two newton metres.
                  """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("is refused in newton metres where the specification is in kilogram metres")
    void kilogramMetres() {
      Bay.working(Jobs.nut(Jobs.torque("6", TorqueUnit.KILOGRAM_FORCE_METRE)))
          .goes(
              """
              > torque reached six newton meters
              < No. Call it in the unit of the specification: six kilogram metres.
              > torque reached six
              < Stage one closed at six kilogram metres.
              < Step two, look title.
              """);
    }
  }

  @Nested
  @DisplayName("easily confused with another")
  class EasilyConfused {
    @Test
    @DisplayName("is asked for digit by digit when it comes in words")
    void digitByDigit() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("115")))
          .goes(
              """
              > one hundred fifteen
              < Heard one, one, five. Call it digit by digit.
              > torque reached
              < No. Call the value first: one, one, five newton metres.
              > torque reached one hundred and fifteen
              < Heard one, one, five. Call it digit by digit.
              > torque reached one one five
              < Stage one closed at one, one, five newton metres.
              < Step two, look title.
              """);
    }

    @Test
    @DisplayName("is asked for digit by digit as an angle, too")
    void angleInWords() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("52"), Jobs.degrees("60")))
          .after("torque reached 52")
          .goes(
              """
              > angle turned sixty
              < Heard six, zero. Call it digit by digit.
              > six zero degrees
              < Six, zero degrees, matches. Say: angle turned.
              > angle turned
              < Stage two closed at six, zero degrees.
              < Step two, look title.
              """);
    }
  }

  @Nested
  @DisplayName("counts for the stage at hand alone")
  class ForAStage {
    @Test
    @DisplayName("so torque comes before angle")
    void order() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("52"), Jobs.degrees("90")))
          .goes(
              """
              > angle turned nine zero
              < No. The torque stage comes first.
              > torque reached five two
              < Stage one closed at five, two newton metres.
              < Stage two of two: angle, nine, zero degrees.
              > torque reached nine zero
              < No. The angle stage is next.
              > angle turned nine zero
              < Stage two closed at nine, zero degrees.
              < Step two, look title.
              """);
    }

    @Test
    @DisplayName("and an unfinished tightening that is left starts again")
    void leaving() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("52"), Jobs.degrees("60")))
              .goes(
                  """
                  > torque reached five two
                  < Stage one closed at five, two newton metres.
                  < Stage two of two: angle, six, zero degrees.
                  > go to step two
                  < The tightening is broken off.
                  < Step two, look title.
                  > go to step one
                  < Step one, nut title.
                  < Broken off before angle, six, zero degrees.
                  < Say: turned so far, with the degrees in all, or: fully loosened.
                  > angle turned six zero
                  < No. First say how far it was turned in all, or: fully loosened.
                  """);
      assertEquals("", bay.closed());
    }
  }
}
