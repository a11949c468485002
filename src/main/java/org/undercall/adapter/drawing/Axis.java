package org.undercall.adapter.drawing;

import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * An axis of numbers.
 *
 * @param low its value at one end
 * @param high its value at the other
 * @param from where the one end lies, in pixels
 * @param to where the other lies
 * @param most how many steps it has at most
 */
record Axis(double low, double high, double from, double to, int most) {
  /** Round values, not too many. */
  double[] ticks() {
    double step = step();
    int first = (int) Math.ceil(low / step);
    int last = (int) Math.floor(high / step);
    return IntStream.rangeClosed(first, last).mapToDouble(i -> i * step).toArray();
  }

  private double step() {
    double least = (high - low) / most;
    double ten = Math.pow(10, Math.floor(Math.log10(least)));
    return DoubleStream.of(1, 2, 5, 10).map(n -> n * ten).filter(n -> n >= least).min().orElse(1);
  }

  String label(double tick) {
    int places = (int) Math.max(0, -Math.floor(Math.log10(step())));
    return String.format(Locale.ROOT, "%." + places + "f", tick);
  }

  double at(double value) {
    return from + (to - from) * (value - low) / (high - low);
  }
}
