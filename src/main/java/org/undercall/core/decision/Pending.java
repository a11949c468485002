package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** What was said and waits to be read back before it counts. */
public sealed interface Pending {

  /** A measured value. */
  record Value(StepRef step, Measure value) implements Pending {}

  /** A head marking. */
  record Marking(StepRef step, HeadMarking marking) implements Pending {}

  /** The end of the work with steps still open. */
  record End() implements Pending {}

  /** A load condition. */
  record Load(Side side, LoadCondition condition, LoadProof proof, Optional<Measure> height)
      implements Pending {}
}
