package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.MeasureUnit;

/** One step of a procedure, written once and walked for each side it is done on. */
public sealed interface Step {

  /** What every step has. */
  Head head();

  /**
   * What every step has.
   *
   * @param id stable name of the step in the file and the log
   * @param title as spoken
   * @param brief the title in a few words, for whom the step is known; empty if it has none
   * @param cautions spoken when the step is entered
   * @param changesLoad whether doing it can change how the suspension is loaded
   * @param bearing how it bears on the car and on other steps
   * @param witness whether a second person must have seen it before it closes
   * @param why why it is done as it is, for an apprentice; empty if that is not stated
   */
  record Head(
      String id,
      String title,
      Optional<String> brief,
      List<String> cautions,
      boolean changesLoad,
      Bearing bearing,
      boolean witness,
      Optional<String> why) {
    public Head {
      cautions = List.copyOf(cautions);
    }

    /** Of a step without a witness, of which no reason is stated. */
    public Head(
        String id,
        String title,
        Optional<String> brief,
        List<String> cautions,
        boolean changesLoad,
        Bearing bearing) {
      this(id, title, brief, cautions, changesLoad, bearing, false, Optional.empty());
    }

    /** Of a step of which nothing is stated about the car and other steps. */
    public Head(String id, String title, List<String> cautions, boolean changesLoad) {
      this(id, title, Optional.empty(), cautions, changesLoad, Bearing.NONE);
    }
  }

  /**
   * Work to be done.
   *
   * @param check a question answered before the step closes, if there is one
   * @param wheels what it does to the wheels
   */
  record Do(Head head, Optional<String> check, Wheels wheels) implements Step {
    /** Work that leaves the wheels as they are. */
    public Do(Head head, Optional<String> check) {
      this(head, check, Wheels.LEFT_AS_THEY_ARE);
    }
  }

  /**
   * A value to be measured and called.
   *
   * @param unit the unit it is called in
   * @param limits what it may be
   * @param notesRideHeight whether it is the ride height before the work, for the side walked
   */
  record Measure(Head head, MeasureUnit unit, Limits limits, boolean notesRideHeight)
      implements Step {}

  /**
   * What a measured value may be.
   *
   * @param least inclusive, empty if there is none
   * @param most inclusive, empty if there is none
   * @param mayBeOutside whether a value outside is a finding that closes the step, as in a
   *     diagnosis, rather than a fault that keeps it open
   */
  record Limits(Optional<BigDecimal> least, Optional<BigDecimal> most, boolean mayBeOutside) {
    /** Whether a value may be below zero, so that its sign has to be called. */
    public boolean reachBelowZero() {
      return least.or(() -> most).filter(l -> l.signum() < 0).isPresent();
    }

    /** Whether the amount lies within. */
    public boolean hold(BigDecimal amount) {
      return least.map(l -> amount.compareTo(l) >= 0).orElse(true)
          && most.map(m -> amount.compareTo(m) <= 0).orElse(true);
    }
  }

  /** A fastener to be tightened. */
  record Fasten(Head head, Fastener fastener) implements Step {}

  /** A time to be waited. */
  record Wait(Head head, Duration time) implements Step {}

  /**
   * A load condition to be brought about and confirmed.
   *
   * @param byWheels whether wheels that carry the car bring it about, so that they must be on
   */
  record Load(Head head, LoadCondition condition, boolean byWheels) implements Step {
    /** A load condition brought about in any way. */
    public Load(Head head, LoadCondition condition) {
      this(head, condition, false);
    }
  }

  /**
   * Something that stays to be done by others or later, read out and handed over.
   *
   * @param due when, in words, for example "after 50 km"
   */
  record HandOver(Head head, String due) implements Step {}
}
