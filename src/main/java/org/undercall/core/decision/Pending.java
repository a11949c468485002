package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.Positions;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Trouble;

/** What was said and waits to be read back before it counts. */
public sealed interface Pending {

  /** A measured value. */
  record Value(StepRef step, Measure value) implements Pending {}

  /** A head marking. */
  record Marking(StepRef step, HeadMarking marking) implements Pending {}

  /** The end of the work with steps still open. */
  record End() implements Pending {}

  /** Something that went wrong. */
  record Wrong(StepRef step, Trouble trouble, Optional<Integer> position) implements Pending {}

  /** Why a wrench is used although its calibration is over. */
  record Overdue(StepRef step, String wrench, OverdueReason reason) implements Pending {}

  /** What the note that is being spoken reports, and where that is. */
  record Report(Finding finding, Side side) implements Pending {}

  /** The length of a used part, or how often it was used. */
  record Reuse(StepRef step, ReuseBy by, BigDecimal value) implements Pending {}

  /** Something about the job. */
  record OfJob(JobField field, String text) implements Pending {}

  /** A torque that was read after the last angle of a fastener. */
  record FinalTorque(StepRef step, BigDecimal value) implements Pending {}

  /** A load condition. */
  record Load(Side side, LoadCondition condition, LoadProof proof, Optional<Measure> height)
      implements Pending {}

  /** Something about the stage at hand; it is dropped when the tightening is broken off. */
  sealed interface OfStage extends Pending {}

  /**
   * A reading that is within the tolerance of the stage at hand and not its nominal value.
   *
   * @param closes whether the stage was said to be completed with it
   */
  record Reading(StepRef step, BigDecimal value, boolean closes) implements OfStage {}

  /** Who saw what was done. It falls with whatever breaks the work off. */
  record Seen(StepRef step, String witness) implements OfStage {}

  /** The torque that a nut needs to run down. */
  record RunDown(StepRef step, BigDecimal value) implements OfStage {}

  /** How far the angle of the stage at hand was turned, in degrees. */
  record Turned(StepRef step, BigDecimal degrees) implements OfStage {}

  /** A position of a set out of turn, or all that are left by their number. */
  record OfSet(StepRef step, Positions positions) implements OfStage {}

  /** Why the step at hand is closed before those that come first. */
  record OutOfOrder(StepRef step, OrderReason reason) implements Pending {}

  /** Whether these closings still hold after a step was opened again. */
  record Later(StepRef because, List<StepRef> steps) implements Pending {
    public Later {
      steps = List.copyOf(steps);
    }

    Later and(StepRef step) {
      List<StepRef> more = new ArrayList<>(steps);
      more.add(step);
      return new Later(because, more);
    }
  }
}
