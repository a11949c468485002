package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/** Runs many trials on all cores. Each has a random source of its own, so order does not matter. */
final class Trials {
  /** The odd whole number nearest to 2^64 divided by the golden ratio. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final int threads;
  private final double scale;

  /**
   * Trials on a machine.
   *
   * @param scale 1 for the full counts, less for a quick look
   */
  Trials(int threads, double scale) {
    this.threads = threads;
    this.scale = scale;
  }

  /** The same, one after the other, for what takes its time from the machine's clock. */
  Trials oneByOne() {
    return new Trials(1, scale);
  }

  /** How many trials to make where the full run makes so many; at least one. */
  int count(int full) {
    return (int) Math.max(1, Math.round(full * scale));
  }

  /** One trial. */
  interface Trial<T> {
    /** Runs it; the index counts from 0, the random source is the trial's own. */
    T run(int index, Random random);
  }

  /**
   * Makes so many trials.
   *
   * @param full how many the full run makes
   * @param seed the same seed makes the same trials
   */
  <T> List<T> run(int full, long seed, Trial<T> trial) {
    return all(count(full), i -> trial.run(i, random(seed, i)));
  }

  /**
   * The random source of a trial. Neighbouring seeds of a {@link Random} begin with nearly the same
   * number, so they are spread first.
   */
  static Random random(long seed, int index) {
    return new Random((seed * 1_000_003L + index) * SPREAD);
  }

  /** Does something for every index from 0 to below the count, in the order of the index. */
  <T> List<T> all(int count, IntFunction<T> each) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<T>> waiting = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        int index = i;
        waiting.add(pool.submit(() -> each.apply(index)));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> future : waiting) {
        results.add(future.get());
      }
      return results;
    } catch (InterruptedException | ExecutionException e) {
      throw new IllegalStateException(e);
    } finally {
      pool.shutdownNow();
    }
  }
}
