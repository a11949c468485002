package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.StepRef;

@DisplayName("A session is not complete, whatever the program said,")
class NotCompleteTest {

  private static StepReview step(Review review, StepRef ref) {
    return review.steps().stream()
        .filter(s -> s.place().ref().equals(ref))
        .findFirst()
        .orElseThrow();
  }

  /** The session without the events that a test drops. */
  private static Review without(Predicate<SessionEvent> dropped) {
    List<Recorded> log = new ArrayList<>();
    for (Recorded d : TwoSides.log()) {
      List<SessionEvent> events = d.events().stream().filter(dropped.negate()).toList();
      log.add(new Recorded(d.seq(), d.at(), d.heard(), events, d.said()));
    }
    return Review.of(TwoSides.walk(), log);
  }

  /** The session with events added before the last decision's. */
  private static Review withLast(SessionEvent... events) {
    LogMaker maker = new LogMaker();
    TwoSides.leftUntilPutOff(maker);
    TwoSides.right(maker);
    TwoSides.restartAndFinish(maker);
    maker.at(1040, events);
    return Review.of(TwoSides.walk(), maker.log());
  }

  private static void assertDoubt(Review review, StepRef ref, StepReview.Doubt doubt) {
    assertEquals(Set.of(doubt), step(review, ref).doubts());
    assertTrue(review.ending().saidComplete());
    assertFalse(review.complete());
  }

  @Test
  @DisplayName("when a step was never closed")
  void neverClosed() {
    Review review = without(e -> e.equals(new SessionEvent.StepClosed(TwoSides.BOOT_R)));
    assertTrue(review.ending().saidComplete());
    assertFalse(review.complete());
    assertEquals(TwoSides.BOOT_R, review.open().get(0).place().ref());
  }

  @Test
  @DisplayName("when ride height was confirmed for the other side only")
  void otherSide() {
    Review review =
        without(
            e -> e instanceof SessionEvent.LoadConfirmed c && c.side() == TwoSides.BOLT_L.side());
    assertDoubt(review, TwoSides.BOLT_L, StepReview.Doubt.LOAD_NOT_CONFIRMED);
  }

  @Test
  @DisplayName("when new hardware, a marking, a stage, an answer or a measured value is absent")
  void somethingAbsent() {
    assertDoubt(
        without(e -> e.equals(new SessionEvent.NewHardwareFitted(TwoSides.BOLT_L))),
        TwoSides.BOLT_L,
        StepReview.Doubt.HARDWARE_NOT_NEW);
    assertDoubt(
        without(e -> e.equals(new SessionEvent.StageClosed(TwoSides.BOLT_R, 1, "45"))),
        TwoSides.BOLT_R,
        StepReview.Doubt.STAGE_NOT_CLOSED);
    assertDoubt(
        without(e -> e.equals(new SessionEvent.CheckAnswered(TwoSides.BOOT_L, true))),
        TwoSides.BOOT_L,
        StepReview.Doubt.CHECK_NOT_PASSED);
    assertDoubt(
        without(e -> e instanceof SessionEvent.Measured m && m.step().equals(TwoSides.HEIGHT_R)),
        TwoSides.HEIGHT_R,
        StepReview.Doubt.VALUE_NOT_MEASURED);
    assertEquals(
        Set.of(StepReview.Doubt.HEAD_MARKING_NOT_READ, StepReview.Doubt.STAGE_NOT_CLOSED),
        step(
                without(
                    e ->
                        e instanceof SessionEvent.MarkingNoted m
                            && m.step().equals(TwoSides.BOLT_L)),
                TwoSides.BOLT_L)
            .doubts());
  }

  @Test
  @DisplayName("when it was not ended, or taken up again after the end")
  void notEnded() {
    assertFalse(without(e -> e instanceof SessionEvent.SessionEnded).complete());
    Review resumed = withLast(new SessionEvent.SessionResumed("0.1.0"));
    assertFalse(resumed.ending().ended());
    assertFalse(resumed.complete());
  }

  @Test
  @DisplayName("when a fastener was opened again, and all it had is gone")
  void reopened() {
    Review review = withLast(new SessionEvent.StepReopened(TwoSides.BOLT_L));
    StepReview bolt = step(review, TwoSides.BOLT_L);
    assertFalse(review.complete());
    assertEquals(StepReview.State.OPEN, bolt.state());
    assertEquals(Optional.empty(), bolt.tightened().marking());
    assertEquals(Optional.empty(), bolt.tightened().newHardware());
    assertEquals(List.of(LogMaker.START.plusSeconds(1040)), bolt.work().reopened());
  }

  @Test
  @DisplayName("when a closing was taken back, which keeps marking and hardware but no stage")
  void takenBack() {
    StepReview bolt =
        step(withLast(new SessionEvent.ClosingTakenBack(TwoSides.BOLT_L)), TwoSides.BOLT_L);
    assertEquals(StepReview.State.OPEN, bolt.state());
    assertTrue(bolt.tightened().marking().isPresent());
    assertTrue(bolt.tightened().stages().stream().allMatch(s -> s.closed().isEmpty()));
    assertEquals(1, bolt.tightened().voided());
  }

  @Test
  @DisplayName("when a fastener closed again rests on a confirmation that was cancelled")
  void cancelled() {
    Review review =
        withLast(
            new SessionEvent.ClosingTakenBack(TwoSides.BOLT_L),
            new SessionEvent.LoadChanged(LoadChange.JACK_MOVED),
            new SessionEvent.ValueCalled(TwoSides.BOLT_L, 1, TwoSides.amount("50")),
            new SessionEvent.StageClosed(TwoSides.BOLT_L, 1, "50"),
            new SessionEvent.ValueCalled(TwoSides.BOLT_L, 2, TwoSides.amount("96")),
            new SessionEvent.StageClosed(TwoSides.BOLT_L, 2, "96"),
            new SessionEvent.StepClosed(TwoSides.BOLT_L));
    assertEquals(
        Set.of(StepReview.Doubt.LOAD_NOT_CONFIRMED, StepReview.Doubt.VALUE_OUTSIDE_TOLERANCE),
        step(review, TwoSides.BOLT_L).doubts());
  }

  @Test
  @DisplayName("when a fastener is only snug, and put off after that")
  void snug() {
    Review review =
        withLast(
            new SessionEvent.StepReopened(TwoSides.BOLT_R),
            new SessionEvent.FastenerSnug(TwoSides.BOLT_R),
            new SessionEvent.StepPutOff(TwoSides.BOLT_R, PutOffReason.LATER));
    assertEquals(StepReview.State.STARTED_NOT_TIGHTENED, step(review, TwoSides.BOLT_R).state());
  }

  @Test
  @DisplayName("when the log names a step that the procedure does not have")
  void unknownStep() {
    StepRef strange = new StepRef("strange", TwoSides.SETTLE.side());
    Review review = withLast(new SessionEvent.StepClosed(strange));
    assertEquals(List.of(strange), review.ending().unknownSteps());
    assertFalse(review.complete());
  }
}
