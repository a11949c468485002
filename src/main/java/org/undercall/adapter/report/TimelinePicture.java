package org.undercall.adapter.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.text.Svg;

/**
 * The course of a session as pictures: a lane for each side, a row for each step, bars where it was
 * at hand, and marks told apart by letter and shape. All pictures have the same axis of time.
 */
final class TimelinePicture {
  private static final int MOST_ROWS = 14;
  private static final double WIDTH = 700;
  private static final double LEFT = 225;
  private static final double RIGHT = 688;
  private static final double ROW = 19;
  private static final double TOP = 26;
  private static final int LONGEST_LABEL = 34;

  private final Dossier dossier;
  private final Course course;
  private final TimeAxis axis;

  TimelinePicture(Dossier dossier, Course course) {
    this.dossier = dossier;
    this.course = course;
    OffsetDateTime[] ends = course.ends(dossier.review().head());
    this.axis = new TimeAxis(ends[0], ends[1], LEFT, RIGHT);
  }

  /** A row: a lane's heading, or a step. */
  private record Row(Side side, StepReview step) {}

  /** The pictures, each with at most as many rows as a page has room for. */
  List<String> pictures() {
    List<Row> rows = new ArrayList<>();
    for (Side side : Side.values()) {
      List<StepReview> steps =
          dossier.review().steps().stream().filter(s -> s.place().ref().side() == side).toList();
      if (!steps.isEmpty()) {
        rows.add(new Row(side, null));
        steps.forEach(step -> rows.add(new Row(side, step)));
      }
    }
    List<String> pictures = new ArrayList<>();
    int parts = (rows.size() + MOST_ROWS - 1) / MOST_ROWS;
    int each = (rows.size() + parts - 1) / parts;
    for (int i = 0; i < parts; i++) {
      List<Row> part = rows.subList(i * each, Math.min(rows.size(), (i + 1) * each));
      pictures.add(picture(part, parts == 1 ? "" : ", part " + (i + 1) + " of " + parts));
    }
    return pictures;
  }

  private String picture(List<Row> rows, String part) {
    double height = TOP + rows.size() * ROW + 6;
    String name = "Timeline of the session" + part;
    String meaning = name + ". The same is written in the table \"Event log\".";
    Svg svg = new Svg(WIDTH, height, meaning);
    ticks(svg, TOP + rows.size() * ROW);
    for (int i = 0; i < rows.size(); i++) {
      row(svg, rows.get(i), TOP + i * ROW);
    }
    return svg.toString();
  }

  private void ticks(Svg svg, double bottom) {
    for (TimeAxis.Tick tick : axis.ticks()) {
      svg.line(tick.x(), TOP - 6, tick.x(), bottom, "stroke", "#999");
      svg.text(tick.x(), 14, tick.label(), "text-anchor", "middle");
    }
  }

  private void row(Svg svg, Row row, double y) {
    if (row.step() == null) {
      svg.rectangle(0, y + 1, WIDTH, ROW - 2, "fill", "#e4e4e4");
      String side = ReviewWords.side(row.side());
      String title = side.substring(0, 1).toUpperCase(Locale.ROOT) + side.substring(1);
      svg.text(4, y + 13.5, title, "font-weight", "bold");
      marks(svg, course.marks().stream().filter(mark -> onLane(mark, row.side())).toList(), y);
      return;
    }
    StepRef ref = row.step().place().ref();
    String label = dossier.number(ref) + "  " + shortened(row.step().place().step().head().title());
    svg.text(4, y + 13.5, label);
    svg.line(0, y + ROW, WIDTH, y + ROW, "stroke", "#ddd");
    for (Course.Bar bar : course.bars()) {
      if (bar.step().equals(ref)) {
        double from = axis.x(bar.from());
        svg.rectangle(
            from, y + 5, Math.max(1.5, axis.x(bar.to()) - from), ROW - 10, "fill", "#555");
      }
    }
    if (course.untouched(row.step())) {
      svg.rectangle(LEFT, y + 3, 62, ROW - 5, "fill", "#fff");
      svg.text(LEFT + 4, y + 13.5, "not begun");
    }
    marks(svg, course.marks().stream().filter(mark -> isOf(mark, ref)).toList(), y);
  }

  private static boolean isOf(Course.Mark mark, StepRef ref) {
    return mark.step().filter(ref::equals).isPresent();
  }

  private static boolean onLane(Course.Mark mark, Side side) {
    return mark.step().isEmpty() && (mark.side() == side || mark.side() == Side.CAR);
  }

  /** Marks of one row; one that would cover the one before it stands beside it. */
  private void marks(Svg svg, List<Course.Mark> marks, double y) {
    Map<Integer, Double> places = new HashMap<>();
    double next = LEFT;
    for (int i = 0; i < marks.size(); i++) {
      double x = Math.max(axis.x(marks.get(i).at()), next);
      places.put(i, x);
      next = x + MarkShape.WIDE;
    }
    double beyond = RIGHT + MarkShape.WIDE / 2;
    for (int i = marks.size() - 1; i >= 0; i--) {
      double x = Math.max(LEFT, Math.min(places.get(i), beyond));
      beyond = x - MarkShape.WIDE;
      MarkShape.draw(svg, marks.get(i).kind(), x, y + ROW / 2);
    }
  }

  private static String shortened(String title) {
    return title.codePointCount(0, title.length()) <= LONGEST_LABEL
        ? title
        : title.substring(0, title.offsetByCodePoints(0, LONGEST_LABEL - 1)).stripTrailing() + "…";
  }
}
