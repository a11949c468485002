package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.term.HeadMarking;
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
}
