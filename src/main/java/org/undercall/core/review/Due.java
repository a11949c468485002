package org.undercall.core.review;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.undercall.core.term.DueTime;
import org.undercall.core.term.Job;
import org.undercall.core.term.Measure;
import org.undercall.core.term.StepRef;

/**
 * Something that was handed over and is still to be done.
 *
 * @param step its step
 * @param at when it was handed over
 * @param words when it is due, as the procedure has it
 * @param time what those words come to
 */
public record Due(StepRef step, OffsetDateTime at, String words, DueTime time) {

  /** The day on which it is due by its words; empty if they tell none. */
  public Optional<LocalDate> day() {
    return time.days().isPresent()
        ? Optional.of(at.toLocalDate().plusDays(time.days().getAsInt()))
        : Optional.empty();
  }

  /** What the odometer shows when it is due; empty if the distance or the odometer is not known. */
  public Optional<Measure> odometer(Job job) {
    return time.kilometres()
        .flatMap(km -> job.odometer().map(m -> new Measure(m.amount().add(km), m.unit())));
  }

  /** Something handed over then, due when these words say. */
  public static Due of(StepRef step, OffsetDateTime at, String words) {
    return new Due(step, at, words, DueTime.of(words));
  }
}
