package org.undercall.adapter.drawing;

import java.awt.Color;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPointerAnnotation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;

/** Draws preload against angle, with the yield point, for the two ends of friction. */
public final class AnglePlot {
  private static final int POINTS = 200;
  private static final double BEYOND = 1.25;

  private AnglePlot() {}

  /**
   * The plot.
   *
   * @param job a tightening of a joint that is known
   * @param friction the range of friction
   * @param note words under the title; may be blank
   */
  public static JFreeChart of(AngleJob job, Range<Friction> friction, String note) {
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(course(job, friction.low()));
    data.addSeries(course(job, friction.high()));
    XYPlot plot = Looks.plot(data, "angle after the torque stage in °", "preload in kN");
    Color[] colours = {Looks.BLUE, Looks.ORANGE};
    for (int i = 0; i < colours.length; i++) {
      plot.getRenderer().setSeriesPaint(i, colours[i]);
      plot.getRenderer().setSeriesStroke(i, Looks.LINE);
    }
    yieldPoint(plot, job, friction.low(), -Math.PI / 4);
    yieldPoint(plot, job, friction.high(), Math.PI / 4);
    ValueMarker target = new ValueMarker(job.turn().degrees(), Looks.GREY, Looks.DASHES);
    target.setLabel(String.format(Locale.ROOT, "specified %.0f°", job.turn().degrees()));
    target.setLabelFont(Looks.SMALL);
    target.setLabelBackgroundColor(Color.WHITE);
    target.setLabelAnchor(RectangleAnchor.BOTTOM_LEFT);
    target.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
    plot.addDomainMarker(target);
    plot.getRangeAxis().setUpperMargin(0.2);
    String title = String.format("Preload of %s after %s and an angle", job.bolt(), job.snug());
    return Looks.chart(title, note, plot);
  }

  private static XYSeries course(AngleJob job, Friction friction) {
    XYSeries series = new XYSeries("friction " + friction);
    double end = job.turn().degrees() * BEYOND;
    for (int i = 0; i <= POINTS; i++) {
      double turn = Math.max(end * i / POINTS, 1e-6);
      series.add(turn, preload(job, Rotation.degrees(turn), friction).inKilonewtons());
    }
    return series;
  }

  private static Force preload(AngleJob job, Rotation turn, Friction friction) {
    AngleJob part = new AngleJob(job.bolt(), job.snug(), turn, job.joint());
    return AngleTightening.preload(part, friction).orElseThrow();
  }

  private static void yieldPoint(XYPlot plot, AngleJob job, Friction friction, double from) {
    Range<Friction> one = new Range<>(friction, friction);
    if (AngleTightening.expect(job, Optional.of(one)) instanceof Expected expected) {
      double angle = expected.angleToYield().low().degrees();
      double preload = expected.yieldPreload().low().inKilonewtons();
      if (angle <= job.turn().degrees() * BEYOND) {
        String text = String.format(Locale.ROOT, "yield, %.0f° and %.0f kN", angle, preload);
        XYPointerAnnotation point = new XYPointerAnnotation(text, angle, preload, from);
        point.setFont(Looks.SMALL);
        point.setBaseRadius(40);
        point.setTipRadius(2);
        point.setTextAnchor(TextAnchor.CENTER_LEFT);
        plot.addAnnotation(point);
      }
    }
  }
}
