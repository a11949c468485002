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
              < No. Call the value first: one seven five newton metres.
              > one seven five
              < One seven five newton metres, matches. Say: torque reached.
              > torque reached
              < Stage one closed at one seven five newton metres.
              < Look title.
              """);
    }

    @Test
    @DisplayName("may come with the finishing call")
    void calledTogether() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("175")))
          .goes(
              """
              > wrench clicked at one seven five newton meters
              < Stage one closed at one seven five newton metres.
              < Look title.
              """);
    }

    @Test
    @DisplayName("may have decimals")
    void decimal() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("7.5")))
          .goes(
              """
              > seven five
              < I heard seven five.
              < Spec is seven point five newton metres.
              > seven point five
              < Seven point five newton metres, matches. Say: torque reached.
              > torque reached
              < Stage one closed at seven point five newton metres.
              < Look title.
              """);
    }

    @Test
    @DisplayName("is called in foot pounds where the specification is")
    void footPounds() {
      Bay.working(Jobs.nut(Jobs.torque("62", TorqueUnit.POUND_FORCE_FOOT)))
          .goes(
              """
              > six two newton meters
              < No. The spec is six two foot pounds. Call it in that unit.
              > six two foot pounds
              < Six two foot pounds, matches. Say: torque reached.
              > wrench clicked
              < Stage one closed at six two foot pounds.
              < Look title.
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
                  < I heard one seven six.
                  < Spec is one seven five newton metres.
                  > one hundred and seventy six newton meters
                  < I heard one seven six.
                  < Spec is one seven five newton metres.
                  > torque reached
                  < No. Call the value first: one seven five newton metres.
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
                  < One seven five newton metres, matches. Say: torque reached.
                  > one seven four
                  < I heard one seven four.
                  < Spec is one seven five newton metres.
                  > torque reached
                  < No. Call the value first: one seven five newton metres.
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
                  < I heard one five zero.
                  < Spec is one one five newton metres.
                  > one five zero
                  < I heard one five zero.
                  < Spec is one one five newton metres.
                  > torque reached one hundred and fifty
                  < I heard one five zero.
                  < Spec is one one five newton metres.
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
                  < No. The spec is six two newton metres. Call it in that unit.
                  > torque reached six two foot pounds
                  < No. The spec is six two newton metres. Call it in that unit.
                  > torque reached
                  < No. Call the value first: six two newton metres.
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
              < No. The spec is six kilogram metres. Call it in that unit.
              > torque reached six
              < Stage one closed at six kilogram metres.
              < Look title.
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
              < I heard one one five. Call it digit by digit.
              > torque reached
              < No. Call the value first: one one five newton metres.
              > torque reached one hundred and fifteen
              < I heard one one five. Call it digit by digit.
              > torque reached one one five
              < Stage one closed at one one five newton metres.
              < Look title.
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
              < I heard six zero. Call it digit by digit.
              > six zero degrees
              < Six zero degrees, matches. Say: angle turned.
              > angle turned
              < Closed.
              < Look title.
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
              < Stage one closed at five two newton metres.
              < Nine zero degrees.
              > torque reached nine zero
              < No. The angle stage is next.
              > angle turned nine zero
              < Closed.
              < Look title.
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
                  < Stage one closed at five two newton metres.
                  < Six zero degrees.
                  > go to step two
                  < Tightening stopped part way.
                  < Look title.
                  > go to step one
                  < Nut title.
                  < Stopped before angle, six zero degrees.
                  < Say: turned so far, and the degrees in all, or: fully loosened.
                  > angle turned six zero
                  < No. Say: turned so far, and the degrees in all, or: fully loosened.
                  """);
      assertEquals("", bay.closed());
    }
  }
}
