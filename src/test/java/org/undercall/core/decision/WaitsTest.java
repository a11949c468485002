package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Missing;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;

@DisplayName("A wait whose timer runs")
class WaitsTest {
  private static Step look(String id) {
    return SampleProcedures.doStep(id, false, false);
  }

  /** A wait, two pieces of work, a nut, and a piece of work that comes after the wait. */
  private static Walk settling() {
    return Jobs.car(
        Jobs.wait("settle", 90),
        look("one"),
        SampleProcedures.doStep("two", true, false),
        Jobs.fastener("nut", LoadCondition.ANY, Jobs.newtonMetres("75"), Jobs.degrees("60")),
        Jobs.after("settle", look("last")));
  }

  @Nested
  @DisplayName("does not hold the technician:")
  class MovesOn {
    @Test
    @DisplayName("the next step is offered, and the wait again as soon as its time is over")
    void atOnce() {
      Bay bay = Bay.working(settling());
      bay.goes(
          """
          > start the timer
          < Timer running.
          < One title.
          > step completed
          < Step closed.
          < Two title.
          +89
          > what is left
          < Four steps open: settle title; two title; nut title; last title.
          +1
          < Time is up: settle title.
          < Say: step completed.
          > step completed
          < Two title.
          > step completed
          < Is it seated?
          < Say: check passed, or: check has failed.
          """);
      assertEquals("settle one", bay.closed());
    }

    @Test
    @DisplayName("what is bound to come after it is not offered, and refused if it is gone to")
    void bound() {
      Bay.working(
              Jobs.car(Jobs.wait("settle", 90), Jobs.after("settle", look("last")), look("one")))
          .goes(
              """
              > start the timer
              < Timer running.
              < One title.
              > go to step two
              < Last title.
              > step completed
              < No. First: settle title.
              < Or say: out of order, and why.
              > go to step three
              < One title.
              > step completed
              < Step closed.
              < Settle title.
              < The timer is running.
              +90
              < Time is up: settle title.
              > step completed
              < Last title.
              """);
    }

    @Test
    @DisplayName("what is put off meanwhile is not offered in its place: then it is waited")
    void putOff() {
      Bay bay = Bay.working(Jobs.car(Jobs.wait("settle", 90), look("one"), look("two")));
      bay.goes(
          """
          > start the timer
          < Timer running.
          < One title.
          > put off for later
          < Put off for later. It stays open.
          < Two title.
          > step completed
          < Step closed.
          < Settle title.
          < The timer is running.
          +90
          < Time is up: settle title.
          > step completed
          < One step was put aside.
          < One title.
          """);
    }

    @Test
    @DisplayName("two waits run at once, and each is come back to")
    void two() {
      Bay bay = Bay.working(Jobs.car(Jobs.wait("glue", 60), Jobs.wait("paint", 90), look("one")));
      bay.goes(
          """
          > start the timer
          < Timer running.
          < Paint title.
          < Wait one minute thirty. Start the timer?
          > start the timer
          < Timer running.
          < One title.
          +60
          < Time is up: glue title.
          < Say: step completed.
          > step completed
          < Step closed.
          < One title.
          > step completed
          < Paint title.
          < The timer is running.
          +30
          < Time is up: paint title.
          > step completed
          < All steps are closed. Say: end of work.
          """);
    }

    @Test
    @DisplayName("both may be over at once: one after the other, then where it was")
    void both() {
      Bay bay =
          Bay.working(
              Jobs.car(Jobs.wait("glue", 60), Jobs.wait("paint", 60), look("one"), look("two")));
      bay.after("start the timer", "start the timer", "go to step four").passes(60);
      assertEquals("glue", bay.at());
      bay.say("step completed");
      assertEquals("paint", bay.at());
      bay.say("step completed");
      assertEquals("two", bay.at());
    }
  }

  @Nested
  @DisplayName("when its time is over")
  class Over {
    private Bay bay() {
      return Bay.working(settling()).after("start the timer");
    }

    @Test
    @DisplayName("waits until a check is answered")
    void check() {
      bay()
          .after("step completed", "step completed")
          .goes(
              """
              +90
              < Time is up: settle title.
              > check passed
              < Settle title.
              < Say: step completed.
              > step completed
              < Nut title.
              < Stage one of two: torque, seven five newton metres.
              """);
    }

    @Test
    @DisplayName("waits until a tightening is closed, and breaks no angle off")
    void tightening() {
      Bay bay = bay();
      bay.after("step completed", "step completed", "check passed");
      bay.goes(
          """
          > torque reached seven five
          < Stage one closed at seven five newton metres.
          < Six zero degrees.
          +90
          < Time is up: settle title.
          > angle turned six zero
          < Closed.
          < Settle title.
          < Say: step completed.
          """);
      assertEquals(List.of(), bay.recorded(SessionEvent.TighteningInterrupted.class));
    }

    @Test
    @DisplayName("waits while a value is read out, and comes as soon as that step is left")
    void left() {
      bay()
          .after("go to step four")
          .goes(
              """
              +90
              < Time is up: settle title.
              > put off for later
              < Put off for later. It stays open.
              < Settle title.
              < Say: step completed.
              > step completed
              < Step closed.
              < Last title.
              """);
    }

