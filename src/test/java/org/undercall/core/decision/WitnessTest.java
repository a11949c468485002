package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.LoadCondition;

@DisplayName("A second person")
class WitnessTest {
  private static Walk nutAndLook() {
    Step nut = Jobs.fastener("nut", LoadCondition.ANY, Jobs.newtonMetres("75"), Jobs.degrees("60"));
    return Jobs.car(SampleProcedures.witnessed(nut), SampleProcedures.doStep("look", false, false));
  }

  /** Juliet Delta works, and the nut is tightened. */
  private static Bay tightened() {
    return Bay.briefing(nutAndLook())
        .after("technician juliet delta", "that is correct", "cautions understood")
        .after("torque reached seven five", "angle turned six zero");
  }

  private static Bay named() {
    return tightened().after("witness alpha bravo");
  }

  private static List<String> witnesses(Bay bay) {
    return bay.recorded(SessionEvent.Witnessed.class).stream()
        .map(SessionEvent.Witnessed::witness)
        .toList();
  }

  @Nested
  @DisplayName("sees a step before it closes:")
  class Sees {
    @Test
    @DisplayName("he names himself, hears what was done, and confirms with his name")
    void whole() {
      Bay bay =
          Bay.briefing(nutAndLook())
              .after("technician juliet delta", "that is correct", "cautions understood")
              .after("torque reached seven five");
      bay.goes(
          """
          > angle turned six zero
          < Done, and open until a second person saw it. He says: witness, and his name, spelled.
          > witness alpha bravo
          < Witness alpha bravo.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          > witnessed by alpha bravo
          < Seen by alpha bravo.
          < Look title.
          """);
      assertEquals("nut", bay.closed());
      assertEquals(
          List.of(
              new SessionEvent.Witnessed(
                  bay.recorded(SessionEvent.Witnessed.class).get(0).step(),
                  "AB",
                  "torque, seven five newton metres, then angle, six zero degrees")),
          bay.recorded(SessionEvent.Witnessed.class));
    }

    @Test
    @DisplayName("work with a check as well, and a measured value")
    void otherWork() {
      Bay bay =
          Bay.briefing(
                  Jobs.car(
                      SampleProcedures.witnessed(SampleProcedures.doStep("pin", true, false)),
                      SampleProcedures.witnessed(SampleProcedures.measure("gap", false, false)),
                      SampleProcedures.doStep("last", false, false)))
              .after("technician juliet delta", "that is correct", "cautions understood");
      bay.goes(
          """
          > step completed
          < Is it seated?
          < Say: check passed, or: check has failed.
          > check passed
          < Done, and open until a second person saw it. He says: witness, and his name, spelled.
          > witness alpha bravo
          < Witness alpha bravo.
          < Step one, pin title: done as told.
          < If you saw it, say: witnessed by, and your name.
          > witnessed by alpha bravo
          < Seen by alpha bravo.
          < Gap title.
          < Call the value in millimetres.
          """);
      bay.after("it reads five zero", "that is correct");
      assertEquals("pin", bay.closed());
      bay.after("witness alpha bravo", "witnessed by alpha bravo");
      assertEquals("pin gap", bay.closed());
    }

    @Test
    @DisplayName("begins only when it is known who works")
    void nobodyWorks() {
      Bay.briefing(nutAndLook())
          .goes(
              """
              > cautions understood
              < This work has witnesses. First say: technician, and your name.
              > technician juliet delta
              < Technician: juliet delta.
              < Say: that is correct.
              > that is correct
              < Kept.
              > cautions understood
              < Step one. nut title.
              < Stage one of two: torque, seven five newton metres.
              """);
    }
  }

