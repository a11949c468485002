package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Trouble;

@DisplayName("Something that went wrong")
class TroubleTest {
  private static Bay wheel() {
    return Bay.working(
        Walk.of(
            SampleProcedures.procedure(
                new WorkPhase(
                    "work",
                    Each.CAR,
                    List.of(
                        SampleProcedures.set(
                            SampleProcedures.wheelBolts("wheel-bolts"),
                            5,
                            List.of(1, 3, 5, 2, 4)))))));
  }

  @Test
  @DisplayName("keeps the step open until new hardware starts it again from the first stage")
  void newHardware() {
    Bay bay = Bay.atRideHeight().after("torque reached 52");
    bay.goes(
        """
        > thread is stripped
        < Thread stripped. It stays open.
        < Correct?
        > that is correct
        < Tightening stopped part way.
        < Thread stripped, still open.
        < Say: new bolt fitted, or: it is repaired now, or put it off.
        > angle turned six zero
        < No. Thread stripped, still open.
        > that is correct
        < Say again.
        > new bolt fitted
        < New hardware noted.
        < Torque five two, then six zero degrees.
        > torque reached five two
        < Six zero degrees.
        > angle turned six zero
        < Closed.
        < Left. rear title.
        < Torque six two.
        """);
    assertEquals(
        List.of(Trouble.THREAD_STRIPPED),
        bay.recorded(SessionEvent.TroubleNoted.class).stream()
            .map(SessionEvent.TroubleNoted::trouble)
            .toList());
  }

  @Test
  @DisplayName("at one of a set makes that one start again, and leaves the others as they are")
  void ofSet() {
    wheel()
        .after("five two", "wrench clicked", "wrench clicked", "wrench clicked")
        .goes(
            """
            > bolt broke
            < Number two, broken. It stays open.
            < Say: that is correct.
            > that was wrong
            < Forget that, then.
            < Torque five two.
            < Two.
            > number three bolt is broken
            < Number three, broken. It stays open.
            < Correct?
            > that is correct
            < Number three, broken, still open.
            < Say: new bolt fitted, or: it is repaired now, or put it off.
            > which ones are left
            < Say again.
            > five new bolts fitted
            < No. It is one. Say: new bolt fitted.
            > new bolt fitted
            < New hardware noted.
            < Torque five two.
            < Three.
            > which ones are left
            < Done: number one, five.
            < Next: number three.
            < Left: three, two, four.
            > torque reached five two
            < Two.
            > wrench clicked
            < Four.
            > wrench clicked
            < Stage one closed at five two newton metres.
            < All steps are closed. Say: end of work.
            """);
  }

  @Test
  @DisplayName("at one of a set after the first stage brings only that one up to the others")
  void ofSetInStages() {
    Bay.working(SampleProcedures.setOf(3))
        .after("torque reached 52", "wrench clicked", "wrench clicked", "angle turned 60")
        .goes(
            """
            > turned too far
            < Number two, turned too far. It stays open.
            < Say: that is correct.
            > that is correct
            < Tightening stopped part way.
            < Number two, turned too far, still open.
            < Say: new bolt fitted, or: it is repaired now, or put it off.
            > it is repaired now
            < Repair noted.
            < Torque five two.
            < Two.
            > torque reached five two
            < Six zero degrees.
            < Two.
            > which ones are left
            < Done: number one.
            < Next: number two.
            < Left: two, three.
            > angle turned six zero
            < Three.
            > angle turned
            < Closed.
            < All steps are closed. Say: end of work.
            """);
  }

