package org.undercall.adapter.drawing;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.undercall.text.Svg;

/**
 * Draws the time at work on each step: the median, quartiles and ends of many sessions as a box
 * (Tukey, Exploratory Data Analysis, 1977), one session as a mark on it, and left against right.
 */
public final class StepsPlot {
  private static final double ROW = 26;
  private static final double WIDTH = 1000;
  private static final double RIGHT = 980;
  private static final double TOP = 110;
  private static final double GAP = 50;

  /** Half of a box. */
  private static final double HALF = 8;

  private static final int MOST_LETTERS = 60;
  private static final String[] BOX = {"fill", "#C9D6EA", "stroke", "#000"};
  private static final String[] BLACK = {"stroke", "#000"};
  private static final List<Mark> MARKS = List.of(Mark.SESSION, Mark.SLOW, Mark.LEFT, Mark.RIGHT);

  private final Svg svg;
  private final TimeAxis axis;
  private double y = TOP;

  private StepsPlot(Svg svg, TimeAxis axis) {
    this.svg = svg;
    this.axis = axis;
  }

  /**
   * The plot as SVG.
   *
   * @param title of any length
   * @param note words under the title; may be blank
   * @param rows from top to bottom
   * @param pairs from top to bottom; if there are none, left against right is not drawn
   */
  public static String of(String title, String note, List<StepRow> rows, List<SidePair> pairs) {
    double high = TOP + ROW * (rows.size() + pairs.size()) + GAP + (pairs.isEmpty() ? 0 : GAP);
    Svg svg = Sheet.of(WIDTH, high, title, title, note);
    StepsPlot plot = new StepsPlot(svg, axis(rows, pairs));
    svg.text(
        (plot.axis.left() + RIGHT) / 2,
        TOP - 25,
        "time at work, on a logarithmic scale",
        Sheet.MIDDLE);
    plot.part("step (sessions that closed it)", rows.size());
    rows.forEach(plot::step);
    if (!pairs.isEmpty()) {
      plot.y += GAP;
      plot.part("left against right", pairs.size());
      pairs.forEach(plot::pair);
    }
    plot.legend(pairs.isEmpty() ? List.of(Mark.SESSION, Mark.SLOW) : MARKS);
    return svg.toString();
  }

  /** The axis of time, right of the longest name. */
  static TimeAxis axis(List<StepRow> rows, List<SidePair> pairs) {
    Stream<Double> steps =
        rows.stream()
            .flatMap(
                row ->
                    Stream.concat(
                        row.millis().stream(),
                        row.spread().stream().flatMap(s -> Stream.of(s.least(), s.most()))));
    Stream<Double> sides = pairs.stream().flatMap(pair -> Stream.of(pair.left(), pair.right()));
    double[] all = Stream.concat(steps, sides).mapToDouble(d -> d).sorted().toArray();
    Stream<String> names =
        Stream.concat(rows.stream().map(StepsPlot::name), pairs.stream().map(SidePair::step));
    int letters = names.mapToInt(String::length).max().orElse(0);
    double left = 40 + Sheet.LETTER * Math.max(30, Math.min(MOST_LETTERS, letters));
    return all.length == 0
        ? TimeAxis.around(1, 1, left, RIGHT)
        : TimeAxis.around(all[0], all[all.length - 1], left, RIGHT);
  }

  private static String name(StepRow row) {
    return row.name() + row.spread().map(s -> " (" + s.sessions() + ")").orElse("");
  }

  /** The ground of some rows, with what they are. */
  private void part(String label, int rows) {
    double bottom = y + rows * ROW;
    svg.text(axis.left() - 12, y - 8, label, Sheet.END);
    for (int tick : axis.ticks()) {
      double x = axis.at(1000.0 * tick);
      svg.line(x, y, x, bottom, Sheet.GRID);
      svg.text(x, y - 8, TimeAxis.label(tick), Sheet.MIDDLE);
    }
    svg.rectangle(axis.left(), y, RIGHT - axis.left(), bottom - y, Sheet.FRAME);
  }

  /** The name of a row, on two lines if need be; gives the middle of the row. */
  private double row(String name) {
    List<String> lines = Sheet.wrapped(name, MOST_LETTERS);
    double middle = y + ROW / 2;
    for (int i = 0; i < lines.size(); i++) {
      svg.text(
          axis.left() - 12,
          middle + 4 + 12 * (i - (lines.size() - 1) / 2.0),
          lines.get(i),
          Sheet.END);
    }
    y += ROW;
    return middle;
  }

  private void step(StepRow row) {
    double middle = row(name(row));
    row.spread().ifPresent(spread -> box(spread, middle));
    Mark mark = row.slow() ? Mark.SLOW : Mark.SESSION;
    row.millis().ifPresent(time -> mark.draw(svg, axis.at(time), middle));
    if (row.slow()) {
      row.millis().ifPresent(time -> svg.text(axis.at(time) + 10, middle - 3, "slow", Sheet.SMALL));
    }
  }

  private void box(StepRow.Spread s, double middle) {
    svg.line(axis.at(s.least()), middle, axis.at(s.most()), middle, BLACK);
    double left = axis.at(s.lower());
    svg.rectangle(left, middle - HALF, axis.at(s.upper()) - left, 2 * HALF, BOX);
    DoubleStream.of(s.least(), s.median(), s.most())
        .map(axis::at)
        .forEach(x -> svg.line(x, middle - HALF, x, middle + HALF, BLACK));
  }

  private void pair(SidePair pair) {
    double middle = row(pair.step());
    double left = axis.at(pair.left());
    double right = axis.at(pair.right());
    svg.line(left, middle, right, middle, "stroke", "#ccc", "stroke-width", "3");
    Mark.LEFT.draw(svg, left, middle);
    Mark.RIGHT.draw(svg, right, middle);
    double beside = Math.max(left, right) + 12;
    boolean fits = beside + Sheet.LETTER * pair.words().length() < WIDTH;
    String[] style = fits ? Sheet.SMALL : Sheet.END;
    svg.text(fits ? beside : Math.min(left, right) - 12, middle + 4, pair.words(), style);
  }

  private void legend(List<Mark> marks) {
    double x = WIDTH / 4;
    svg.rectangle(x - 6, y + 20, 12, 10, BOX);
    x = named(x, "sessions held against");
    for (Mark mark : marks) {
      mark.draw(svg, x, y + 25);
      x = named(x, mark.meaning());
    }
  }

  private double named(double x, String meaning) {
    svg.text(x + 11, y + 29, meaning, Sheet.SMALL);
    return x + 36 + Sheet.LETTER * meaning.length();
  }
}
