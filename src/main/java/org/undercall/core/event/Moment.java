package org.undercall.core.event;

import java.time.OffsetDateTime;

/**
 * A moment on both clocks.
 *
 * @param wall date, time and offset, as people read it
 * @param monotonicMillis milliseconds of a clock that is never set, from an arbitrary start in this
 *     run of the program
 */
public record Moment(OffsetDateTime wall, long monotonicMillis) {}
