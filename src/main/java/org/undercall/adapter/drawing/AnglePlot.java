package org.undercall.adapter.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;

/** Draws preload against angle, with the yield point, for the two ends of friction. */
public final class AnglePlot {
  private static final String MEANING =
      "Computed preload in kN against the angle in °, two lines for two frictions";
  private static final double BEYOND = 1.25;

  private AnglePlot() {}

  /**
   * The plot as SVG.
   *
   * @param job a tightening of a joint that is known
   * @param friction the range of friction
   * @param note words under the title; may be blank
   */
  public static String of(AngleJob job, Range<Friction> friction, String note) {
    String title = String.format("Preload of %s after %s and an angle", job.bolt(), job.snug());
    LinePlot plot =
        new LinePlot(
            new LinePlot.Words(
                title, note, MEANING, "angle after the torque stage in °", "preload in kN"),
            0.2,
            List.of(
                course(job, friction.low(), Sheet.BLUE),
                course(job, friction.high(), Sheet.ORANGE)));
    plot.upright(
        job.turn().degrees(), String.format(Locale.ROOT, "specified %.0f°", job.turn().degrees()));
    yieldPoint(plot, job, friction.low(), true);
    yieldPoint(plot, job, friction.high(), false);
    return plot.toString();
  }

  private static LinePlot.Course course(AngleJob job, Friction friction, String colour) {
    double[] ends = {1e-6, job.turn().degrees() * BEYOND};
    return LinePlot.Course.of(
        "friction " + friction, colour, ends, turn -> preload(job, turn, friction));
  }

  private static double preload(AngleJob job, double turn, Friction friction) {
    AngleJob part = new AngleJob(job.bolt(), job.snug(), Rotation.degrees(turn), job.joint());
    return AngleTightening.preload(part, friction).orElseThrow().inKilonewtons();
  }

  private static void yieldPoint(LinePlot plot, AngleJob job, Friction friction, boolean above) {
    Range<Friction> one = new Range<>(friction, friction);
    if (AngleTightening.expect(job, Optional.of(one)) instanceof Expected expected) {
      double angle = expected.angleToYield().low().degrees();
      double preload = expected.yieldPreload().low().inKilonewtons();
      if (angle <= job.turn().degrees() * BEYOND) {
        String text = String.format(Locale.ROOT, "yield, %.0f° and %.0f kN", angle, preload);
        plot.point(angle, preload, text, above);
      }
    }
  }
}