  @Test
  @DisplayName("at one of a set that is used once is renewed, not repaired")
  void usedOnce() {
    Walk walk =
        Walk.of(
            SampleProcedures.procedure(
                new WorkPhase(
                    "work",
                    Each.SIDE,
                    List.of(
                        SampleProcedures.set(SampleProcedures.bushBolt("bush"), 2, List.of())))));
    Bay bay =
        Bay.working(walk)
            .after("two new bolts fitted", "head marking ten point nine", "that is correct")
            .after("wheels carry the car", "left side at ride height", "bolt broke")
            .after("that is correct", "it is repaired now");
    assertEquals(List.of(), bay.recorded(SessionEvent.TroubleSettled.class));
    bay.after("new bolt fitted");
    assertEquals(1, bay.recorded(SessionEvent.TroubleSettled.class).size());
  }

  @Test
  @DisplayName("is taken back by cancel that, put off, and named at the end")
  void ended() {
    Bay bay = wheel();
    bay.goes(
        """
        > it is seized
        < Number one, seized. It stays open.
        < Say: that is correct.
        > that is correct
        < Number one, seized, still open.
        < Say: new bolt fitted, or: it is repaired now, or put it off.
        > cancel that
        < Taken back. This step is open.
        < Five.
        < Torque five two.
        < Next: number one.
        > it is seized
        < Number one, seized. It stays open.
        < Correct?
        > that is correct
        < Number one, seized, still open.
        < Say: new bolt fitted, or: it is repaired now, or put it off.
        > wrench clicked
        < No. Seized, still open.
        > put off waiting for parts
        < Put off waiting for parts. It stays open.
        < Wheel-bolts title.
        < Number one, seized, still open.
        < Say: new bolt fitted, or: it is repaired now, or put it off.
        > end of work
        < One step open. End anyway?
        < Correct?
        > that is correct
        < Work ended, not complete. Still wrong: wheel-bolts title, seized. One step open.
        """);
    assertFalse(bay.recorded(SessionEvent.SessionEnded.class).get(0).complete());
  }

  @Test
  @DisplayName("at a check that failed is settled by what was done, and the check is asked again")
  void check() {
    Walk walk =
        Walk.of(
            SampleProcedures.procedure(
                new WorkPhase(
                    "work", Each.CAR, List.of(SampleProcedures.doStep("boot", true, false)))));
    Bay.working(walk)
        .goes(
            """
            > step completed
            < Is it seated?
            < Say: check passed, or: check has failed.
            > check has failed
            < Check failed. The step stays open.
            > part is replaced now
            < Say again.
            > check passed
            < Say again.
            """);
  }

  @ParameterizedTest
  @CsvSource({
    "thread is stripped, THREAD_STRIPPED",
    "bolt broke, BROKEN",
    "bolt is broken, BROKEN",
    "it is seized, SEIZED",
    "it keeps turning, KEEPS_TURNING",
    "bolt is yielding, KEEPS_TURNING",
    "turned too far, TURNED_TOO_FAR",
    "torque cannot be reached, TORQUE_NOT_REACHED",
    "wrong hardware in the kit, WRONG_HARDWARE",
    "part is missing, PART_MISSING",
    "head markings are different, MARKINGS_DIFFER",
    "bolts are marked differently, MARKINGS_DIFFER",
    "seat is damaged, SEAT_DAMAGED",
    "thread is damaged, THREAD_STRIPPED"
  })
  @DisplayName("is said in words of the trade, and read back")
  void phrases(String phrase, Trouble trouble) {
    Bay bay = wheel().after(phrase, "that is correct");
    List<SessionEvent.TroubleNoted> noted = bay.recorded(SessionEvent.TroubleNoted.class);
    assertEquals(trouble, noted.get(0).trouble());
    assertEquals(Phase.TROUBLE, bay.phase());
  }

  @Test
  @DisplayName("is heard while something else waits to be read back")
  void readBack() {
    Bay bay = wheel().after("five two", "number four clicked");
    bay.say("bolt broke");
    bay.say("that is correct");
    assertEquals(List.of(), bay.recorded(SessionEvent.PositionsClosed.class));
    assertEquals(Optional.of(1), bay.recorded(SessionEvent.TroubleNoted.class).get(0).position());
  }
}
