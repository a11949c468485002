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
              < Car raised. Confirm the load again.
              > torque reached five two
              < No. First confirm ride height, left.
              """);
    }

    @Test
    @DisplayName("when the car is lowered")
    void lowered() {
      Bay.atRideHeight()
          .goes(
              """
              > car is coming down
              < Car lowered. Confirm the load again.
              > torque reached five two
              < No. First confirm ride height, left.
              """);
    }

    @Test
    @DisplayName("when the jack is moved, and an unfinished tightening starts again")
    void jack() {
      Bay.atRideHeight()
          .goes(
              """
              > torque reached five two
              < Stage one closed at five two newton metres.
              < Six zero degrees.
              > i moved the jack
              < Jack moved. Confirm the load again.
              < Tightening stopped part way.
              > angle turned six zero
              < No. First confirm ride height, left.
              > wheels carry the car
              < Say: left side at ride height.
              > left side at ride height
              < Ride height, left.
              < Stopped before angle, six zero degrees.
              < Say: turned so far, and the degrees in all, or: fully loosened.
              > angle turned six zero
              < No. Say: turned so far, and the degrees in all, or: fully loosened.
              """);
    }

    @Test
    @DisplayName("when the other side is started")
    void otherSide() {
      Bay.atRideHeight()
          .goes(
              """
              > torque reached five two
              < Stage one closed at five two newton metres.
              < Six zero degrees.
              > move to the right side
              < Tightening stopped part way.
              < Changing sides. Confirm ride height again on the right.
              < Right, arch title.
              < Millimetres?
              > move to the left side
              < Left. front title.
              < Not yet. Confirm ride height, left.
              > torque reached five two
              < No. First confirm ride height, left.
              """);
    }

    @Test
    @DisplayName("when a step that changes the load is entered")
    void stepChangesLoad() {
      Bay.atRideHeight()
          .goes(
              """
              > go to step seven
              < The load changes. Confirm the load again.
              < Lower title.
              > step completed
              < Step closed.
              < Left. front title.
              < Not yet. Confirm ride height, left.
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
              < On hold. Say: resume the work.
              > jack moved
              < Jack moved. Confirm the load again.
              < Tightening stopped part way.
              > resume the work
              < Step two, left. front title.
              < Not yet. Confirm ride height, left.
              > angle turned six zero
              < No. First confirm ride height, left.
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
              < On hold. Say: resume the work.
              > resume the work
              < After the break. Confirm the load again.
              < Tightening stopped part way.
              < Step two, left. front title.
              < Not yet. Confirm ride height, left.
              > angle turned six zero
              < No. First confirm ride height, left.
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
              < Back to work.
              < The program was stopped. Confirm the load again.
              < Tightening stopped part way.
              < Part tightened: left, front title, one stage.
              < Step two, left. front title.
              < Not yet. Confirm ride height, left.
              > angle turned six zero
              < No. First confirm ride height, left.
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
              < Back to work.
              < Step two, left. front title.
              < Not yet. Confirm ride height, left.
              > left side at ride height
              < No. First confirm ride height, left.
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
              < Note kept, not checked.
              > did you lock the door
              > torque reached five two
              < Stage one closed at five two newton metres.
              < Six zero degrees.
              """);
    }
  }
}
