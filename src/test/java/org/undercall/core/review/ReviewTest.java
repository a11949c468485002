package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.Measure;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.StepRef;

@DisplayName("The review of a session")
class ReviewTest {

  private static Review whole() {
    return Review.of(TwoSides.walk(), TwoSides.log());
  }

  private static StepReview step(Review review, StepRef ref) {
    return review.steps().stream()
        .filter(s -> s.place().ref().equals(ref))
        .findFirst()
        .orElseThrow();
  }

  private static void assertTimes(StepRef ref, long whole, long working, long aside) {
    StepReview.Times times = step(whole(), ref).times();
    assertEquals(Duration.ofSeconds(whole), times.whole().length(), ref + " whole");
    assertEquals(Duration.ofSeconds(working), times.working(), ref + " working");
    assertEquals(Duration.ofSeconds(aside), times.aside(), ref + " aside");
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

  @Nested
  @DisplayName("of work done on both sides")
  class Whole {

    @Test
    @DisplayName("is complete, with every step closed")
    void complete() {
      assertTrue(whole().complete());
      assertEquals(List.of(), whole().open());
      assertEquals(List.of(), whole().doubtful());
    }

    @Test
    @DisplayName("adds up the times of each step")
    void times() {
      assertTimes(TwoSides.HEIGHT_L, 55, 25, 0);
      assertTimes(TwoSides.BOOT_L, 45, 45, 0);
      assertTimes(TwoSides.HEIGHT_R, 30, 30, 0);
      assertTimes(TwoSides.BOOT_R, 90, 30, 0);
      assertTimes(TwoSides.BOLT_R, 70, 70, 0);
      assertTimes(TwoSides.BOLT_L, 830, 40 + 5 + 30, 190);
      assertTimes(TwoSides.SETTLE, 75, 75, 0);
      assertTimes(TwoSides.RECHECK, 15, 15, 0);
      assertEquals(Duration.ofSeconds(60), step(whole(), TwoSides.SETTLE).times().timed());
    }

    @Test
    @DisplayName("adds up the times of the session, without holds and gaps in the work")
    void totals() {
      Review.Totals totals = whole().totals();
      assertEquals(new Span(Duration.ofSeconds(1030), true), totals.elapsed());
      assertEquals(Duration.ofSeconds(60), totals.held());
      assertEquals(Duration.ofSeconds(565), totals.away());
      assertEquals(Duration.ofSeconds(365), totals.working());
      Duration sum =
          whole().steps().stream()
              .map(s -> s.times().working())
              .reduce(Duration.ZERO, Duration::plus);
      assertEquals(sum, totals.working());
      assertEquals(1, totals.notUnderstood());
    }

    @Test
    @DisplayName("flags the one step that a restart falls into")
    void restart() {
      for (StepReview step : whole().steps()) {
        boolean across = step.place().ref().equals(TwoSides.BOLT_L);
        assertEquals(across, step.times().whole().acrossRestart(), step.place().ref().toString());
      }
    }

    @Test
    @DisplayName("sets called values against the specification of the marking that was read")
    void stages() {
      StepReview.Tightened left = step(whole(), TwoSides.BOLT_L).tightened();
      assertEquals(Optional.of(new HeadMarking("10.9")), left.marking());
      assertEquals(TwoSides.amount("50"), left.stages().get(0).specification().amount());
      assertEquals(Optional.of(TwoSides.amount("1")), left.stages().get(0).deviation());
      assertEquals(TwoSides.amount("3"), left.stages().get(0).plusMinus());
      assertTrue(left.stages().get(0).within());
      assertEquals(Optional.of(TwoSides.amount("0")), left.stages().get(1).deviation());
      assertEquals(Optional.of(LogMaker.START.plusSeconds(930)), left.stages().get(1).closed());
      assertEquals(Optional.of(LogMaker.START.plusSeconds(110)), left.newHardware());
    }

    @Test
    @DisplayName("says on which confirmation each closing rests")
    void loads() {
      assertEquals(
          LogMaker.START.plusSeconds(910),
          step(whole(), TwoSides.BOLT_L).tightened().load().orElseThrow().at());
      assertEquals(
          Optional.of(Measure.millimetres("379")),
          step(whole(), TwoSides.BOLT_R).tightened().load().orElseThrow().event().height());
    }

    @Test
    @DisplayName("keeps refusals, answers, reasons, notes and hand-overs")
    void remarks() {
      Review review = whole();
      assertEquals(
          List.of(Optional.of(TwoSides.BOLT_L), Optional.of(TwoSides.BOLT_R)),
          review.remarks().refusals().stream().map(Review.Refusal::step).toList());
      assertEquals(
          Optional.of("nine zero"), step(review, TwoSides.BOLT_R).work().refusals().get(0).heard());
      assertEquals(
          List.of(false, true),
          step(review, TwoSides.BOOT_L).work().answers().stream()
              .map(a -> a.event().passed())
              .toList());
      assertEquals(
          List.of(PutOffReason.RIDE_HEIGHT), step(review, TwoSides.BOLT_L).work().putOff());
      assertEquals("left boot looks dry", review.remarks().notes().get(0).event().text());
      assertEquals("after 50 km", review.remarks().handOvers().get(0).event().due());
    }

    @Test
    @DisplayName("has three groups: left, right, whole car")
    void groups() {
      assertEquals(List.of(3, 3, 2), whole().bySideAndPhase().stream().map(List::size).toList());
    }
  }

  @Test
  @DisplayName("measures by the steady clock when the wall clock is set meanwhile")
  void wallClockSet() {
    LogMaker maker = new LogMaker();
    TwoSides.leftUntilPutOff(maker);
    maker.wallClockSet(Duration.ofHours(-3));
    TwoSides.right(maker);
    TwoSides.restartAndFinish(maker);
    Review review = Review.of(TwoSides.walk(), maker.log());
    assertEquals(whole().totals(), review.totals());
    assertEquals(Duration.ofSeconds(30), step(review, TwoSides.HEIGHT_R).times().whole().length());
  }

  @Test
  @DisplayName("shows what is open when the work stops half-way")
  void halfWay() {
    LogMaker maker = new LogMaker();
    TwoSides.leftUntilPutOff(maker);
    Review review = Review.of(TwoSides.walk(), maker.log());
    assertFalse(review.complete());
    assertEquals(6, review.open().size());
    assertEquals(StepReview.State.PUT_OFF, step(review, TwoSides.BOLT_L).state());
    assertEquals(Optional.empty(), step(review, TwoSides.BOLT_R).times().start());
    assertEquals(List.of(), step(review, TwoSides.BOLT_R).tightened().stages());
  }

  @Nested
  @DisplayName("is not complete, whatever the program said,")
  class NotComplete {

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
}
