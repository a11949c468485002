package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.LoadCondition;

@DisplayName("When the shift changes")
class ShiftTest {
  private static List<String> takers(Bay bay) {
    return bay.recorded(SessionEvent.WorkTakenOver.class).stream()
        .map(SessionEvent.WorkTakenOver::technician)
        .toList();
  }

  @Nested
  @DisplayName("the work is handed over:")
  class HandedOver {
    @Test
    @DisplayName("the next one names himself, hears the cautions, and only then goes on")
    void next() {
      Bay bay = Bay.briefing(Jobs.threeLooks());
      bay.after("technician juliet delta", "that is correct", "cautions understood")
          .goes(
              """
              > step completed
              < Step closed.
              < Two title.
              > hand over the work
              < Next: step two, two title.
              < Who takes over, say: technician, and your name.
              < Same technician: resume the work.
              > technician alpha bravo
              < Technician: alpha bravo.
              < Correct?
              > that is correct
              < Technician alpha bravo.
              < Sample.
              < Values: invented.
              < Caution. Stands, never a jack alone.
              < Say: cautions understood.
              > step completed
              < Cautions first. Say: cautions understood.
              > cautions understood
              < Step two. two title.
              > step completed
              < Step closed.
              < Three title.
              """);
      assertEquals(List.of("AB"), takers(bay));
      assertEquals(
          List.of("closed by JD: 1 step", "closed by AB: 1 step", "next: step three, three title"),
          Standing.of(bay.session()).written());
    }

    @Test
    @DisplayName("a load is cancelled, a read-back dropped, an angle broken off")
    void cancelled() {
      Bay bay = Bay.atRideHeight();
      bay.goes(
          """
          > torque reached five two
          < Stage one closed at five two newton metres.
          < Six zero degrees.
          > hand over the work
          < After the break. Confirm the load again.
          < Tightening stopped part way.
          < Part tightened: left, front title, one stage.
          < Next: step two, left, front title.
          < Who takes over, say: technician, and your name.
          < Same technician: resume the work.
          > technician alpha bravo
          < Technician: alpha bravo.
          < Correct?
          > that is correct
          < Technician alpha bravo.
          < Sample.
          < Values: invented.
          < Caution. Stands, never a jack alone.
          < Say: cautions understood.
          > cautions understood
          < Step two, left. front title.
          < Not yet. Confirm ride height, left.
          > angle turned six zero
          < No. First confirm ride height, left.
          """);
      Bay pending = Bay.working(Jobs.twoBushesASide()).after("350 millimeters", "end of my shift");
      assertEquals(1, pending.recorded(SessionEvent.ReadBackDropped.class).size());
      assertEquals("", pending.closed());
    }

    @Test
    @DisplayName("what is hand tight, begun, put off, wrong and noted is told, and what runs")
    void told() {
      Bay.working(
              Jobs.car(
                  Jobs.fastener("nut", LoadCondition.ANY, Jobs.newtonMetres("75")),
                  Jobs.fastener(
                      "bolt", LoadCondition.ANY, Jobs.newtonMetres("52"), Jobs.degrees("60")),
                  SampleProcedures.doStep("look", true, false),
                  Jobs.wait("settle", 90),
                  SampleProcedures.doStep("last", false, false)))
          .after("fitted hand tight", "torque reached five two", "go to step three")
          .after("step completed", "check has failed", "go to step four", "start the timer")
          .after("put off waiting for parts", "take a note", "dust boot torn")
          .goes(
              """
              > shift change now
              < Hand tight: nut title.
              < Part tightened: bolt title, one stage.
              < Put off: last title, waiting for parts.
              < Not in order: look title.
              < Timer runs: step four, settle title.
              < One note.
              < Next: step two, bolt title.
              < Who takes over, say: technician, and your name.
              < Same technician: resume the work.
              * restart
              < Back to work.
              < Hand tight: nut title.
              < Part tightened: bolt title, one stage.
              < Put off: last title, waiting for parts.
              < Not in order: look title.
              < Timer runs: step four, settle title.
              < One note.
              < Who takes over, say: technician, and your name.
              < Same technician: resume the work.
              """);
    }

    @Test
    @DisplayName("at a hold as well")
    void held() {
      Bay bay = Bay.working(Jobs.threeLooks()).after("take a break now", "handing over the work");
      assertEquals(Phase.SHIFT_CHANGE, bay.phase());
    }
  }

