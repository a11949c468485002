package org.undercall.adapter.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.undercall.core.fastening.ExpectedTorque;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.term.Torque;

/** Draws the torque that a wrench should show against the angle, with a torque that was read. */
public final class TorqueAnglePlot {
  private static final String MEANING =
      "Computed torque in N·m against the angle in °, a line for the least and one for the most";
  private static final double BEYOND = 1.25;
  private static final int STEPS = 200;

  private TorqueAnglePlot() {}

  /**
   * The plot as SVG.
   *
   * @param turn the angle stage, to be marked
   * @param reading the torque that was read after it; empty if none is to be marked
   * @param note words under the title; may be blank
   */
  public static String of(
      ExpectedTorque expected,
      Rotation turn,
      Optional<Torque> reading,
      String note,
      PlotSize size) {
    String title =
        String.format(
            "Torque of %s while turned on from %s", expected.joint().bolt(), expected.snug());
    Rotation end = Rotation.degrees(turn.degrees() * BEYOND);
    List<ExpectedTorque.Point> points = expected.points(end, STEPS);
    LinePlot plot =
        new LinePlot(
            size,
            new LinePlot.Words(
                title, note, MEANING, "angle after the torque stage in °", "torque in N·m"),
            0.2,
            List.of(
                course("most expected", Sheet.BLUE, points, Range::high),
                course("least expected", Sheet.ORANGE, points, Range::low)));
    plot.upright(turn.degrees(), String.format(Locale.ROOT, "specified %.0f°", turn.degrees()));
    reading.ifPresent(
        read -> plot.point(turn.degrees(), read.inNewtonMetres(), "read: " + read, false));
    return plot.toString();
  }

  private static Course course(
      String name,
      String colour,
      List<ExpectedTorque.Point> points,
      Function<Range<Torque>, Torque> end) {
    return new Course(
        name,
        colour,
        points.stream()
            .flatMap(p -> Stream.of(p.turn().degrees(), end.apply(p.torque()).inNewtonMetres()))
            .toList());
  }
}
