package org.undercall.adapter.drawing;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Path2D;
import org.jfree.chart.util.ShapeUtils;

/**
 * The mark of one value; each differs from the others in its shape, not only its colour.
 *
 * @param words that stand beside it; may be blank
 */
record Mark(Shape shape, Color colour, String words) {
  /** One session. */
  static Mark session() {
    return new Mark(ShapeUtils.createDiamond(5), Looks.BLUE, "");
  }

  /** One session that was slow. */
  static Mark slow() {
    return new Mark(ShapeUtils.createDiagonalCross(6, 1.5f), Looks.ORANGE, "slow");
  }

  static Mark left() {
    return new Mark(pointing(-1), Looks.BLUE, "");
  }

  static Mark right() {
    return new Mark(pointing(1), Looks.ORANGE, "");
  }

  /** A triangle with its point to the left (-1) or to the right (1). */
  private static Shape pointing(int direction) {
    Path2D.Double triangle = new Path2D.Double();
    triangle.moveTo(7.0 * direction, 0);
    triangle.lineTo(-5.0 * direction, -6);
    triangle.lineTo(-5.0 * direction, 6);
    triangle.closePath();
    return triangle;
  }
}