    @Test
    @DisplayName("is not come back to from a hold, a note or a read-back, but after that step")
    void busy() {
      for (String what : List.of("take a break now", "take a note", "end of work")) {
        Bay bay = bay().after(what).passes(90);
        assertEquals("one", bay.at(), what);
        bay.say(what.equals("take a break now") ? "resume the work" : "cancel that");
        assertEquals("one", bay.at(), what);
        bay.say("step completed");
        assertEquals("settle", bay.at(), what);
      }
    }

    @Test
    @DisplayName("may be left by hand, and is offered after the next step again")
    void leftByHand() {
      Bay bay = bay().passes(90);
      assertEquals("settle", bay.at());
      bay.after("go to step three", "step completed", "check passed");
      assertEquals("settle", bay.at());
      bay.say("put off for later");
      assertEquals("nut", bay.at());
    }

    @Test
    @DisplayName("costs a load that was confirmed no more than the way there costs")
    void load() {
      Bay bay =
          Bay.working(
                  Jobs.car(
                      Jobs.wait("settle", 90),
                      look("one"),
                      Jobs.fastener("bush", LoadCondition.RIDE_HEIGHT, Jobs.newtonMetres("52"))))
              .after("start the timer", "wheels carry the car", "whole car at ride height")
              .passes(90)
              .after("step completed", "step completed", "torque reached five two");
      assertEquals("settle one bush", bay.closed());
    }

    @Test
    @DisplayName("is said and come back to after a restart; so is one whose end was said before")
    void restart() {
      bay()
          .goes(
              """
              * off 100
              < Back to work.
              < Timer runs: step one, settle title.
              < Step two. one title.
              < Time is up: settle title.
              < Say: step completed.
              """);
      Bay off = bay().after("step completed", "step completed").passes(90);
      off.plays("* restart");
      assertEquals("two", off.at());
      off.say("check passed");
      assertEquals("settle", off.at());
    }

    @Test
    @DisplayName("comes by the steady clock, however the wall clock is set")
    void clock() {
      Bay bay = bay();
      bay.plays("* set 60");
      bay.passes(89);
      assertEquals("one", bay.at());
      bay.passes(1);
      assertEquals("settle", bay.at());
    }
  }

  @Nested
  @DisplayName("when it is stopped from another step")
  class Stopped {
    @Test
    @DisplayName("opens nothing, and is offered again in its turn")
    void stopped() {
      Bay bay = Bay.working(Jobs.car(Jobs.wait("settle", 90), look("one")));
      bay.goes(
          """
          > start the timer
          < Timer running.
          < One title.
          > stop the timer
          < Timer cancelled.
          > step completed
          < Step closed.
          < Settle title.
          < Wait one minute thirty. Start the timer?
          > step completed
          < No. The time is not up yet.
          """);
    }
  }

  @Test
  @DisplayName("is reminded of at the step at hand, and not while nothing else is ready")
  void reminders() {
    Bay bay = Bay.working(settling()).after("start the timer");
    assertEquals(Optional.of(600L), bay.reminder(600));
    Bay waiting = Bay.working(Jobs.waiting()).after("start the timer");
    assertEquals(Optional.empty(), waiting.reminder(600));
  }

  @Test
  @DisplayName("is walked through with the work in between, in the order it is heard")
  void walked() {
    List<Integer> order =
        WalkThrough.of(settling()).stream().map(WalkThrough.Exchange::place).toList();
    assertEquals(List.of(0, 0, 1, 2, 2, 3, 3, 0, 0, 4, 4, 4), order);
  }

  @Nested
  @DisplayName("of a fastener that cures")
  class Cures {
    private Walk curing() {
      Step pin = Jobs.fastener("pin", LoadCondition.ANY, Jobs.newtonMetres("52"));
      return Jobs.car(
          SampleProcedures.minding(pin, false, Optional.of(Duration.ofMinutes(2))),
          Jobs.after("pin", look("drive")),
          look("one"));
    }

    @Test
    @DisplayName("holds nobody, and what comes after it is refused until its time is over")
    void refused() {
      Bay bay = Bay.working(curing());
      bay.goes(
          """
          > torque reached five two
          < Stage one closed at five two newton metres.
          < One title.
          < Curing. Timer running, two minutes.
          > go to step two
          < Drive title.
          > step completed
          < No. It still cures: pin title.
          < Wait, or say: out of order, and why.
          > go to step three
          < One title.
          +120
          < Time is up: pin title.
          > step completed
          < Step closed.
          < Drive title.
          > step completed
          < All steps are closed. Say: end of work.
          """);
      assertEquals(
          List.of(Missing.TIME),
          bay.recorded(SessionEvent.CloseRefused.class).stream()
              .map(SessionEvent.CloseRefused::missing)
              .toList());
    }

    @Test
    @DisplayName("still cures if its timer is stopped; there is a way out of order")
    void stopped() {
      Bay.working(curing())
          .after("torque reached five two", "stop the timer", "go to step two")
          .goes(
              """
              > step completed
              < No. It still cures: pin title.
              < Wait, or say: out of order, and why.
              > out of order done by somebody else
              < Out of order, done by somebody else.
              < Say: that is correct.
              > that is correct
              < Noted, out of order.
              > step completed
              < Step closed.
              < One title.
              """);
    }
  }
}
