package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.undercall.core.review.TwoSides.BOLT_L;
import static org.undercall.core.review.TwoSides.SETTLE;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Side;

@DisplayName("What was answered sooner than it can be done")
class HasteTest {
  private final LogMaker maker =
      new LogMaker()
          .at(0, new SessionEvent.SessionStarted("t", "1", "s", "v"))
          .at(10, new SessionEvent.CautionsUnderstood())
          .at(20, new SessionEvent.StepEntered(BOLT_L));

  private List<Haste> haste() {
    return Review.of(TwoSides.walk(), maker.log()).remarks().haste();
  }

  private void stage(long second, int stage) {
    maker.heard(
        second,
        "torque completed",
        new SessionEvent.ValueCalled(BOLT_L, stage, new BigDecimal("50")),
        new SessionEvent.StageClosed(BOLT_L, stage, "50"));
  }

  @Nested
  @DisplayName("is a stage")
  class OfAStage {
    @Test
    @DisplayName("closed within two seconds of what came before it")
    void tooSoon() {
      maker.at(30, new SessionEvent.MarkingNoted(BOLT_L, new HeadMarking("10.9")));
      stage(31, 1);
      stage(33, 2);
      Haste found = haste().get(0);
      assertEquals(1, haste().size());
      assertEquals(Haste.Kind.STAGE, found.kind());
      assertEquals(1, found.stage());
      assertEquals(BOLT_L, found.step());
      assertEquals(Duration.ofSeconds(1), found.took());
      assertEquals(Haste.A_FASTENER, found.least());
      assertEquals(LogMaker.START.plusSeconds(31), found.at());
    }

    @Test
    @DisplayName("counted from when it was asked, not from a value that was refused or asked about")
    void asked() {
      maker.at(30, new SessionEvent.MarkingNoted(BOLT_L, new HeadMarking("10.9")));
      maker.heard(
          39, "x", new SessionEvent.ValueRefused(BOLT_L, 1, BigDecimal.ONE, BigDecimal.TEN));
      maker.heard(39, "x", new SessionEvent.Asked("time"));
      stage(40, 1);
      assertEquals(List.of(), haste());
    }

    @Test
    @DisplayName("of a set closed at once, which takes as often as long")
    void counted() {
      maker.at(30, new SessionEvent.StepEntered(BOLT_L));
      maker.heard(
          39,
          "all five",
          new SessionEvent.PositionsClosed(BOLT_L, 1, new Positions(List.of(1, 2, 3, 4, 5)), "50"),
          new SessionEvent.StageClosed(BOLT_L, 1, "50"));
      assertEquals(1, haste().size());
      assertEquals(Duration.ofSeconds(10), haste().get(0).least());
    }
  }

  @Nested
  @DisplayName("is a time to be waited")
  class OfAWait {
    @Test
    @DisplayName("closed before it is over")
    void tooSoon() {
      wait(3);
      assertEquals(Haste.Kind.WAIT, haste().get(0).kind());
      assertEquals(Duration.ofMinutes(1), haste().get(0).least());
    }

    @Test
    @DisplayName("but not one that was over while the machine slept")
    void asleep() {
      maker.at(30, new SessionEvent.TimerStarted(SETTLE, 60, Instant.EPOCH));
      maker.wallClockSet(Duration.ofMinutes(2));
      maker.at(33, new SessionEvent.StepClosed(SETTLE));
      assertEquals(List.of(), haste());
    }

    @Test
    @DisplayName("but not one that was waited for")
    void over() {
      wait(60);
      assertEquals(List.of(), haste());
    }

    private void wait(int seconds) {
      maker.at(30, new SessionEvent.TimerStarted(SETTLE, 60, Instant.EPOCH));
      maker.at(30 + seconds, new SessionEvent.StepClosed(SETTLE));
    }
  }

  @Nested
  @DisplayName("is a load condition")
  class OfALoad {
    private void confirmed(LoadChange change, int seconds) {
      maker.at(30, new SessionEvent.LoadChanged(change));
      maker.at(
          30 + seconds,
          new SessionEvent.LoadConfirmed(
              Side.LEFT,
              LoadCondition.RIDE_HEIGHT,
              LoadProof.WHEELS_CARRY_THE_CAR,
              Optional.empty()));
    }

    @Test
    @DisplayName("confirmed within five seconds of the car being lowered")
    void tooSoon() {
      confirmed(LoadChange.CAR_LOWERED, 4);
      assertEquals(Haste.Kind.LOAD, haste().get(0).kind());
      assertEquals(BOLT_L, haste().get(0).step());
    }

    @Test
    @DisplayName("but not one that the car had time for, or for which it did not move")
    void enough() {
      confirmed(LoadChange.CAR_LOWERED, 5);
      confirmed(LoadChange.WORK_HELD, 1);
      assertEquals(List.of(), haste());
    }
  }
}
