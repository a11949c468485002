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
            < No. The time is not over.
            > start the timer
            < Timer runs, one minute 30 seconds.
            > step completed
            < No. The time is not over.
            +30
            > how much time is left
            < One minute left.
            +59
            > step completed
            < No. The time is not over.
            +1
            < Time is up: settle title.
            > step completed
            < Step closed.
            < Step two, look title.
            """);
    }

    @Test
    @DisplayName("says late that the time is up, whatever step is at hand")
    void late() {
      Bay.working(Jobs.car(Jobs.wait("settle", 90), SampleProcedures.doStep("look", false, false)))
          .goes(
              """
            > start the timer
            < Timer runs, one minute 30 seconds.
            < Step two, look title.
            > go to step one
            < Step one, settle title.
            < The timer runs.
            > put off for later
            < Put off for later. It stays open.
            < Step two, look title.
            +600
            < Time was up eight minutes ago: settle title.
            > how much time is left
            < No timer runs.
            > step completed
            < Step closed.
            < One step put aside is left.
            < Step one, settle title.
            < The time is over. Say: step completed.
            > step completed
            < Step closed.
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
            < No timer runs.
            > start the timer
            < Timer runs, one minute 30 seconds.
            > stop the timer
            < Timer cancelled.
            +90
            > step completed
            < No. The time is not over.
            """);
    }

    @Test
    @DisplayName("lets it run while the work is held")
    void whileHeld() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > start the timer
            < Timer runs, one minute 30 seconds.
            > take a break now
            < Held. Say: resume the work.
            > how much time is left
            < One minute 30 seconds left.
            +90
            < Time is up: settle title.
            > resume the work
            < Step one, settle title.
            < The time is over. Say: step completed.
            > step completed
            < Step closed.
            < Step two, look title.
            """);
    }

    @Test
    @DisplayName("waits anew when it is started again")
    void again() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > start the timer
            < Timer runs, one minute 30 seconds.
            +90
            < Time is up: settle title.
            > start the timer
            < Timer runs, one minute 30 seconds.
            > say again
            < Step one, settle title.
            < The timer runs.
            > step completed
            < No. The time is not over.
            +90
            < Time is up: settle title.
            > step completed
            < Step closed.
            < Step two, look title.
            """);
    }

    @Test
    @DisplayName("keeps it over a restart")
    void restarted() {
      Bay.working(Jobs.waiting())
          .goes(
              """
            > start the timer
            < Timer runs, one minute 30 seconds.
            * restart
            < Work taken up again.
            < Timer runs: step one, settle title.
            < Step one, settle title.
            < The timer runs.
            +90
            < Time is up: settle title.
            > step completed
            < Step closed.
            < Step two, look title.
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
            < Note kept, unchecked.
            > make a note
            < Speak your note.
            > dust boot torn on the left
            < Note kept, unchecked.
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
            < Held. Say: resume the work.
            > step completed
            < Say again.
            > say again
            < Held. Say: resume the work.
            > what is left
            < Three steps open: one title; two title; three title.
            > carry on working
            < Step one, one title.
            > step completed
            < Step closed.
            < Step two, two title.
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
            < Step one, one title.
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
            < Work taken up again.
            < Head marking eight, point, eight. Say: that is correct.
            > that is correct
            < Head marking eight, point, eight kept.
            < Needs ride height, left side. Not confirmed.
            """);
    }
  }
}
