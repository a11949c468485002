package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;

@DisplayName("An answer that carries several things")
class OneAnswerTest {
  private static Bay bush() {
    return Bay.working(SampleProcedures.bushOnBothSides());
  }

  private static Bay set() {
    return Bay.working(
        Walk.of(
            SampleProcedures.procedure(
                new WorkPhase(
                    "work",
                    Each.CAR,
                    List.of(
                        SampleProcedures.set(SampleProcedures.bushBolt("bush"), 5, List.of()))))));
  }

  @Nested
  @DisplayName("of new hardware and a head marking")
  class Marking {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "new bolt fitted ten point nine",
          "new bolt ten point nine",
          "new bolt fitted head marking ten point nine",
          "new bolt marked ten point nine",
          "new hardware fitted one zero point nine"
        })
    @DisplayName("keeps the first and reads the marking back; one prompt is said")
    void both(String words) {
      bush()
          .goes(
              """
              > %s
              < New hardware noted.
              < Head marking ten point nine.
              < Say: that is correct.
              > that is correct
              < Not yet. Confirm ride height, left.
              """
                  .formatted(words));
    }

    @Test
    @DisplayName("of which the marking was wrong keeps the hardware")
    void wrong() {
      Bay bay =
          bush()
              .goes(
                  """
                  > new bolt ten point nine
                  < New hardware noted.
                  < Head marking ten point nine.
                  < Say: that is correct.
                  > no eight point eight
                  < Eight point eight.
                  < Correct?
                  > no
                  < Forget that, then.
                  < Read out the head marking.
                  """);
      assertEquals(1, bay.recorded(SessionEvent.NewHardwareFitted.class).size());
      assertTrue(bay.recorded(SessionEvent.MarkingNoted.class).isEmpty());
    }

    @Test
    @DisplayName("that the procedure does not know keeps the hardware and no marking")
    void unknown() {
      bush()
          .goes(
              """
              > new bolt fitted twelve point nine
              < New hardware noted.
              < This procedure has no torque for twelve point nine.
              < Check the bolt.
              > torque reached five two
              < No. Read out the head marking first.
              > new bolt fitted ten point nine
              < Say again.
              > head marking ten point nine
              < Head marking ten point nine.
              < Say: that is correct.
              """);
    }

    @Test
    @DisplayName("counts nothing of a set that was not counted, and all of one that was")
    void counted() {
      Bay bay =
          set()
              .goes(
                  """
                  > new bolt fitted ten point nine
                  < No. Count them. Say: five new bolts fitted.
                  > four new bolts ten point nine
                  < No. Count them. Say: five new bolts fitted.
                  """);
      assertEquals("CLOSE_REFUSED", bay.last());
      bay.goes(
          """
          > five new bolts ten point nine
          < New hardware noted.
          < Head marking ten point nine, all five.
          < Say: that is correct.
          """);
      assertEquals("NEW_HARDWARE_FITTED MARKING_CALLED", bay.last());
    }

    @ParameterizedTest
    @CsvSource({
      "new bolt not fitted ten point nine, CLOSE_REFUSED",
      "new bolt fitted not ten point nine, CLOSE_REFUSED",
      "new bolt fitted no marking, CLOSE_REFUSED",
      "old bolt fitted ten point nine, CLOSE_REFUSED",
      "is a new bolt fitted ten point nine, CLOSE_REFUSED",
      "new bolt maybe ten point nine, CLOSE_REFUSED",
      "new bolt fitted marking unreadable, NOT_UNDERSTOOD",
      "ten point nine new bolt, NOT_UNDERSTOOD",
      "ten point nine new bolt fitted, NOT_UNDERSTOOD",
      "new bolt fitted ten point, NOT_UNDERSTOOD",
      "new bolt fitted ten nine, NOT_UNDERSTOOD",
      "new bolt, NOT_UNDERSTOOD",
      "five new bolts fitted ten point nine torque reached, NOT_UNDERSTOOD",
      "new bolt fitted ten point nine that is correct, NOT_UNDERSTOOD",
      "new bolt fitted ten point nine and again ten point nine, NOT_UNDERSTOOD",
      "new bolt fitted run in by hand ten point nine, NOT_UNDERSTOOD",
      "new bolt not run in by hand, CLOSE_REFUSED",
      "new bolt fitted not run in by hand, CLOSE_REFUSED",
      "head marking ten point nine new bolt fitted, NOT_UNDERSTOOD"
    })
    @DisplayName("denied in a part, in another order, or only half of it, is nothing")
    void nothing(String words, String recorded) {
      Bay bay = bush();
      bay.say(words);
      assertEquals(recorded, bay.last(), words);
      assertEquals(Phase.HARDWARE, bay.phase(), words);
    }

    @Test
    @DisplayName("heard with little confidence in one word counts in no part")
    void mumbled() {
      Bay bay = bush();
      bay.mumble("new bolt fitted ten point nine", 0.5);
      assertEquals("NOT_UNDERSTOOD", bay.last());
    }

    @Test
    @DisplayName("is two sayings: what was read back is dropped first, then nothing is left")
    void takenBack() {
      Bay bay = bush().after("new bolt ten point nine", "that was wrong");
      assertEquals(Phase.MARKING, bay.phase());
      bay.say("that was wrong");
      assertEquals(Phase.MARKING, bay.phase());
    }
  }

  @Nested
  @DisplayName("of new hardware that is run in by hand")
  class ByHand {
    private Bay wheel(int count) {
      Step bolt =
          SampleProcedures.fasten(
              "hub",
              new Fastener.Part(Hardware.BOLT, true, Lubrication.DRY),
              LoadCondition.ANY,
              List.of(new Variant(Optional.empty(), List.of(SampleProcedures.torque("62")))));
      Step step = count > 1 ? SampleProcedures.set(bolt, count, List.of()) : bolt;
      return Bay.working(
          Walk.of(
              SampleProcedures.procedure(
                  new WorkPhase("work", Each.CAR, List.of(SampleProcedures.byHand(step))))));
    }

    @Test
    @DisplayName("keeps both, and asks for the torque only")
    void both() {
      Bay bay =
          wheel(1)
              .goes(
                  """
                  > new bolt fitted run in by hand
                  < New hardware noted.
                  < Run in by hand, noted.
                  < Torque, six two newton metres.
                  > that was wrong
                  < Taken back. This step is open.
                  < Run it in by hand. Then say: run in by hand.
                  """);
      assertEquals(1, bay.recorded(SessionEvent.NewHardwareFitted.class).size());
    }

    @Test
    @DisplayName("of a set counts both; a count that is missing stops there")
    void counted() {
      Bay bay =
          wheel(3)
              .goes(
                  """
                  > three new bolts run in by hand
                  < New hardware noted.
                  < No. First say: three run in by hand.
                  > three run in by hand
                  < Three fasteners.
                  < Torque, six two newton metres.
                  < Next: number one.
                  """);
      assertEquals(1, bay.recorded(SessionEvent.RunInByHand.class).size());
      assertEquals(Phase.TORQUE, wheel(3).after("three new bolts three run in by hand").phase());
      assertEquals(Phase.HARDWARE, wheel(3).after("new bolt fitted run in by hand").phase());
      assertEquals(Phase.HARDWARE, wheel(3).after("new bolt not run in by hand").phase());
    }

    @Test
    @DisplayName("while its marking is missing keeps the hardware alone")
    void markingMissing() {
      Bay bay =
          bush()
              .goes(
                  """
                  > new bolt fitted run in by hand
                  < New hardware noted.
                  < No. Read out the head marking first.
                  """);
      assertEquals("NEW_HARDWARE_FITTED CLOSE_REFUSED", bay.last());
      assertEquals("bush/left", bay.at());
    }
  }

  @Nested
  @DisplayName("of what shows the load and its side")
  class Load {
    private Bay gate() {
      return Bay.working(Jobs.nutAndBush()).after("torque reached 75");
    }

    @ParameterizedTest
    @ValueSource(strings = {"left", "left side"})
    @DisplayName("is read back as ever")
    void side(String side) {
      gate()
          .goes(
              """
              > %s wheels carry the car
              < Left, wheels carry the car.
              < Read it back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left.
              < Torque five two.
              """
                  .formatted(side));
    }

    @Test
    @DisplayName("that is another one is refused and named; what was right stays")
    void other() {
      Bay bay =
          gate()
              .goes(
                  """
                  > right wheels carry the car
                  < That was the right side. Left, please.
                  > left wheels carry the car
                  < Left, wheels carry the car.
                  < Read it back: left side at ride height.
                  > right side wheels carry the car
                  < That was the right side. Left, please.
                  < Read it back: left side at ride height.
                  < Or say: that was wrong.
                  > left side at ride height
                  < Ride height confirmed, left.
                  < Torque five two.
                  > right suspension hangs free
                  < That was the right side. Left, please.
                  > torque reached five two
                  < Closed.
                  < Changing sides. Confirm ride height again on the right.
                  < Right, nut bolt.
                  < Torque seven five.
                  """);
      assertEquals(2, bay.recorded(SessionEvent.LoadCalled.class).size() + 1);
    }

    @Test
    @DisplayName("at hand that contradicts a confirmation cancels it")
    void contradicted() {
      Bay.atRideHeight()
          .goes(
              """
              > left suspension hangs free
              < That is a different height. Confirm the load again.
              < Say: left side at full droop.
              """);
    }

    @ParameterizedTest
    @ValueSource(strings = {"left wheels do not carry the car", "left wheels almost carry the car"})
    @DisplayName("that is denied confirms nothing")
    void denied(String words) {
      Bay bay = Bay.atRideHeight();
      bay.say(words);
      assertEquals(Phase.GATE, bay.phase(), words);
    }
  }

  @Nested
  @DisplayName("of a check and its step")
  class Check {
    private Bay asked() {
      return Bay.working(Jobs.nut(Jobs.newtonMetres("75"))).after("torque reached 75");
    }

    @Test
    @DisplayName("closes the one step, once the question was asked")
    void passed() {
      asked()
          .goes(
              """
              > check passed step completed
              < Say again.
              > step completed
              < Is it seated?
              < Say: check passed, or: check has failed.
              > check passed step completed
              < Step closed.
              < All steps are closed. Say: end of work.
              """);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "check passed step not completed",
          "check not passed step completed",
          "check has failed step completed",
          "check passed step completed almost"
        })
    @DisplayName("denied in a part closes nothing")
    void denied(String words) {
      Bay bay = asked().after("step completed", words);
      assertEquals(Phase.CHECK, bay.phase(), words);
      assertEquals("nut", bay.closed());
    }
  }
}
