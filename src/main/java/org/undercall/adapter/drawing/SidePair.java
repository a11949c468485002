package org.undercall.adapter.drawing;

/**
 * The time at work on the same step on both sides.
 *
 * @param step without a side
 * @param left in milliseconds
 * @param right in milliseconds
 * @param words which is longer
 */
public record SidePair(String step, double left, double right, String words) {}
