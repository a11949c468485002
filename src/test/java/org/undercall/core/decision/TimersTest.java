package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

@DisplayName("The program")
class TimersTest {
  @Nested
  @DisplayName("with timers that have names")
  class Named {
    @Test
    @DisplayName("starts one, warns a minute before its end, says the end, each once")
    void oneTimer() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > start ten minutes for the sealant
              < Sealant timer running, one zero minutes.
              > how long is left for the sealant
              < Sealant: ten minutes left.
              +539
              > how long is left
              < One minute one left.
              +1
              < One minute left: sealant.
              +20
              +40
              < The sealant time is up.
              +5
              > how long is left for the sealant
              < No timer is running for the sealant.
              """);
    }

    @Test
    @DisplayName("mentions those that run when the end is near, and that they end with the work")
    void endOfWork() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > start ten minutes for the sealant
              < Sealant timer running, one zero minutes.
              > end of work
              < A timer is still running: sealant.
              < Three steps open. End anyway?
              < Say: that is correct.
              > cancel that
              < Forget that, then.
              """);
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > start ten minutes for the sealant
              < Sealant timer running, one zero minutes.
              > start five minutes for the cooling
              < Cooling timer running, five minutes.
              > step completed
              < Step closed.
              < Two title.
              > step completed
              < Three title.
              > step completed
              < Timers are still running: sealant; cooling.
              < All steps are closed. Say: end of work.
              > stop the timer for the cooling
              < Timer cancelled: cooling.
              > end of work
              < Work complete. Log closed.
              < A timer is still running: sealant.
              < I will not call the end any more.
              """);
    }

    @Test
    @DisplayName("does not warn of the end of a short one")
    void shortTimer() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > start four minutes for the cooling
              < Cooling timer running, four minutes.
              +200
              +40
              < The cooling time is up.
              """);
    }

    @Test
    @DisplayName("tells all of several, stops the one that is named, and never guesses which")
    void several() {
      Bay.working(Jobs.longWaiting())
          .goes(
              """
              > start the timer
              < Timer running.
              > start one minute for the thread locker
              < Thread locker timer running, one minute.
              > start ninety minutes for the battery
              < Battery timer running, nine zero minutes.
              > how much time is left
              < Step one, settle title: five minutes left.
              < Thread locker: one minute left.
              < Battery: one hour thirty left.
              > stop the timer
              < Which timer? Step one, settle title; thread locker; battery.
              < Say: stop the timer for, and its name or step.
              > stop the timer for the cooling
              < No timer is running for the cooling.
              > stop the timer for the thread locker
              < Timer cancelled: thread locker.
              > stop the timer for step two
              < No timer is running for step two.
              > how long is left for step one
              < Step one, settle title: five minutes left.
              > stop the timer for step one
              < Timer cancelled: step one, settle title.
              > stop the timer
              < Timer cancelled.
              > stop the timer
              < No timer is running.
              """);
    }

    @Test
    @DisplayName("starts one again when it is named again")
    void again() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > start five minutes for the soaking
              < Soaking timer running, five minutes.
              +240
              < One minute left: soaking.
              > start five minutes for the soaking
              < Soaking timer started again, five minutes.
              +240
              < One minute left: soaking.
              """);
    }

    @Test
    @DisplayName("lets them run on hold and when all is closed, and closes nothing by them")
    void closesNothing() {
      Bay bay = Bay.working(Jobs.threeLooks());
      bay.goes(
          """
          > take a break now
          < On hold. Say: resume the work.
          > start two minutes for the drying
          < Drying timer running, two minutes.
          +120
          < The drying time is up.
          > resume the work
          < Step one. one title.
          """);
      assertEquals("", bay.closed());
    }
  }

  @Nested
  @DisplayName("after it was off")
  class Off {
    @Test
    @DisplayName("says which timers ended meanwhile and how long ago, and warns of the others")
    void endedMeanwhile() {
      Bay.working(Jobs.longWaiting())
          .goes(
              """
              > start the timer
              < Timer running.
              > start ten minutes for the sealant
              < Sealant timer running, one zero minutes.
              * off 570
              < Back to work.
              < Timer runs: step one, settle title; sealant.
              < Step one. settle title.
              < The timer is running.
              < Time was up four minutes ago: settle title.
              < Thirty seconds left: sealant.
              * off 20
              < Back to work.
              < Timer runs: sealant.
              < Step one. settle title.
              < Say: step completed.
              +10
              < The sealant time is up.
              """);
    }

    @Test
    @DisplayName("keeps what timers had left if the clock was set back meanwhile")
    void setBack() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              > start ten minutes for the sealant
              < Sealant timer running, one zero minutes.
              * off -3600
              < Back to work.
              < The clock was set back by one hour.
              < Timers keep their time.
              < Timer runs: sealant.
              < Step one. one title.
              > how long is left
              < Ten minutes left.
              """);
    }
  }

  @Nested
  @DisplayName("when the wall clock is set")
  class Clock {
    @Test
    @DisplayName("says so once, and timers keep the time they had left")
    void timers() {
      Bay bay = Bay.working(Jobs.threeLooks());
      bay.goes(
          """
          > start four minutes for the sealant
          < Sealant timer running, four minutes.
          * set 7200
          < The clock was set forward by two hours.
          < Timers keep their time.
          > how long is left
          < Four minutes left.
          +60
          * set -3600
          < The clock was set back by one hour.
          < Timers keep their time.
          +179
          +1
          < The sealant time is up.
          * set 10
          < The clock was set forward by ten seconds.
          """);
      assertEquals(3, bay.recorded(SessionEvent.ClockJumped.class).size());
    }

    @Test
    @DisplayName("takes a long way forward for a sleep, after which the load is not known")
    void sleep() {
      Bay.working(Jobs.longWaiting())
          .after("go to step three", "wheels carry the car", "whole car at ride height")
          .goes(
              """
              * set 60
              < The clock was set forward by one minute.
              > say again
              < Step three. bush title.
              < Torque, five two newton metres.
              * set 600
              < The clock was set forward by ten minutes.
              < The machine slept. Confirm the load again.
              > torque reached five two
              < No. First confirm ride height, whole car.
              > wheels carry the car
              < Say: whole car at ride height.
              * set 600
              < The clock was set forward by ten minutes.
              < Not yet. Confirm ride height, whole car.
              """);
    }
  }
}