  @Nested
  @DisplayName("does not count")
  class DoesNotCount {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "yes",
          "okay",
          "he saw it",
          "witnessed",
          "witness",
          "i saw it",
          "that is correct",
          "step completed",
          "torque reached seven five",
          "check passed",
          "no witness here",
          "the witness went away",
          "there is no witness",
          "put that down as witnessed",
          "done",
          "he has seen it",
          "witnessed by",
          "not witnessed",
          "alpha bravo",
          "it was witnessed",
          "skip the witness",
          "go on"
        })
    @DisplayName("by anything else that is said in its place")
    void saidInstead(String phrase) {
      Bay before = tightened().after(phrase);
      assertEquals("", before.closed(), "where a name is asked for");
      assertEquals(List.of(), witnesses(before));
      assertEquals(Phase.WITNESS, before.phase());
      Bay after = named().after(phrase);
      assertEquals("", after.closed(), "where he is to confirm");
      assertEquals(List.of(), witnesses(after));
    }

    @Test
    @DisplayName("who works himself, whose name is another, or who only names himself twice")
    void others() {
      Bay bay = tightened();
      bay.goes(
          """
          > witness juliet delta
          < No. The witness is somebody who did not work on it.
          > witnessed by juliet delta
          < No. The witness is somebody who did not work on it.
          > witness alpha bravo
          < Witness alpha bravo.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          > witnessed by charlie delta
          < No. The name read back was alpha bravo.
          < Witness alpha bravo.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          < Or say: that was wrong.
          > witness alpha bravo
          < Witness alpha bravo.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          > that is correct
          < Not yet.
          < Witness alpha bravo.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          < Or say: that was wrong.
          > no
          < Forget that, then.
          < Witness?
          """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("whoever is on no list, or could be two people")
    void list() {
      Bay bay =
          Bay.briefing(nutAndLook())
              .given(new SessionEvent.WitnessesKnown("Anna Berg, Alex Brink, Carl Dorn, Jo Dahl"))
              .after("technician juliet delta", "that is correct", "cautions understood")
              .after("torque reached seven five", "angle turned six zero");
      bay.goes(
          """
          > witness zulu zulu
          < No. Zulu zulu is not on the list.
          > witness alpha bravo
          < No. Alpha bravo could be two people. Spell the whole name.
          > witness juliet oscar
          < No. The witness is somebody who did not work on it.
          > witness alpha november november alpha
          < Witness Anna Berg.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          > witnessed by alpha bravo
          < No. The name read back was Anna Berg.
          < Witness Anna Berg.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          < Or say: that was wrong.
          > witnessed by alpha november november alpha
          < Seen by Anna Berg.
          < Look title.
          """);
    }

    @Test
    @DisplayName("who tightened it before the shift changed")
    void shift() {
      Bay bay =
          tightened()
              .after("hand over the work", "technician alpha bravo", "that is correct")
              .after("cautions understood");
      bay.goes(
          """
          > witness juliet delta
          < No. The witness is somebody who did not work on it.
          > witness alpha bravo
          < No. The witness is somebody who did not work on it.
          > witness charlie delta
          < Witness charlie delta.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          """);
    }

    @Test
    @DisplayName("after a break, a restart or a hand-over between name and answer")
    void between() {
      for (String breaks : List.of("take a break now", "hand over the work")) {
        Bay bay = named().after(breaks, "resume the work", "witnessed by alpha bravo");
        assertEquals("", bay.closed(), breaks);
      }
      Bay restarted = named();
      restarted.restart(60);
      restarted.after("go back one step");
      assertEquals("", restarted.after("that is correct").closed());
      assertEquals(List.of(), witnesses(restarted));
    }

    @Test
    @DisplayName("while the load that was needed is lost again")
    void load() {
      Step bush = Jobs.fastener("bush", LoadCondition.RIDE_HEIGHT, Jobs.newtonMetres("75"));
      Bay bay =
          Bay.briefing(Jobs.car(SampleProcedures.witnessed(bush)))
              .after("technician juliet delta", "that is correct", "cautions understood")
              .after("wheels carry the car", "whole car at ride height")
              .after("torque reached seven five", "witness alpha bravo", "jack moved");
      assertEquals(Phase.GATE, bay.phase());
      bay.after("witnessed by alpha bravo");
      assertEquals("", bay.closed());
      bay.after("wheels carry the car", "whole car at ride height", "witness alpha bravo")
          .after("witnessed by alpha bravo");
      assertEquals("bush", bay.closed());
    }
  }

  @Nested
  @DisplayName("is missing")
  class Missing {
    @Test
    @DisplayName("where a step is put off for him, and the end says so")
    void putOff() {
      Bay bay = tightened();
      bay.goes(
          """
          > put off waiting for a witness
          < Put off waiting for a witness. It stays open.
          < Look title.
          > step completed
          < Step closed.
          < One step was put aside.
          < Nut title.
          < Witness?
          > end of work
          < One step open. End anyway?
          < Correct?
          > that is correct
          < Work ended, not complete. One step open.
          < Witness missing: nut title.
          """);
    }

    @Test
    @DisplayName("in what is told at a change of the shift")
    void told() {
      assertTrue(tightened().say("hand over the work").contains("Witness missing: nut title."));
    }
  }

  @Nested
  @DisplayName("is lost")
  class Lost {
    private Bay seen() {
      return named().after("witnessed by alpha bravo");
    }

    @Test
    @DisplayName("when what was said last is taken back: the step waits for him again")
    void takenBack() {
      Bay bay = seen();
      bay.goes(
          """
          > cancel that
          < Taken back. This step is open.
          < Nut title.
          < Witness?
          > cancel that
          < Nothing to take back.
          < For an older step say: open step, its number, again.
          > witness alpha bravo
          < Witness alpha bravo.
          < Step one, nut title: torque, seven five newton metres, then angle, six zero degrees.
          < If you saw it, say: witnessed by, and your name.
          """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("when he says that he did not see it")
    void denied() {
      Bay bay = seen().after("that was not witnessed");
      assertEquals(Phase.WITNESS, bay.phase());
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("when the torque or the angle is denied: the stage is open too")
    void stage() {
      Bay bay = seen().after("angle was not turned");
      assertEquals(Phase.ANGLE, bay.phase());
      bay.after("angle turned six zero");
      assertEquals(Phase.WITNESS, bay.phase());
      assertEquals("", bay.closed());
      assertEquals(Phase.ANGLE, tightened().after("angle was not turned").phase());
    }

    @Test
    @DisplayName("when the step is opened again, or the nut loosened before he confirmed")
    void opened() {
      Bay bay = seen().after("open step one again", "turned so far six zero", "that is correct");
      assertEquals("", bay.closed());
      Bay loosened = named().after("that was wrong", "fully loosened");
      assertEquals(Phase.TORQUE, loosened.phase());
      loosened.after("torque reached seven five", "angle turned six zero");
      assertEquals(Phase.WITNESS, loosened.phase());
    }

    @Test
    @DisplayName("when work that was only just said to be done is taken back")
    void work() {
      Bay bay =
          Bay.briefing(
                  Jobs.car(
                      SampleProcedures.witnessed(SampleProcedures.doStep("pin", false, false))))
              .after("technician juliet delta", "that is correct", "cautions understood")
              .after("step completed", "cancel that");
      assertEquals(Phase.DO, bay.phase());
      bay.after("step completed", "step is not completed");
      assertEquals(Phase.DO, bay.phase());
    }
  }

  @Nested
  @DisplayName("stands in the review")
  class InReview {
    @Test
    @DisplayName("with name and what was seen, or as missing")
    void review() {
      StepReview.Work waits = named().review().steps().get(0).work();
      assertTrue(waits.witnessMissing());
      assertEquals(Optional.empty(), waits.witness());
      StepReview seen = named().after("witnessed by alpha bravo").review().steps().get(0);
      assertFalse(seen.work().witnessMissing());
      assertEquals("AB", seen.work().witness().orElseThrow().event().witness());
      assertEquals(Set.of(), seen.doubts());
      Bay again = named().after("witnessed by alpha bravo", "cancel that");
      assertTrue(again.review().steps().get(0).work().witnessMissing());
    }

    @Test
    @DisplayName("and so does the apprentice")
    void apprentice() {
      Bay bay =
          Bay.briefing(nutAndLook())
              .given(new SessionEvent.ApprenticeWorks("JD"))
              .after("technician juliet delta", "that is correct", "cautions understood");
      assertEquals(Optional.of("JD; apprentice JD"), bay.review().head().job().technician());
    }
  }

  @Nested
  @DisplayName("at an apprentice's work")
  class Apprentice {
    private Bay bay(String apprentice) {
      Step nut = Jobs.fastener("nut", LoadCondition.ANY, Jobs.newtonMetres("75"));
      Step told = SampleProcedures.told(nut, "The washer must not turn.");
      return Bay.briefing(Jobs.car(told, SampleProcedures.doStep("look", false, false)))
          .given(new SessionEvent.ApprenticeWorks(apprentice));
    }

    @Test
    @DisplayName("is asked for at every fastener, and the reason of a step is told")
    void apprentice() {
      Bay bay = bay("JD").after("technician juliet delta", "that is correct");
      bay.goes(
          """
          > cautions understood
          < Step one. nut title.
          < Why: The washer must not turn.
          < Torque, seven five newton metres.
          > torque reached seven five
          < Stage one closed at seven five newton metres.
          < Done, and open until a second person saw it. He says: witness, and his name, spelled.
          """);
      assertEquals("nut", bay.after("witness alpha bravo", "witnessed by alpha bravo").closed());
    }

    @Test
    @DisplayName("is not asked for when another one works")
    void another() {
      Bay bay = bay("JD").after("technician charlie delta", "that is correct");
      bay.goes(
          """
          > cautions understood
          < Step one. nut title.
          < Torque, seven five newton metres.
          > torque reached seven five
          < Stage one closed at seven five newton metres.
          < Look title.
          """);
    }
  }

  @Test
  @DisplayName("is never named by a sentence of the program that would confirm")
  void ownVoice() {
    Bay bay = named();
    for (String sentence : bay.say("say again")) {
      bay.after(sentence.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z ]", ""));
      assertEquals("", bay.closed(), sentence);
    }
  }
}
