package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.undercall.core.term.Measure;
import org.undercall.core.term.StepRef;

/**
 * A session that went on from another one, as the other one's review tells of it.
 *
 * @param session the name of its folder
 * @param began when it began
 * @param done whether it is complete and a record of work
 * @param rehearsed whether it is a rehearsal or a demonstration
 * @param sameLog whether the other one's log is still the one that it went on from
 * @param odometer in kilometres, if it was told
 * @param moved the steps at which something had moved
 */
public record FollowUp(
    String session,
    OffsetDateTime began,
    boolean done,
    boolean rehearsed,
    boolean sameLog,
    Optional<Measure> odometer,
    List<StepRef> moved) {
  public FollowUp {
    moved = List.copyOf(moved);
  }
}
