package org.undercall.core.review;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.LoadCondition;

/** Looks for what the closing of a step lacks, from the events alone. */
final class Doubts {
  private Doubts() {}

  static Set<StepReview.Doubt> of(StepTrace trace) {
    Set<StepReview.Doubt> doubts = EnumSet.noneOf(StepReview.Doubt.class);
    Step step = trace.place.step();
    StepReview.Tightened tightened = trace.tightening.tightened();
    if (needs(step) != LoadCondition.ANY && tightened.load().isEmpty()) {
      doubts.add(StepReview.Doubt.LOAD_NOT_CONFIRMED);
    }
    addIf(doubts, trace.lacksWitness(), StepReview.Doubt.WITNESS_MISSING);
    if (step instanceof Step.Fasten fasten) {
      addFastener(doubts, fasten.fastener(), tightened);
    } else if (step instanceof Step.Do work && work.check().isPresent()) {
      boolean passed = last(trace.answers).map(a -> a.event().passed()).orElse(false);
      addIf(doubts, !passed, StepReview.Doubt.CHECK_NOT_PASSED);
    } else if (step instanceof Step.Measure measure) {
      addMeasure(doubts, measure, trace);
    }
    return doubts;
  }

  /** The load condition a step needs before it can be closed. */
  static LoadCondition needs(Step step) {
    if (step instanceof Step.Fasten fasten) {
      return fasten.fastener().needs();
    }
    return step instanceof Step.Load load ? load.condition() : LoadCondition.ANY;
  }

  private static void addFastener(
      Set<StepReview.Doubt> doubts, Fastener fastener, StepReview.Tightened tightened) {
    List<StepReview.StageReview> stages = tightened.stages();
    boolean allClosed = stages.stream().allMatch(s -> s.closed().isPresent());
    boolean within = stages.stream().allMatch(StepReview.StageReview::within);
    addIf(doubts, stages.isEmpty() || !allClosed, StepReview.Doubt.STAGE_NOT_CLOSED);
    addIf(doubts, !within, StepReview.Doubt.VALUE_OUTSIDE_TOLERANCE);
    addIf(doubts, tightened.finalTorqueOutside(), StepReview.Doubt.FINAL_TORQUE_OUTSIDE);
    addIf(
        doubts,
        fastener.dependsOnMarking() && tightened.marking().isEmpty(),
        StepReview.Doubt.HEAD_MARKING_NOT_READ);
    addIf(
        doubts,
        fastener.part().oneTimeUse() && !tightened.hardwareHolds(fastener.part()),
        StepReview.Doubt.HARDWARE_NOT_NEW);
  }

  private static void addMeasure(Set<StepReview.Doubt> doubts, Step.Measure step, StepTrace trace) {
    addIf(doubts, trace.measured.isEmpty(), StepReview.Doubt.VALUE_NOT_MEASURED);
    boolean outside =
        last(trace.measured)
            .map(m -> !step.limits().hold(m.event().value().amount()))
            .orElse(false);
    addIf(doubts, outside && !step.limits().mayBeOutside(), StepReview.Doubt.VALUE_OUTSIDE_LIMITS);
  }

  private static void addIf(Set<StepReview.Doubt> doubts, boolean lacking, StepReview.Doubt doubt) {
    if (lacking) {
      doubts.add(doubt);
    }
  }

  private static <T> java.util.Optional<T> last(List<T> list) {
    return list.isEmpty()
        ? java.util.Optional.empty()
        : java.util.Optional.of(list.get(list.size() - 1));
  }
}
