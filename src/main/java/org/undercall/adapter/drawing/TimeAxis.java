package org.undercall.adapter.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** Lengths of time in seconds on a logarithmic scale: the same distance is the same factor. */
final class TimeAxis extends LogAxis {
  private static final long serialVersionUID = 1L;
  private static final int MINUTE = 60;
  private static final int HOUR = 3600;
  private static final int[] TICKS = {
    1, 2, 5, 10, 20, 60, 120, 300, 600, 1200, 3600, 7200, 18_000, 36_000, 86_400
  };

  TimeAxis(String label, double least, double most) {
    super(label);
    setRange(Math.max(least, 1) / 1.5, Math.max(most, MINUTE) * 4);
    setLabelFont(Looks.SMALL);
    setTickLabelFont(Looks.SMALL);
  }

  /** Seconds as they can be drawn: less than one second has no place on the scale. */
  static double drawn(double millis) {
    return Math.max(1, millis / 1000);
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
    boolean above = edge.equals(RectangleEdge.TOP);
    TextAnchor anchor = above ? TextAnchor.BOTTOM_CENTER : TextAnchor.TOP_CENTER;
    List<NumberTick> ticks = new ArrayList<>();
    for (int seconds : TICKS) {
      if (getRange().contains(seconds)) {
        ticks.add(new NumberTick(seconds, words(seconds), anchor, TextAnchor.CENTER, 0));
      }
    }
    return ticks;
  }

  private static String words(int seconds) {
    if (seconds < MINUTE) {
      return seconds + " s";
    }
    return seconds < HOUR ? seconds / MINUTE + " min" : seconds / HOUR + " h";
  }
}
