package org.undercall.adapter.drawing;

import java.util.List;
import java.util.stream.IntStream;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Range;

/** Draws preloads against the friction that they depend on. */
public final class FrictionPlot {
  private static final String MEANING = "Computed preload in kN against the friction";
  private static final List<String> COLOURS = List.of(Sheet.BLUE, Sheet.ORANGE);

  /** A range of friction that is narrower is drawn with a fifth more on either side. */
  private static final double LEAST_WIDE = 0.005;

  private FrictionPlot() {}

  /** A preload in kN that depends on friction. */
  public interface Preload {
    /** The preload in kN. */
    double at(Friction friction);
  }

  /**
   * A preload with its name.
   *
   * @param name what it is of
   * @param preload its value
   */
  public record Line(String name, Preload preload) {}

  /**
   * The plot as SVG.
   *
   * @param friction the range of friction
   * @param lines one or two
   * @param note words under the title; may be blank
   */
  public static String of(
      String title, Range<Friction> friction, List<Line> lines, String note, PlotSize size) {
    double low = friction.low().coefficient();
    double high = friction.high().coefficient();
    boolean known = high - low < LEAST_WIDE;
    double[] ends = {known ? low * 0.8 : low, known ? high * 1.2 : high};
    List<Course> courses =
        IntStream.range(0, lines.size())
            .mapToObj(
                i ->
                    Course.of(
                        lines.get(i).name(),
                        COLOURS.get(i),
                        ends,
                        f -> lines.get(i).preload().at(Friction.of(f))))
            .toList();
    LinePlot.Words words =
        new LinePlot.Words(title, note, MEANING, "friction of thread and seat", "preload in kN");
    return new LinePlot(size, words, 0.1, courses).toString();
  }
}