  @Nested
  @DisplayName("somebody tired")
  class Tired {
    private Bay bay() {
      return Bay.working(Jobs.threeLooks()).after("hand over the work");
    }

    @Test
    @DisplayName("hands over twice, says no, or that he is off: nothing closes")
    void says() {
      Bay bay = bay();
      bay.goes(
          """
          > hand over the work
          < Next: step one, one title.
          < Who takes over, say: technician, and your name.
          < Same technician: resume the work.
          > no
          < Who takes over, say: technician, and your name.
          < Same technician: resume the work.
          > i am off
          < Say again.
          > step completed
          < No. First say: technician, and your name.
          < Same technician: resume the work.
          > what is left
          < Three steps open: one title; two title; three title.
          """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("is the same one: the work goes on, and nobody took over")
    void same() {
      Bay bay = bay();
      bay.goes(
          """
          > resume the work
          < Nobody took over. If you are new, say: hand over the work.
          < Step one. one title.
          > step completed
          < Step closed.
          < Two title.
          """);
      assertEquals(List.of(), takers(bay));
    }

    @Test
    @DisplayName("forgets the name, or the cautions: both are asked for")
    void forgets() {
      bay()
          .goes(
              """
              > cautions understood
              < No. First say: technician, and your name.
              < Same technician: resume the work.
              > technician alpha bravo
              < Technician: alpha bravo.
              < Say: that is correct.
              > cautions understood
              < Not yet.
              < Technician: alpha bravo.
              < Say: that is correct.
              < Or say: that was wrong.
              > that is correct
              < Technician alpha bravo.
              < Sample.
              < Values: invented.
              < Caution. Stands, never a jack alone.
              < Say: cautions understood.
              > resume the work
              < Cautions first. Say: cautions understood.
              > step completed
              < Cautions first. Say: cautions understood.
              """);
    }

    @Test
    @DisplayName("has another name: it is dropped, said anew, or taken back")
    void name() {
      Bay bay = bay();
      bay.goes(
          """
          > registration alpha one
          < No. First say: technician, and your name.
          < Same technician: resume the work.
          > technician alpha bravo
          < Technician: alpha bravo.
          < Say: that is correct.
          > that was wrong
          < Forget that, then.
          < Who takes over, say: technician, and your name.
          < Same technician: resume the work.
          > technician alpha delta
          < Technician: alpha delta.
          < Correct?
          > that is correct
          < Technician alpha delta.
          < Sample.
          < Values: invented.
          < Caution. Stands, never a jack alone.
          < Say: cautions understood.
          > cancel that
          < Who takes over, say: technician, and your name.
          < Same technician: resume the work.
          > cautions understood
          < No. First say: technician, and your name.
          < Same technician: resume the work.
          > technician alpha charlie
          < Technician: alpha charlie.
          < Say: that is correct.
          > that is correct
          < Technician alpha charlie.
          < Sample.
          < Values: invented.
          < Caution. Stands, never a jack alone.
          < Say: cautions understood.
          > cautions understood
          < Step one. one title.
          """);
      assertEquals(List.of("AC"), takers(bay));
    }

    @Test
    @DisplayName("says that he does not hand over: that is no hand-over")
    void denied() {
      for (String what :
          List.of(
              "i do not hand over the work", "not the end of my shift", "no shift change now")) {
        Bay bay = Bay.working(Jobs.threeLooks()).after(what);
        assertEquals(Phase.DO, bay.phase(), what);
      }
    }

    @Test
    @DisplayName("calls a danger, or the program restarts: the name is still asked for")
    void restart() {
      bay()
          .goes(
              """
              > jack slipped
              < Stopped. Load not confirmed. When it is safe, say: resume the work.
              * restart
              < Back to work.
              < Who takes over, say: technician, and your name.
              < Same technician: resume the work.
              > technician alpha bravo
              < Technician: alpha bravo.
              < Say: that is correct.
              > that is correct
              < Technician alpha bravo.
              < Sample.
              < Values: invented.
              < Caution. Stands, never a jack alone.
              < Say: cautions understood.
              > stop stop
              < Stopped. Load not confirmed. When it is safe, say: cautions understood.
              * restart
              < Back to work.
              < Technician alpha bravo.
              < Sample.
              < Values: invented.
              < Caution. Stands, never a jack alone.
              < Say: cautions understood.
              > cautions understood
              < Step one. one title.
              """);
    }
  }
}
