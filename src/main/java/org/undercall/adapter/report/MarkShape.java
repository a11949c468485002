package org.undercall.adapter.report;

import org.undercall.text.Svg;

/** The marks of the timeline: each kind has a shape and a letter, so that colour says nothing. */
final class MarkShape {
  /** How much room a mark takes across. */
  static final double WIDE = 16;

  private static final double LEGEND_ROW = 20;
  private static final double LEGEND_WIDE = 700;

  private MarkShape() {}

  /** A mark with its middle at a place. */
  static void draw(Svg svg, Course.Kind kind, double x, double y) {
    boolean dark = kind == Course.Kind.REFUSAL || kind == Course.Kind.UNLOADED;
    String[] look = {"fill", dark ? "#000" : "#fff", "stroke", "#000", "stroke-width", "1"};
    double[] corners = corners(kind);
    if (corners.length == 0) {
      svg.circle(x, y, 7, look);
    } else {
      svg.polygon(x, y, corners, look);
    }
    String[] letter = {
      "font-size",
      "9",
      "font-weight",
      "bold",
      "text-anchor",
      "middle",
      "fill",
      dark ? "#fff" : "#000"
    };
    svg.text(x, y + 3.3, kind.letter(), letter);
  }

  /** The corners about the middle; none for a circle. */
  private static double[] corners(Course.Kind kind) {
    return switch (kind) {
      case REFUSAL -> new double[] {0, -8.5, 8.5, 0, 0, 8.5, -8.5, 0};
      case LOAD -> new double[] {-7, -3, 0, -8.5, 7, -3, 7, 7, -7, 7};
      case UNLOADED -> new double[] {-7, -7, 7, -7, 7, 7, -7, 7};
      case TIMER -> new double[] {-4, -7.5, 4, -7.5, 8, 0, 4, 7.5, -4, 7.5, -8, 0};
      case NOTE -> new double[] {-6.5, -7.5, 3, -7.5, 6.5, -4, 6.5, 7.5, -6.5, 7.5};
      case CLOSED -> new double[0];
    };
  }

  /** All marks with their meanings, as a picture of two lines. */
  static String legend() {
    Svg svg = new Svg(LEGEND_WIDE, 2 * LEGEND_ROW, "Marks of the timeline: letters and shapes");
    int row = 0;
    double x = 10;
    for (Course.Kind kind : Course.Kind.values()) {
      double wide = 30 + kind.meaning().length() * 6.6;
      if (x + wide > LEGEND_WIDE) {
        row++;
        x = 10;
      }
      draw(svg, kind, x, row * LEGEND_ROW + 10);
      svg.text(x + 13, row * LEGEND_ROW + 14, kind.meaning());
      x += wide;
    }
    return svg.toString();
  }
}
