package org.undercall.adapter.drawing;

import org.undercall.text.Svg;

/** The mark of one value; each differs from the others in its shape, not only its colour. */
final class Mark {
  /** One session. */
  static final Mark SESSION = new Mark("this session", Sheet.BLUE, 0, -5, 5, 0, 0, 5, -5, 0);

  /** One session that was slow: a cross. */
  static final Mark SLOW =
      new Mark("this session, slow", Sheet.ORANGE, cross(new double[] {-7, -5, -5, -7, 0, -2}));

  static final Mark LEFT = new Mark("left", Sheet.BLUE, -7, 0, 5, -6, 5, 6);
  static final Mark RIGHT = new Mark("right", Sheet.ORANGE, 7, 0, -5, -6, -5, 6);

  private final String meaning;
  private final String colour;
  private final double[] corners;

  /** A mark with its corners about its middle, across and down in turn. */
  private Mark(String meaning, String colour, double... corners) {
    this.meaning = meaning;
    this.colour = colour;
    this.corners = corners;
  }

  /** Its meaning, for the legend. */
  String meaning() {
    return meaning;
  }

  String colour() {
    return colour;
  }

  /** A copy of its corners. */
  double[] corners() {
    return corners.clone();
  }

  void draw(Svg svg, double x, double y) {
    svg.polygon(x, y, corners, "fill", colour);
  }

  /** Three corners, turned about the middle by a quarter three times. */
  private static double[] cross(double[] quarter) {
    double[] corners = new double[4 * quarter.length];
    System.arraycopy(quarter, 0, corners, 0, quarter.length);
    for (int i = quarter.length; i < corners.length; i += 2) {
      corners[i] = -corners[i - quarter.length + 1];
      corners[i + 1] = corners[i - quarter.length];
    }
    return corners;
  }
}
