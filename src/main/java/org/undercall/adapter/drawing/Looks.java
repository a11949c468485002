package org.undercall.adapter.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.xy.XYSeriesCollection;

/** How all plots look: white ground, thin grid, colours that differ in lightness too. */
final class Looks {
  static final Color BLUE = new Color(0x1F4E9E);
  static final Color ORANGE = new Color(0xD9730D);
  static final Color GREEN = new Color(0x2E7D32);
  static final Color GREY = new Color(0x666666);
  static final BasicStroke LINE = new BasicStroke(2.5f);
  static final BasicStroke DASHES =
      new BasicStroke(
          1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0);
  static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

  private Looks() {}

  static XYPlot plot(XYSeriesCollection data, String across, String up) {
    NumberAxis domain = new NumberAxis(across);
    domain.setAutoRangeIncludesZero(false);
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    XYPlot plot = new XYPlot(data, domain, new NumberAxis(up), renderer);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setDomainGridlinePaint(Color.LIGHT_GRAY);
    plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
    return plot;
  }

  static JFreeChart chart(String title, String note, Plot plot) {
    Font heading = new Font(Font.SANS_SERIF, Font.BOLD, 16);
    JFreeChart chart = new JFreeChart(title, heading, plot, true);
    chart.setBackgroundPaint(Color.WHITE);
    if (!note.isBlank()) {
      chart.addSubtitle(0, new TextTitle(note, SMALL));
    }
    return chart;
  }
}
