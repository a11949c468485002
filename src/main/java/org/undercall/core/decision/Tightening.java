package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.term.HeadMarking;

/**
 * How far the tightening of a fastener has come.
 *
 * @param newHardware whether new hardware was fitted since it was last loosened
 * @param marking the head marking that was read back
 * @param stagesClosed how many stages are closed in this go
 * @param called the value called for the stage at hand, if it matched
 */
public record Tightening(
    boolean newHardware,
    Optional<HeadMarking> marking,
    int stagesClosed,
    Optional<BigDecimal> called) {

  static final Tightening LOOSE = new Tightening(false, Optional.empty(), 0, Optional.empty());

  /** New hardware may be of another class: its head marking is to be read again. */
  Tightening withNewHardware() {
    return new Tightening(true, Optional.empty(), 0, Optional.empty());
  }

  Tightening withMarking(HeadMarking read) {
    return new Tightening(newHardware, Optional.of(read), 0, Optional.empty());
  }

  Tightening withCalled(Optional<BigDecimal> value) {
    return new Tightening(newHardware, marking, stagesClosed, value);
  }

  Tightening withStagesClosed(int stages) {
    return new Tightening(newHardware, marking, stages, Optional.empty());
  }
}
