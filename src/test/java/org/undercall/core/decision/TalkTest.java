package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("The program")
class TalkTest {
  @Nested
  @DisplayName("with a timer")
  class Timers {
    @Test
    @DisplayName("closes a wait only after its time")
    void timer() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > step completed
            < No. The time is not up yet.
            > start the timer
            < Timer running.
            > step completed
            < No. The time is not up yet.
            +30
            > how much time is left
            < One minute left.
            +59
            > step completed
            < No. The time is not up yet.
            +1
            < Time is up: settle title.
            > step completed
            < Step closed.
            < Look title.
            """);
    }

    @Test
    @DisplayName("says late that the time is up, whatever step is at hand")
    void late() {
      Bay.working(Jobs.car(Jobs.wait("settle", 90), SampleProcedures.doStep("look", false, false)))
          .goes(
              """
            > start the timer
            < Timer running.
            < Look title.
            > go to step one
            < Settle title.
            < The timer is running.
            > put off for later
            < Put off for later. It stays open.
            < Look title.
            +600
            < Time was up eight minutes ago: settle title.
            > how much time is left
            < No timer is running.
            > step completed
            < Step closed.
            < One step was put aside.
            < Settle title.
            < Say: step completed.
            > step completed
            < All steps are closed. Say: end of work.
            """);
    }

    @Test
    @DisplayName("forgets it when told to")
    void cancelled() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > stop the timer
            < No timer is running.
            > start the timer
            < Timer running.
            > stop the timer
            < Timer cancelled.
            +90
            > step completed
            < No. The time is not up yet.
            """);
    }

    @Test
    @DisplayName("lets it run while the work is held")
    void whileHeld() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > start the timer
            < Timer running.
            > take a break now
            < On hold. Say: resume the work.
            > how much time is left
            < One minute thirty left.
            +90
            < Time is up: settle title.
            > resume the work
            < Step one. settle title.
            < Say: step completed.
            > step completed
            < Step closed.
            < Look title.
            """);
    }

    @Test
    @DisplayName("waits anew when it is started again")
    void again() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > start the timer
            < Timer running.
            +90
            < Time is up: settle title.
            > start the timer
            < Timer running.
            > say again
            < Step one. settle title.
            < The timer is running.
            > step completed
            < No. The time is not up yet.
            +90
            < Time is up: settle title.
            > step completed
            < Step closed.
            < Look title.
            """);
    }

    @Test
    @DisplayName("keeps it over a restart")
    void restarted() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > start the timer
            < Timer running.
            * restart
            < Back to work.
            < Timer runs: step one, settle title.
            < Step one. settle title.
            < The timer is running.
            +90
            < Time is up: settle title.
            > step completed
            < Step closed.
            < Look title.
            """);
    }
  }

  @Nested
  @DisplayName("with a note")
  class Notes {
    @Test
    @DisplayName("keeps the words unchecked, even words that would close a step")
    void note() {
      Bay bay =
          Bay.working(Jobs.threeLooks())
              .goes(
                  """
            > take a note
            < Speak your note.
            > step completed
            < Note kept, not checked.
            > make a note
            < Speak your note.
            > dust boot torn on the left
            < Note kept, not checked.
            """);
      assertEquals("", bay.closed());
    }
  }

  @Nested
  @DisplayName("on hold")
  class Hold {
    @Test
    @DisplayName("closes nothing until the work goes on")
    void hold() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
            > wait a moment please
            < On hold. Say: resume the work.
            > step completed
            < Say again.
            > say again
            < On hold. Say: resume the work.
            > what is left
            < Three steps open: one title; two title; three title.
            > carry on working
            < Step one. one title.
            > step completed
            < Step closed.
            < Two title.
            """);
    }
  }

  @Nested
  @DisplayName("before the cautions")
  class Briefing {
    @Test
    @DisplayName("closes nothing and answers no question but a repeat")
    void cautions() {
      Bay.briefing(Jobs.threeLooks())
          .goes(
              """
            > step completed
            < Cautions first. Say: cautions understood.
            > what is left
            < Say again.
            > say again
            < Sample.
            < Values: invented.
            < Caution. Stands, never a jack alone.
            < Say: cautions understood.
            > cautions understood
            < Step one. one title.
            """);
    }
  }

  @Nested
  @DisplayName("after a restart")
  class Restart {
    @Test
    @DisplayName("reads back again what waited for it")
    void restartedAtRead() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted", "head marking 8.8")
          .goes(
              """
            * restart
            < Back to work.
            < Head marking eight point eight.
            < Say: that is correct.
            > that is correct
            < Not yet. Confirm ride height, left.
            """);
    }
  }
}
