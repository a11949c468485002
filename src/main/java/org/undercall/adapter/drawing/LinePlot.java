package org.undercall.adapter.drawing;

import java.util.List;
import java.util.stream.IntStream;
import org.undercall.text.Svg;

/** Lines over two axes of numbers, and what is to be read from them. */
final class LinePlot {
  private static final double LEFT = 55;
  private static final double ROOM = 0.05;
  private static final double LEGEND = 16;

  private static final String[] DASHES = {
    "stroke", "#666", "stroke-width", "1.5", "stroke-dasharray", "6 4"
  };

  private final PlotSize size;
  private final double right;
  private final double top;
  private final double bottom;
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
   * A plot of lines.
   *
   * @param above how much room is above the highest value, as a share of the axis
   */
  LinePlot(PlotSize size, Words words, double above, List<Course> courses) {
    this.size = size;
    right = size.wide() - 15;
    top = size.titled() ? 48 : 12;
    bottom = size.high() - (size.titled() ? 70 : 52 + LEGEND * legendRows(size, courses));
    double[] x = range(courses, 0);
    double[] y = range(courses, 1);
    across = axis(x[0], x[1], ROOM, LEFT, right);
    up = axis(Math.min(0, y[0]), Math.max(0, y[1]), above, bottom, top);
    svg =
        size.titled()
            ? Sheet.of(size.wide(), size.high(), words.meaning(), words.title(), words.note())
            : new Svg(size.wide(), size.high(), words.title() + ". " + words.meaning())
                .rectangle(0, 0, size.wide(), size.high(), "fill", "#fff");
    grid(words);
    courses.forEach(this::line);
    legend(courses);
  }

  private void line(Course course) {
    svg.polyline(course.drawn(across::at, up::at), course.style());
  }

  private static int legendRows(PlotSize size, List<Course> courses) {
    double place = LEFT;
    int rows = 1;
    for (Course course : courses) {
      double wide = 50 + course.name().length() * Sheet.LETTER;
      if (place > LEFT && place + wide > size.wide()) {
        rows++;
        place = LEFT;
      }
      place += wide;
    }
    return rows;
  }

  /** The names of the lines, under the plot; as many beside each other as there is room for. */
  private void legend(List<Course> courses) {
    double whole = courses.stream().mapToDouble(c -> 50 + c.name().length() * Sheet.LETTER).sum();
    double place = Math.max(LEFT, (LEFT + right - whole) / 2);
    double y = bottom + 54;
    for (Course course : courses) {
      double wide = 50 + course.name().length() * Sheet.LETTER;
      if (place > LEFT && place + wide > size.wide()) {
        place = LEFT;
        y += LEGEND;
      }
      String[] style = course.style();
      svg.line(place, y, place + 20, y, style);
      svg.text(place + 24, y + 4, course.name(), Sheet.SMALL);
      place += wide;
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
  private Axis axis(double least, double most, double above, double from, double to) {
    double span = most - least;
    double low = least < 0 ? least - ROOM * span : Math.max(0, least - ROOM * span);
    return new Axis(low, most + above * span, from, to, size.ticks());
  }

  private void grid(Words words) {
    for (double tick : across.ticks()) {
      svg.line(across.at(tick), top, across.at(tick), bottom, Sheet.GRID);
      svg.text(across.at(tick), bottom + 15, across.label(tick), "text-anchor", "middle");
    }
    for (double tick : up.ticks()) {
      svg.line(LEFT, up.at(tick), right, up.at(tick), Sheet.GRID);
      svg.text(LEFT - 6, up.at(tick) + 4, up.label(tick), "text-anchor", "end");
    }
    svg.rectangle(LEFT, top, right - LEFT, bottom - top, Sheet.FRAME);
    svg.text((LEFT + right) / 2, bottom + 34, words.across(), Sheet.MIDDLE);
    double middle = (top + bottom) / 2;
    String[] turned = {
      "font-size",
      "12",
      "text-anchor",
      "middle",
      "transform",
      "rotate(-90 16 " + Math.round(middle) + ")"
    };
    svg.text(16, middle, words.up(), turned);
  }

  /** A band from one value across to another. */
  void band(double from, double to, String label) {
    double left = across.at(from);
    String[] pale = {"fill", "#2E7D32", "fill-opacity", "0.3"};
    svg.rectangle(left, top, across.at(to) - left, bottom - top, pale);
    svg.text((left + across.at(to)) / 2, top + 14, label, Sheet.MIDDLE);
  }

  /** Everything from a value across on is to be kept out of; nothing if it is beyond the plot. */
  void beyond(double from, String label) {
    if (from >= across.high()) {
      String text = label + ", not shown";
      double wide = Sheet.LETTER * text.length() + 8;
      svg.rectangle(right - wide - 2, bottom - 34, wide, 16, "fill", "#fff");
      svg.text(right - 6, bottom - 22, text, Sheet.END);
      return;
    }
    double left = Math.max(LEFT, across.at(from));
    String[] pale = {"fill", "#B3261E", "fill-opacity", "0.15"};
    svg.rectangle(left, top, right - left, bottom - top, pale);
    svg.line(left, top, left, bottom, "stroke", "#B3261E", "stroke-width", "1.5");
    for (double x = left + 12; x < right; x += 12) {
      svg.line(x, top, x - 6, top + 6, "stroke", "#B3261E");
      svg.line(x, bottom - 6, x - 6, bottom, "stroke", "#B3261E");
    }
    boolean fits = left + Sheet.LETTER * label.length() + 8 < right;
    svg.text(fits ? left + 5 : left - 5, bottom - 22, label, fits ? Sheet.SMALL : Sheet.END);
  }

  /** A value across. */
  void upright(double value, String label) {
    svg.line(across.at(value), top, across.at(value), bottom, DASHES);
    svg.text(across.at(value) - 6, bottom - 6, label, Sheet.END);
  }

  /** A value up. */
  void level(double value, String label) {
    svg.line(LEFT, up.at(value), right, up.at(value), DASHES);
    svg.text(right - 6, up.at(value) + 15, label, Sheet.END);
  }

  /** A value up, with its words at the left end, above the line or below it. */
  void level(double value, String label, boolean above) {
    svg.line(LEFT, up.at(value), right, up.at(value), DASHES);
    svg.text(LEFT + 6, up.at(value) + (above ? -5 : 14), label, Sheet.SMALL);
  }

  /** A point, with an arrow to it from words above or below it, on the side with room. */
  void point(double valueAcross, double valueUp, String label, boolean above) {
    double x = across.at(valueAcross);
    double y = up.at(valueUp);
    int down = above ? -1 : 1;
    boolean fits = x + 31 + Sheet.LETTER * label.length() < size.wide();
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
