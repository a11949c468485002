package org.undercall.adapter.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.undercall.text.Svg;

/** Lines over two axes of numbers, and what is to be read from them. */
final class LinePlot {
  private static final double WIDE = 800;
  private static final double LEFT = 55;
  private static final double RIGHT = 785;
  private static final double TOP = 48;
  private static final double BOTTOM = 430;
  private static final double ROOM = 0.05;
  private static final int MOST_TICKS = 20;
  private static final String[] DASHES = {
    "stroke", "#666", "stroke-width", "1.5", "stroke-dasharray", "6 4"
  };

  private final Svg svg;
  private final Axis across;
  private final Axis up;

  /**
   * What is written on a plot.
   *
   * @param note under the title; may be blank
   * @param meaning what it shows, for those who do not see it
   * @param across label of the axis across, with the unit
   * @param up label of the axis up, with the unit
   */
  record Words(String title, String note, String meaning, String across, String up) {}

  /**
   * A line with a name.
   *
   * @param points across and up in turn
   */
  record Course(String name, String colour, List<Double> points) {
    private static final int STEPS = 200;

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
  }

  private record Axis(double low, double high, double from, double to) {
    /** Round values, at most twenty. */
    double[] ticks() {
      double step = step();
      int first = (int) Math.ceil(low / step);
      int last = (int) Math.floor(high / step);
      return IntStream.rangeClosed(first, last).mapToDouble(i -> i * step).toArray();
    }

    private double step() {
      double least = (high - low) / MOST_TICKS;
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

  /**
   * A plot of lines.
   *
   * @param above how much room is above the highest value, as a share of the axis
   */
  LinePlot(Words words, double above, List<Course> courses) {
    double[] x = range(courses, 0);
    double[] y = range(courses, 1);
    across = axis(x[0], x[1], ROOM, LEFT, RIGHT);
    up = axis(Math.min(0, y[0]), Math.max(0, y[1]), above, BOTTOM, TOP);
    svg = Sheet.of(WIDE, 500, words.meaning(), words.title(), words.note());
    grid(words);
    double place = LEFT + 240;
    for (Course course : courses) {
      double[] points = course.points().stream().mapToDouble(Double::doubleValue).toArray();
      for (int i = 0; i < points.length; i += 2) {
        points[i] = across.at(points[i]);
        points[i + 1] = up.at(points[i + 1]);
      }
      String[] style = {"fill", "none", "stroke", course.colour(), "stroke-width", "2.5"};
      svg.polyline(points, style);
      svg.line(place, 484, place + 16, 484, "stroke", course.colour(), "stroke-width", "2.5");
      svg.text(place + 20, 488, course.name(), Sheet.SMALL);
      place += 50 + course.name().length() * Sheet.LETTER;
    }
  }

  private static double[] range(List<Course> courses, int offset) {
    double[] all =
        courses.stream()
            .map(Course::points)
            .flatMapToDouble(
                p -> IntStream.range(0, p.size() / 2).mapToDouble(i -> p.get(2 * i + offset)))
            .sorted()
            .toArray();
    return new double[] {all[0], all[all.length - 1]};
  }

  /** With room at both ends, but none below zero for values that are never below. */
  private static Axis axis(double least, double most, double above, double from, double to) {
    double span = most - least;
    double low = least < 0 ? least - ROOM * span : Math.max(0, least - ROOM * span);
    return new Axis(low, most + above * span, from, to);
  }

  private void grid(Words words) {
    for (double tick : across.ticks()) {
      svg.line(across.at(tick), TOP, across.at(tick), BOTTOM, Sheet.GRID);
      svg.text(across.at(tick), BOTTOM + 15, across.label(tick), "text-anchor", "middle");
    }
    for (double tick : up.ticks()) {
      svg.line(LEFT, up.at(tick), RIGHT, up.at(tick), Sheet.GRID);
      svg.text(LEFT - 6, up.at(tick) + 4, up.label(tick), "text-anchor", "end");
    }
    svg.rectangle(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, Sheet.FRAME);
    svg.text((LEFT + RIGHT) / 2, BOTTOM + 34, words.across(), Sheet.MIDDLE);
    String[] turned = {
      "font-size", "12", "text-anchor", "middle", "transform", "rotate(-90 16 240)"
    };
    svg.text(16, 240, words.up(), turned);
  }

  /** A band from one value across to another. */
  void band(double from, double to, String label) {
    double left = across.at(from);
    String[] pale = {"fill", "#2E7D32", "fill-opacity", "0.3"};
    svg.rectangle(left, TOP, across.at(to) - left, BOTTOM - TOP, pale);
    svg.text((left + across.at(to)) / 2, TOP + 14, label, Sheet.MIDDLE);
  }

  /** A value across. */
  void upright(double value, String label) {
    svg.line(across.at(value), TOP, across.at(value), BOTTOM, DASHES);
    svg.text(across.at(value) - 6, BOTTOM - 6, label, Sheet.END);
  }

  /** A value up. */
  void level(double value, String label) {
    svg.line(LEFT, up.at(value), RIGHT, up.at(value), DASHES);
    svg.text(RIGHT - 6, up.at(value) + 15, label, Sheet.END);
  }

  /** A point, with an arrow to it from words above or below it, on the side with room. */
  void point(double valueAcross, double valueUp, String label, boolean above) {
    double x = across.at(valueAcross);
    double y = up.at(valueUp);
    int down = above ? -1 : 1;
    boolean fits = x + 31 + Sheet.LETTER * label.length() < WIDE;
    int side = fits ? 1 : -1;
    svg.line(x + 2 * side, y + 2 * down, x + 28 * side, y + 28 * down, "stroke", "#000");
    double[] tip = {1.5, 1.5, 8, 4.5, 4.5, 8};
    for (int i = 0; i < tip.length; i++) {
      tip[i] *= i % 2 == 0 ? side : down;
    }
    svg.polygon(x, y, tip);
    svg.text(x + 31 * side, y + 28 * down + 4, label, fits ? Sheet.SMALL : Sheet.END);
  }

  @Override
  public String toString() {
    return svg.toString();
  }
}
