package org.undercall.adapter.drawing;

import java.util.List;
import java.util.Locale;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PresetLimit;

/** Draws the preset twist of a bush against the height it is tightened at, with the gate. */
public final class TwistPlot {
  private static final String MEANING =
      "Computed twist of a bush in ° against the height in mm at which it is tightened";

  private TwistPlot() {}

  /**
   * The plot as SVG; heights are shown above ride height.
   *
   * @param swing the arm and its travel
   * @param here the height to be marked, above the inner pivot
   * @param gate how far from ride height the procedure lets the bush be tightened
   * @param note words under the title; may be blank
   */
  public static String of(ArmSwing swing, Height here, Length gate, String note, PlotSize size) {
    String across = "height above ride height when tightened, full droop to full bump, in mm";
    String up = "twist kept at ride height in °";
    LinePlot plot =
        new LinePlot(
            size,
            new LinePlot.Words(title(swing), note, MEANING, across, up),
            0.05,
            List.of(course(swing)));
    double half = gate.millimetres();
    plot.band(-half, half, String.format(Locale.ROOT, "gate ±%.0f mm", half));
    double warn = PresetLimit.PROPOSED.warn().degrees();
    for (double limit : new double[] {warn, -warn}) {
      plot.level(limit, String.format(Locale.ROOT, "warning from %.0f° on", limit));
    }
    double twist = swing.tightenedAt(here).atRide().degrees();
    double above = here.above(swing.ride()).millimetres();
    plot.point(above, twist, String.format(Locale.ROOT, "tightened here: %.1f°", twist), true);
    return plot.toString();
  }

  private static String title(ArmSwing swing) {
    double arm = swing.arm().millimetres();
    return String.format(Locale.ROOT, "Twist of a bonded bush, arm of %.0f mm", arm);
  }

  private static Course course(ArmSwing swing) {
    double ride = swing.ride().millimetres();
    double[] ends = {
      swing.travel().low().millimetres() - ride, swing.travel().high().millimetres() - ride
    };
    return Course.of(
        "twist kept at ride height",
        Sheet.BLUE,
        ends,
        above -> swing.tightenedAt(Height.mm(ride + above)).atRide().degrees());
  }
}
