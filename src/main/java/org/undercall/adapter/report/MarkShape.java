package org.undercall.adapter.report;

import java.util.Locale;

/** The marks of the timeline: each kind has a shape and a letter, so that colour says nothing. */
final class MarkShape {
  /** How much room a mark takes across. */
  static final double WIDE = 16;

  private static final double LEGEND_WIDE = 1000;

  private MarkShape() {}

  /** A mark with its middle at a place. */
  static void draw(Markup m, Course.Kind kind, double x, double y) {
    boolean dark = kind == Course.Kind.REFUSAL || kind == Course.Kind.UNLOADED;
    String fill = dark ? "#000" : "#fff";
    double[] points = points(kind);
    if (points.length == 0) {
      m.empty("circle", "cx", number(x), "cy", number(y), "r", "7", "fill", fill, "stroke", "#000");
    } else {
      m.empty(
          "polygon",
          "points",
          placed(points, x, y),
          "fill",
          fill,
          "stroke",
          "#000",
          "stroke-width",
          "1");
    }
    m.leaf(
        "text",
        kind.letter(),
        "x",
        number(x),
        "y",
        number(y + 3.3),
        "font-size",
        "9",
        "font-weight",
        "bold",
        "text-anchor",
        "middle",
        "fill",
        dark ? "#fff" : "#000");
  }

  /** The corners about the middle; none for a circle. */
  private static double[] points(Course.Kind kind) {
    return switch (kind) {
      case REFUSAL -> new double[] {0, -8.5, 8.5, 0, 0, 8.5, -8.5, 0};
      case LOAD -> new double[] {-7, -3, 0, -8.5, 7, -3, 7, 7, -7, 7};
      case UNLOADED -> new double[] {-7, -7, 7, -7, 7, 7, -7, 7};
      case TIMER -> new double[] {-4, -7.5, 4, -7.5, 8, 0, 4, 7.5, -4, 7.5, -8, 0};
      case NOTE -> new double[] {-6.5, -7.5, 3, -7.5, 6.5, -4, 6.5, 7.5, -6.5, 7.5};
      case CLOSED -> new double[0];
    };
  }

  private static String placed(double[] points, double x, double y) {
    StringBuilder placed = new StringBuilder();
    for (int i = 0; i < points.length; i += 2) {
      placed.append(number(x + points[i])).append(',').append(number(y + points[i + 1]));
      placed.append(' ');
    }
    return placed.toString().stripTrailing();
  }

  /** All marks with their meanings, as a picture of one line. */
  static String legend() {
    Markup m = new Markup();
    String words = "Marks of the timeline: letters and shapes";
    Picture.open(m, LEGEND_WIDE, 20, words);
    double x = 10;
    for (Course.Kind kind : Course.Kind.values()) {
      draw(m, kind, x, 10);
      m.leaf("text", kind.meaning(), "x", number(x + 13), "y", "14");
      x += 30 + kind.meaning().length() * 6.6;
    }
    return m.close().toString();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
