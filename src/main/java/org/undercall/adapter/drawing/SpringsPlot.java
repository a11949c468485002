package org.undercall.adapter.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.JointStiffness;

/**
 * Draws the joint diagram: the bolt gets longer and the parts shorter until both carry the same
 * preload.
 */
public final class SpringsPlot {
  private static final String MEANING =
      "Computed force in kN against the change of length in µm, a line for the bolt and one for the"
          + " parts";
  private static final double MICROMETRES = 1000;

  private SpringsPlot() {}

  /**
   * The plot as SVG.
   *
   * @param preload what both carry
   * @param plastic how much the bolt is stretched for good, in mm; zero below yield
   * @param left what is left of the preload after embedding
   * @param note words under the title; may be blank
   */
  public static String of(
      Joint joint, Force preload, double plastic, Force left, String note, PlotSize size) {
    JointStiffness springs = joint.stiffness();
    double force = preload.inKilonewtons();
    double elastic = springs.bolt().millimetresPerNewton() * preload.newtons() * MICROMETRES;
    double crest = elastic + plastic * MICROMETRES;
    double foot = crest + springs.parts().millimetresPerNewton() * preload.newtons() * MICROMETRES;
    List<Double> bolt = new ArrayList<>(List.of(0.0, 0.0, elastic, force));
    if (plastic > 0) {
      bolt.addAll(List.of(crest, force));
    }
    String title = "Bolt and parts of " + joint.bolt() + " as springs";
    LinePlot plot =
        new LinePlot(
            size,
            new LinePlot.Words(title, note, MEANING, "change of length in µm", "force in kN"),
            0.2,
            List.of(
                new Course("bolt, longer", Sheet.BLUE, bolt),
                new Course("parts, shorter", Sheet.ORANGE, List.of(crest, force, foot, 0.0))));
    plot.level(force, String.format(Locale.ROOT, "nominal preload %.1f kN", force), true);
    if (left.compareTo(preload) < 0) {
      double after = left.inKilonewtons();
      plot.level(after, String.format(Locale.ROOT, "after embedding %.1f kN", after), false);
    }
    return plot.toString();
  }
}
