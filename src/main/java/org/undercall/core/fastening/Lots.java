package org.undercall.core.fastening;

/**
 * Lots drawn from a seed: the same seed gives the same lots, so nothing here is left to chance.
 *
 * <p>SplitMix64 (G. L. Steele, D. Lea, C. H. Flood: Fast splittable pseudorandom number generators,
 * 2014); normal lots by the polar method of G. Marsaglia.
 */
final class Lots {
  private static final long STEP = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  private long state;

  Lots(long seed) {
    state = seed;
  }

  /** Even from -1 to 1. */
  double even() {
    return 2 * share() - 1;
  }

  /** Normal, in standard deviations. */
  double normal() {
    double x;
    double square;
    do {
      x = even();
      double y = even();
      square = x * x + y * y;
    } while (square >= 1 || square == 0);
    return x * Math.sqrt(-2 * Math.log(square) / square);
  }

  private double share() {
    state += STEP;
    long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return ((mixed ^ (mixed >>> 31)) >>> 11) * UNIT;
  }
}
