package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

@DisplayName("The steps")
class StepOrderTest {
  @Nested
  @DisplayName("come")
  class Order {
    @Test
    @DisplayName("in their order, then those left open, then those put off")
    void inOrder() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > put off for later
              < Put off for later. It stays open.
              < Two title.
              > step completed
              < Step closed.
              < Three title.
              > put off waiting for parts
              < Put off waiting for parts. It stays open.
              < One title.
              > step completed
              < Three title.
              > step completed
              < All steps are closed. Say: end of work.
              > end of work
              < Work complete. Log closed.
              """);
    }

    @Test
    @DisplayName("back to a fastener that was left snug")
    void snug() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
          .goes(
              """
              > run in by hand
              < Started, not tightened. It stays open.
              < Look title.
              > step completed
              < Is it seated?
              < Say: check passed, or: check has failed.
              > check passed
              < Step closed.
              < One step was put aside.
              < Nut title.
              < Torque seven five.
              > torque reached seven five
              < Stage one closed at seven five newton metres.
              < All steps are closed. Say: end of work.
              """);
    }

    @Test
    @DisplayName("by their number, and a closed one says so")
    void byNumber() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > go back one step
              < No. There is no such step.
              > go to step nine
              < No. There is no such step.
              > step completed
              < Step closed.
              < Two title.
              > go back one step
              < One title.
              < This step is closed.
              > step completed
              < Say again.
              > go to step three
              < Three title.
              """);
    }
  }

  @Nested
  @DisplayName("with a check question")
  class Check {
    @Test
    @DisplayName("close when it is answered well, and not before")
    void check() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
          .after("torque reached 75")
          .goes(
              """
              > step completed
              < Is it seated?
              < Say: check passed, or: check has failed.
              > step completed
              < No. Say: check passed, or: check has failed.
              > check has failed
              < Check failed. The step stays open.
              > check passed
              < Say again.
              > step completed
              < Is it seated?
              > check passed
              < Step closed.
              < All steps are closed. Say: end of work.
              """);
    }
  }

  @Nested
  @DisplayName("of a side")
  class Sides {
    @Test
    @DisplayName("are changed to by name, and a side without any says so")
    void sides() {
      Bay bay =
          Bay.working(Jobs.nutAndBush())
              .goes(
                  """
                  > move to the right side
                  < Right. nut title.
                  < Torque seven five.
                  > torque reached seven five
                  < Stage one closed at seven five newton metres.
                  < Right. bush title.
                  < Not yet. Confirm ride height, right.
                  > move to the left side
                  < Left, nut bolt.
                  < Torque seven five.
                  > torque reached seven five
                  < Closed.
                  < Left. bush title.
                  < Not yet. Confirm ride height, left.
                  > wheels carry the car
                  < Left, wheels carry the car.
                  < Read it back: left side at ride height.
                  > right side at ride height
                  < That was the right side. Left, please.
                  < Read it back: left side at ride height.
                  < Or say: that was wrong.
                  > left side at ride height
                  < Ride height confirmed, left.
                  < Torque five two.
                  > torque reached five two
                  < Closed.
                  < Changing sides. Confirm ride height again on the right.
                  < Right, bush bolt.
                  < Not yet. Confirm ride height, right.
                  > move to the left side
                  < Nothing is open on the left.
                  """);
      assertEquals("nut/left bush/left nut/right", bay.closed());
    }

    @Test
    @DisplayName("are not there in a procedure for the whole car")
    void noSides() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > move to the left side
              < Nothing is open on the left.
              """);
    }
  }

  @Nested
  @DisplayName("at the end")
  class Ending {
    @Test
    @DisplayName("with steps open it is read back and ends not complete")
    void openSteps() {
      Bay bay =
          Bay.working(Jobs.threeLooks())
              .goes(
                  """
                  > step completed
                  < Step closed.
                  < Two title.
                  > end of work
                  < Two steps open. End anyway?
                  < Say: that is correct.
                  > step completed
                  < Not yet.
                  < Two steps open. End anyway?
                  < Say: that is correct.
                  < Or say: that was wrong.
                  > that is correct
                  < Work ended, not complete. Two steps open.
                  """);
      assertEquals(
          List.of(new SessionEvent.SessionEnded(false, 2)),
          bay.recorded(SessionEvent.SessionEnded.class));
    }

    @Test
    @DisplayName("it goes on when the read-back is called wrong")
    void notYet() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > end of work
              < Three steps open. End anyway?
              < Say: that is correct.
              > that was wrong
              < Forget that, then.
              > step completed
              < Step closed.
              < Two title.
              """);
    }

    @Test
    @DisplayName("with every step closed it is complete")
    void complete() {
      Bay bay =
          Bay.working(Jobs.threeLooks())
              .goes(
                  """
                  > step completed
                  < Step closed.
                  < Two title.
                  > step completed
                  < Three title.
                  > step completed
                  < All steps are closed. Say: end of work.
                  > end of work
                  < Work complete. Log closed.
                  """);
      assertEquals(
          List.of(new SessionEvent.SessionEnded(true, 0)),
          bay.recorded(SessionEvent.SessionEnded.class));
    }

    @Test
    @DisplayName("a session that ended with open steps can be taken up")
    void takenUp() {
      Bay.working(Jobs.threeLooks())
          .after("step completed", "end of work", "that is correct")
          .goes(
              """
              * restart
              < Back to work.
              < Step two. two title.
              > step completed
              < Three title.
              """);
    }
  }
}
