package org.undercall.core.decision;

/**
 * How long the work took so far, pauses and closed steps apart: what "how long so far" answers.
 *
 * @param work milliseconds at all steps
 * @param step milliseconds at the step at hand
 * @param runs whether both grow now
 */
public record Elapsed(long work, long step, boolean runs) {}
