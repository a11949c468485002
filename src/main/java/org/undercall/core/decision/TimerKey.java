package org.undercall.core.decision;

import org.undercall.core.term.StepRef;
import org.undercall.core.term.TimerName;

/** Which timer: one of a wait step, or one with a name. */
public sealed interface TimerKey {

  /** The timer of a wait step. */
  record OfStep(StepRef step) implements TimerKey {}

  /** A timer that was started by its name. */
  record Named(TimerName name) implements TimerKey {}
}
