package org.undercall.core.fastening.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.ClampedParts;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.SleeveStack;
import org.undercall.core.fastening.SleeveStack.Sleeve;
import org.undercall.core.fastening.Tightening;
import org.undercall.core.fastening.ToleranceStack;
import org.undercall.core.term.Torque;

/** Joint compliance, angle stages and scatter. */
final class JointChecks {
  private static final Bolt M10 = Bolt.hexagon("M10", "8.8");
  private static final Bolt M12 = Bolt.hexagon("M12x1.5", "10.9");
  private static final Bolt M14 = Bolt.hexagon("M14x1.5", "10.9");

  /** The joint of example 4-3: a bush sleeve between two bracket walls. */
  private static final JointStiffness BUSH =
      joint(M12, 50, 20, stack(Sleeve.of(8, 30, 13.5), Sleeve.of(62, 22, 12.5)));

  private static final Map<String, AngleJob> JOBS =
      Map.of(
          "4-2",
          AngleJob.of(
              M10,
              Torque.newtonMetres("20"),
              Rotation.degrees(45),
              joint(
                  M10,
                  34,
                  6,
                  new PressureCone(
                      Seat.of(14.63, 11),
                      Length.mm(40),
                      Length.mm(40),
                      PressureCone.Kind.THROUGH_BOLT))),
          "4-3",
          AngleJob.of(M12, Torque.newtonMetres("70"), Rotation.degrees(90), BUSH),
          "4-4",
          AngleJob.of(
              M14,
              Torque.newtonMetres("100"),
              Rotation.degrees(60),
              joint(M14, 70, 20, stack(Sleeve.of(10, 34, 15.5), Sleeve.of(80, 26, 14.5)))));

  private JointChecks() {}

  static Stream<Check> all() {
    return Stream.of(examples(), scatter()).flatMap(Function.identity());
  }

  private static Stream<Check> examples() {
    return Rows.of("04a_angle_examples").stream()
        .map(JointChecks::example)
        .flatMap(Optional::stream);
  }

  private static Optional<Check> example(CSVRecord row) {
    String id = row.get("id");
    Optional<Double> ours =
        id.equals("4-1")
            ? Optional.of(PublishedJoint.value(row.get("what")))
            : AngleValues.of(JOBS.get(id)).value(row.get("what"));
    String what = id + " " + row.get("what").replaceFirst(".*: (?=delta_S)", "");
    return ours.map(o -> PreloadChecks.publishedOrValue(Group.JOINT, row, what, o));
  }

  /** The examples that we give no value for. */
  static List<String> withoutOurs() {
    return Rows.of("04a_angle_examples").stream()
        .filter(row -> example(row).isEmpty())
        .map(row -> row.get("id") + " " + row.get("what"))
        .toList();
  }

  private static Stream<Check> scatter() {
    return Rows.of("04b_torque_vs_torque_angle_scatter").stream()
        .flatMap(
            row -> {
              Range<Force> ours = stackOf(row.get("method")).worstCase();
              Stream<Check> forces =
                  Stream.of(
                      scatter(row, "F_low_kN", ours.low().inKilonewtons()),
                      scatter(row, "F_nominal_kN", nominal(row.get("method")).inKilonewtons()));
              // the table goes on elastically above yield
              boolean cut = row.get("method").startsWith("70 N.m");
              return cut
                  ? forces
                  : Stream.concat(
                      forces, Stream.of(scatter(row, "F_high_kN", ours.high().inKilonewtons())));
            });
  }

  private static Check scatter(CSVRecord row, String column, double ours) {
    String what = row.get("method") + " " + column;
    return Check.of(Group.SCATTER, what, Rows.number(row, column), ours, Rows.computed(row));
  }

  /** Torque by 4 %, angle by 4 degrees either way, friction from 0.10 to 0.16. */
  static ToleranceStack stackOf(String method) {
    BoltBody body =
        new BoltBody(M12.thread(), Length.mm(50), Length.mm(20), BoltBody.Ends.HEXAGON_AND_NUT);
    Tightening way = way(method);
    ToleranceStack torque =
        ToleranceStack.ofTorque(
            new Joint(M12, body, BUSH),
            way.torque(),
            0.04 * way.torque().inNewtonMetres(),
            new Deviation(1e-9),
            new Range<>(Friction.of(0.10), Friction.of(0.16)));
    return way.turn().map(turn -> torque.withTurn(turn, Rotation.degrees(4))).orElse(torque);
  }

  private static Force nominal(String method) {
    return way(method).preload(M12, BUSH, Friction.of(0.12), Friction.of(0.12));
  }

  private static Tightening way(String method) {
    String[] words = method.replace("torque only ", "").split(" ", -1);
    Torque torque = Torque.newtonMetres(words[0]);
    return method.startsWith("torque only")
        ? Tightening.by(torque)
        : Tightening.by(torque, Rotation.degrees(Double.parseDouble(words[3])));
  }

  private static JointStiffness joint(Bolt bolt, double shank, double free, ClampedParts parts) {
    BoltBody body =
        new BoltBody(
            bolt.thread(), Length.mm(shank), Length.mm(free), BoltBody.Ends.HEXAGON_AND_NUT);
    return JointStiffness.of(body, parts, Elasticity.STEEL);
  }

  private static ClampedParts stack(Sleeve... sleeves) {
    return new SleeveStack(List.of(sleeves));
  }
}
