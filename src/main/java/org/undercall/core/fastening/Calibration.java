package org.undercall.core.fastening;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * When a torque tool was calibrated and how often it was used since.
 *
 * @param last the day of the last calibration, or of first use after it
 * @param uses the uses since; empty if nobody counts them
 */
public record Calibration(LocalDate last, OptionalInt uses) {

  /** Whether a calibration still holds. */
  public enum State {
    VALID,
    /** The period is over. */
    DUE_BY_DATE,
    /** The number of uses is reached. */
    DUE_BY_USES,
    /** The date lies in the future, so it cannot be right. */
    DATE_NOT_YET
  }

  /**
   * When a calibration runs out, whichever comes first.
   *
   * @param months the period, one or more
   * @param uses the number of uses, one or more
   */
  public record Interval(int months, int uses) {
    /** 12 months or 5000 uses (ISO 6789-1:2017), unless a shop's own control says otherwise. */
    public static final Interval ISO_6789 = new Interval(12, 5000);

    public Interval {
      Require.positive("calibration period", months, "months");
      Require.positive("calibration period", uses, "uses");
    }
  }

  public Calibration {
    Objects.requireNonNull(last, "last");
    if (uses.isPresent()) {
      Require.notNegative("uses since the calibration", uses.getAsInt(), "uses");
    }
  }

  /** The day from which on a new calibration is due. */
  public LocalDate dueOn(Interval interval) {
    return last.plusMonths(interval.months());
  }

  /** The state on a day. */
  public State on(LocalDate today, Interval interval) {
    if (last.isAfter(today)) {
      return State.DATE_NOT_YET;
    }
    if (!today.isBefore(dueOn(interval))) {
      return State.DUE_BY_DATE;
    }
    boolean worn = uses.isPresent() && uses.getAsInt() >= interval.uses();
    return worn ? State.DUE_BY_USES : State.VALID;
  }
}
