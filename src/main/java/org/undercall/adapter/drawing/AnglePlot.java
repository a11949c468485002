package org.undercall.adapter.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.AngleWindow;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Stretch;
import org.undercall.core.term.Torque;

/**
 * Draws preload against angle for the two ends of friction, with the yield points and with the
 * angles from which on the bolt may be turned too far.
 */
public final class AnglePlot {
  private static final String MEANING =
      "Computed preload in kN against the angle in °, two lines for two frictions";
  private static final double BEYOND = 1.25;

  /** Where turned too far begins is shown if it lies within so many times the angle. */
  private static final double MOST_SHOWN = 2.5;

  private final Joint joint;
  private final Torque snug;
  private final Rotation turn;
  private final Range<Friction> friction;
  private final double tooFar;
  private final double end;

  private AnglePlot(Joint joint, Torque snug, Rotation turn, Range<Friction> friction) {
    this.joint = joint;
    this.snug = snug;
    this.turn = turn;
    this.friction = friction;
    tooFar =
        AngleWindow.toYield(joint, snug, friction, Stretch.Verdict.NEAR_THE_LIMIT).most().degrees();
    boolean near = tooFar <= turn.degrees() * MOST_SHOWN;
    end = near ? Math.max(turn.degrees(), tooFar) * BEYOND : turn.degrees() * BEYOND;
  }

  /**
   * The plot as SVG.
   *
   * @param turn the angle stage, to be marked
   * @param friction the range of friction
   * @param note words under the title; may be blank
   */
  public static String of(
      Joint joint,
      Torque snug,
      Rotation turn,
      Range<Friction> friction,
      String note,
      PlotSize size) {
    return new AnglePlot(joint, snug, turn, friction).drawn(note, size);
  }

  private String drawn(String note, PlotSize size) {
    String title = String.format("Preload of %s after %s and an angle", joint.bolt(), snug);
    LinePlot plot =
        new LinePlot(
            size,
            new LinePlot.Words(
                title, note, MEANING, "angle after the torque stage in °", "preload in kN"),
            0.2,
            List.of(course(friction.low(), Sheet.BLUE), course(friction.high(), Sheet.ORANGE)));
    plot.upright(turn.degrees(), String.format(Locale.ROOT, "specified %.0f°", turn.degrees()));
    plot.beyond(tooFar, String.format(Locale.ROOT, "may be too far from %.0f°", tooFar));
    yieldPoint(plot, friction.low(), true);
    yieldPoint(plot, friction.high(), false);
    return plot.toString();
  }

  private Course course(Friction one, String colour) {
    double[] ends = {1e-6, end};
    return Course.of(
        "friction " + one,
        colour,
        ends,
        degrees ->
            AngleTightening.preload(job(Rotation.degrees(degrees)), one)
                .orElseThrow()
                .inKilonewtons());
  }

  private AngleJob job(Rotation angle) {
    return AngleJob.of(joint.bolt(), snug, angle, joint.stiffness());
  }

  private void yieldPoint(LinePlot plot, Friction one, boolean above) {
    if (AngleTightening.expect(job(turn), Optional.of(new Range<>(one, one)))
        instanceof Expected expected) {
      double angle = expected.angleToYield().low().degrees();
      double preload = expected.yieldPreload().low().inKilonewtons();
      if (angle <= end) {
        String text = String.format(Locale.ROOT, "yield, %.0f° and %.0f kN", angle, preload);
        plot.point(angle, preload, text, above);
      }
    }
  }
}
