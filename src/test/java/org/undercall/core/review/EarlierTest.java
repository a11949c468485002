package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.review.TwoSides.BOLT_L;
import static org.undercall.core.review.TwoSides.BOOT_L;
import static org.undercall.core.review.TwoSides.HEIGHT_L;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.StepRef;

@DisplayName("What stood closed of a step before it was opened again")
class EarlierTest {
  private final LogMaker maker =
      new LogMaker()
          .at(0, new SessionEvent.SessionStarted("t", "1", "s", "v"))
          .at(10, new SessionEvent.CautionsUnderstood())
          .at(20, new SessionEvent.StepEntered(BOLT_L));

  private List<Earlier> earlier(StepRef step) {
    Review review = Review.of(TwoSides.walk(), maker.log());
    return review.steps().stream()
        .filter(s -> s.place().ref().equals(step))
        .findFirst()
        .orElseThrow()
        .work()
        .earlier();
  }

  private void closed(int from) {
    maker.at(from, new SessionEvent.NewHardwareFitted(BOLT_L));
    maker.at(from + 1, new SessionEvent.MarkingNoted(BOLT_L, new HeadMarking("10.9")));
    maker.at(
        from + 10,
        new SessionEvent.ValueCalled(BOLT_L, 1, new BigDecimal("50")),
        new SessionEvent.StageClosed(BOLT_L, 1, "50"));
    maker.at(
        from + 20,
        new SessionEvent.ValueCalled(BOLT_L, 2, new BigDecimal("91")),
        new SessionEvent.StageClosed(BOLT_L, 2, "91"),
        new SessionEvent.StepClosed(BOLT_L));
  }

  @Test
  @DisplayName("is kept with its values and times, and with why it was opened, each time")
  void reopened() {
    closed(30);
    maker.heard(60, "open step three again", new SessionEvent.StepReopened(BOLT_L));
    closed(70);
    maker.heard(100, "no", new SessionEvent.ClosingTakenBack(BOLT_L));
    List<Earlier> found = earlier(BOLT_L);
    assertEquals(2, found.size());
    Earlier first = found.get(0);
    assertEquals(LogMaker.START.plusSeconds(60), first.at());
    assertEquals(Optional.of(LogMaker.START.plusSeconds(50)), first.closed());
    assertEquals(Optional.of("open step three again"), first.heard());
    assertTrue(first.why() instanceof SessionEvent.StepReopened);
    assertEquals(Optional.of(new BigDecimal("91")), first.tightened().stages().get(1).called());
    assertEquals(
        Optional.of(LogMaker.START.plusSeconds(40)), first.tightened().stages().get(0).closed());
    assertTrue(found.get(1).why() instanceof SessionEvent.ClosingTakenBack);
  }

  @Test
  @DisplayName("names the step for which it no longer holds")
  void lapsed() {
    maker.at(30, new SessionEvent.WorkDone(BOOT_L), new SessionEvent.CheckAnswered(BOOT_L, true));
    maker.at(31, new SessionEvent.StepClosed(BOOT_L));
    maker.at(40, new SessionEvent.ClosingLapsed(BOOT_L, HEIGHT_L));
    Earlier found = earlier(BOOT_L).get(0);
    assertEquals(new SessionEvent.ClosingLapsed(BOOT_L, HEIGHT_L), found.why());
    assertEquals(1, found.answers().size());
  }

  @Test
  @DisplayName("is a stage that was taken back, though the step was not closed")
  void stage() {
    maker.at(30, new SessionEvent.MarkingNoted(BOLT_L, new HeadMarking("10.9")));
    maker.at(40, new SessionEvent.StageClosed(BOLT_L, 1, "50"));
    maker.at(50, new SessionEvent.StageTakenBack(BOLT_L, 1));
    assertEquals(1, earlier(BOLT_L).size());
    assertEquals(Optional.empty(), earlier(BOLT_L).get(0).closed());
  }

  @Test
  @DisplayName("is nothing where nothing was closed")
  void nothing() {
    maker.at(30, new SessionEvent.StagesVoided(BOLT_L));
    maker.at(40, new SessionEvent.Loosened(BOLT_L));
    assertEquals(List.of(), earlier(BOLT_L));
  }
}
