package org.undercall.adapter.drawing;

import java.awt.Color;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPointerAnnotation;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PresetLimit;

/** Draws the preset twist of a bush against the height it is tightened at, with the gate. */
public final class TwistPlot {
  private static final int POINTS = 200;
  private static final int SEE_THROUGH = 0x50;

  private TwistPlot() {}

  /**
   * The plot; heights are shown above ride height.
   *
   * @param swing the arm and its travel
   * @param here the height to be marked, above the inner pivot
   * @param gate how far from ride height the procedure lets the bush be tightened
   * @param note words under the title; may be blank
   */
  public static JFreeChart of(ArmSwing swing, Height here, Length gate, String note) {
    XYSeriesCollection data = new XYSeriesCollection(course(swing));
    String across = "height above ride height when tightened, full droop to full bump, in mm";
    XYPlot plot = Looks.plot(data, across, "twist kept at ride height in °");
    plot.getRenderer().setSeriesPaint(0, Looks.BLUE);
    plot.getRenderer().setSeriesStroke(0, Looks.LINE);
    plot.addDomainMarker(gate(gate), Layer.BACKGROUND);
    limit(plot, PresetLimit.PROPOSED.warn().degrees());
    limit(plot, -PresetLimit.PROPOSED.warn().degrees());
    double twist = swing.tightenedAt(here).atRide().degrees();
    double above = here.above(swing.ride()).millimetres();
    String text = String.format(Locale.ROOT, "tightened here: %.1f°", twist);
    XYPointerAnnotation point = new XYPointerAnnotation(text, above, twist, -Math.PI / 4);
    point.setFont(Looks.SMALL);
    point.setBaseRadius(45);
    point.setTipRadius(2);
    point.setTextAnchor(TextAnchor.CENTER_LEFT);
    plot.addAnnotation(point);
    return Looks.chart(title(swing), note, plot);
  }

  private static String title(ArmSwing swing) {
    double arm = swing.arm().millimetres();
    return String.format(Locale.ROOT, "Twist of a bonded bush, arm of %.0f mm", arm);
  }

  private static XYSeries course(ArmSwing swing) {
    XYSeries series = new XYSeries("twist kept at ride height");
    double low = swing.travel().low().millimetres();
    double span = swing.travel().high().millimetres() - low;
    for (int i = 0; i <= POINTS; i++) {
      Height height = Height.mm(low + span * i / POINTS);
      series.add(
          height.above(swing.ride()).millimetres(), swing.tightenedAt(height).atRide().degrees());
    }
    return series;
  }

  private static IntervalMarker gate(Length gate) {
    double half = gate.millimetres();
    Color green = Looks.GREEN;
    Color pale = new Color(green.getRed(), green.getGreen(), green.getBlue(), SEE_THROUGH);
    IntervalMarker marker = new IntervalMarker(-half, half, pale);
    marker.setLabel(String.format(Locale.ROOT, "gate ±%.0f mm", half));
    marker.setLabelFont(Looks.SMALL);
    marker.setLabelBackgroundColor(Color.WHITE);
    marker.setLabelAnchor(RectangleAnchor.TOP);
    marker.setLabelTextAnchor(TextAnchor.TOP_CENTER);
    return marker;
  }

  private static void limit(XYPlot plot, double degrees) {
    ValueMarker marker = new ValueMarker(degrees, Looks.GREY, Looks.DASHES);
    marker.setLabel(String.format(Locale.ROOT, "warning from %.0f° on", degrees));
    marker.setLabelFont(Looks.SMALL);
    marker.setLabelBackgroundColor(Color.WHITE);
    marker.setLabelAnchor(RectangleAnchor.BOTTOM_RIGHT);
    marker.setLabelTextAnchor(TextAnchor.TOP_RIGHT);
    plot.addRangeMarker(marker);
  }
}
