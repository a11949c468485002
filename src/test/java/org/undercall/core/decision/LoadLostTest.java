package org.undercall.core.decision;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A confirmed ride height")
class LoadLostTest {
  @Nested
  @DisplayName("is lost")
  class IsLost {
    @Test
    @DisplayName("when the car is raised")
    void raised() {
      Bay.atRideHeight()
          .goes(
              """
              > car is going up
              < Car raised. The load confirmation is cancelled.
              > torque reached five two
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when the car is lowered")
    void lowered() {
      Bay.atRideHeight()
          .goes(
              """
              > car is coming down
              < Car lowered. The load confirmation is cancelled.
              > torque reached five two
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when the jack is moved, and an unfinished tightening starts again")
    void jack() {
      Bay.atRideHeight()
          .goes(
              """
              > torque reached five two
              < Stage one closed at five, two newton metres.
              < Stage two of two: angle, six, zero degrees.
              > i moved the jack
              < Jack moved. The load confirmation is cancelled.
              < The tightening is broken off.
              > angle turned six zero
              < No. Ride height is not confirmed, left side.
              > wheels carry the car
              < Left side, wheels carry the car.
              < Read back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left side.
              < Broken off before angle, six, zero degrees.
              < Say: turned so far, with the degrees in all, or: fully loosened.
              > angle turned six zero
              < No. First say how far it was turned in all, or: fully loosened.
              """);
    }

    @Test
    @DisplayName("when the other side is started")
    void otherSide() {
      Bay.atRideHeight()
          .goes(
              """
              > torque reached five two
              < Stage one closed at five, two newton metres.
              < Stage two of two: angle, six, zero degrees.
              > move to the right side
              < The tightening is broken off.
              < Other side. The load confirmation is cancelled.
              < Step four, right, arch title.
              < Call the value in millimetres.
              > move to the left side
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > torque reached five two
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when a step that changes the load is entered")
    void stepChangesLoad() {
      Bay.atRideHeight()
          .goes(
              """
              > go to step seven
              < This step changes the load. The load confirmation is cancelled.
              < Step seven, lower title.
              > step completed
              < Step closed.
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              """);
    }

    @Test
    @DisplayName("when the jack is moved while the work is held")
    void held() {
      Bay.atRideHeight()
          .after("torque reached 52")
          .goes(
              """
              > take a break now
              < Held. Say: resume the work.
              > jack moved
              < Jack moved. The load confirmation is cancelled.
              < The tightening is broken off.
              > resume the work
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > angle turned six zero
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when the work is held, since nobody listened for a jack")
    void lostInAHold() {
      Bay.atRideHeight()
          .after("torque reached 52")
          .goes(
              """
              > take a break now
              < Held. Say: resume the work.
              > resume the work
              < After the break. The load confirmation is cancelled.
              < The tightening is broken off.
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > angle turned six zero
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when the program was off, since the car may have moved")
    void restarted() {
      Bay.atRideHeight()
          .after("torque reached 52")
          .goes(
              """
              * restart
              < Work taken up again.
              < I was off. The load confirmation is cancelled.
              < The tightening is broken off.
              < Part tightened: left, front title, one stage.
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > angle turned six zero
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when the program was off before the read-back")
    void restartedReadBack() {
      Bay.working(Jobs.twoBushesASide())
          .after("350 millimeters", "that is correct", "wheels carry the car")
          .goes(
              """
              * restart
              < Work taken up again.
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > left side at ride height
              < No. Ride height is not confirmed, left side.
              """);
    }
  }

  @Nested
  @DisplayName("is kept")
  class IsKept {
    @Test
    @DisplayName("over questions, notes and chatter")
    void keptOverTalk() {
      Bay.atRideHeight()
          .goes(
              """
              > what is left
              < Six steps open: left, front title; left, rear title; right, arch title; right, front title; and two more.
              > take a note
              < Speak your note.
              > boot looks dry
              < Note kept, unchecked.
              > did you lock the door
              > torque reached five two
              < Stage one closed at five, two newton metres.
              < Stage two of two: angle, six, zero degrees.
              """);
    }
  }
}
