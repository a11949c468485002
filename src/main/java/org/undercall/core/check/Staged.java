package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Variant;

/**
 * A stage with its place in the step.
 *
 * @param fastener the fastener it tightens
 * @param variant the variant it belongs to
 * @param path where the stage stands within the step
 * @param last whether no stage follows
 * @param stage the stage
 * @param <S> torque or angle
 */
record Staged<S extends Stage>(
    Fastener fastener, Variant variant, String path, boolean last, S stage) {

  /** The torque stages of a step. */
  static List<Staged<TorqueStage>> torques(Spot spot) {
    return stages(spot, TorqueStage.class);
  }

  /** The angle stages of a step. */
  static List<Staged<AngleStage>> angles(Spot spot) {
    return stages(spot, AngleStage.class);
  }

  private static <S extends Stage> List<Staged<S>> stages(Spot spot, Class<S> kind) {
    List<Staged<S>> found = new ArrayList<>();
    spot.fastener().ifPresent(fastener -> collect(fastener, kind, found));
    return found;
  }

  private static <S extends Stage> void collect(
      Fastener fastener, Class<S> kind, List<Staged<S>> found) {
    for (int v = 0; v < fastener.variants().size(); v++) {
      Variant variant = fastener.variants().get(v);
      int count = variant.stages().size();
      for (int s = 0; s < count; s++) {
        Stage stage = variant.stages().get(s);
        String path = "fastener/variants/" + v + "/stages/" + s;
        boolean back = stage instanceof AngleStage angle && angle.backOff();
        if (kind.isInstance(stage) && !back) {
          found.add(new Staged<>(fastener, variant, path, s == count - 1, kind.cast(stage)));
        }
      }
    }
  }

  /** Whether an angle is turned on right after it. */
  boolean beforeAngle() {
    int next = Integer.parseInt(path.substring(path.lastIndexOf('/') + 1)) + 1;
    return !last && variant.stages().get(next) instanceof AngleStage angle && !angle.backOff();
  }

  /** Where a field of the stage stands within the step. */
  String field(String name) {
    return path + "/" + name;
  }
}
