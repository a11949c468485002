package org.undercall.adapter.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A line with a name.
 *
 * @param points across and up in turn
 */
record Course(String name, String colour, List<Double> points) {
  private static final int STEPS = 200;

  /** How far, in pixels, a point may lie off a straight line. */
  private static final double STRAIGHT = 0.1;

  /** The course of a function from one value to another. */
  static Course of(String name, String colour, double[] ends, DoubleUnaryOperator function) {
    List<Double> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double across = ends[0] + (ends[1] - ends[0]) * i / STEPS;
      points.add(across);
      points.add(function.applyAsDouble(across));
    }
    return new Course(name, colour, List.copyOf(points));
  }

  /**
   * Its points in pixels, without those that lie on a straight line between others.
   *
   * @param across where a value across lies
   * @param up where a value up lies
   */
  double[] drawn(DoubleUnaryOperator across, DoubleUnaryOperator up) {
    double[] drawn = new double[points.size()];
    for (int i = 0; i < drawn.length; i += 2) {
      drawn[i] = across.applyAsDouble(points.get(i));
      drawn[i + 1] = up.applyAsDouble(points.get(i + 1));
    }
    return straightened(drawn);
  }

  private static double[] straightened(double[] points) {
    List<Double> kept = new ArrayList<>(List.of(points[0], points[1]));
    int from = 0;
    for (int to = 4; to < points.length; to += 2) {
      if (bends(points, from, to)) {
        from = to - 2;
        kept.addAll(List.of(points[from], points[from + 1]));
      }
    }
    kept.addAll(List.of(points[points.length - 2], points[points.length - 1]));
    return kept.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static boolean bends(double[] points, int from, int to) {
    double wide = points[to] - points[from];
    double high = points[to + 1] - points[from + 1];
    double length = Math.hypot(wide, high);
    for (int i = from + 2; i < to; i += 2) {
      double off = wide * (points[i + 1] - points[from + 1]) - high * (points[i] - points[from]);
      if (Math.abs(off) > STRAIGHT * length) {
        return true;
      }
    }
    return false;
  }

  /** How the line is drawn; the second colour is broken too, for who sees no colours. */
  String[] style() {
    return new String[] {
      "fill",
      "none",
      "stroke",
      colour,
      "stroke-width",
      "2.5",
      "stroke-dasharray",
      colour.equals(Sheet.ORANGE) ? "9 3" : "none"
    };
  }
}
