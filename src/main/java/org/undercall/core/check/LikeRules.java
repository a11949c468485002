package org.undercall.core.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Torque;

/** Compares the last torque of a fastener with that of its like elsewhere in the procedure. */
final class LikeRules {
  private static final double MOST = 1.5;

  private LikeRules() {}

  /** What makes two fasteners alike: the same name but for the side, and the same hardware. */
  private record Like(
      String name,
      String thread,
      Optional<HeadMarking> marking,
      Lubrication lubrication,
      boolean angle) {
    static Like of(Fastener fastener, Variant variant) {
      String name = fastener.name().toLowerCase(Locale.ROOT);
      return new Like(
          name.replaceAll("\\b(left|right)\\b", "").strip(),
          fastener.thread(),
          variant.marking(),
          fastener.part().lubrication(),
          variant.stages().stream().anyMatch(s -> !(s instanceof TorqueStage)));
    }
  }

  private record Seen(Torque torque, Spot spot) {}

  static List<Finding> check(List<Spot> spots) {
    List<Finding> findings = new ArrayList<>();
    Map<Like, Seen> firsts = new HashMap<>();
    for (Spot spot : spots) {
      Map<Variant, Staged<TorqueStage>> lasts = new HashMap<>();
      Staged.torques(spot).forEach(stage -> lasts.put(stage.variant(), stage));
      for (Staged<TorqueStage> stage : lasts.values()) {
        Torque torque = stage.stage().target();
        Like like = Like.of(stage.fastener(), stage.variant());
        Seen first = firsts.putIfAbsent(like, new Seen(torque, spot));
        if (first != null && far(first.torque(), torque)) {
          findings.add(finding(spot, stage, first));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Spot spot, Staged<TorqueStage> stage, Seen first) {
    String step = '"' + first.spot().step().head().id() + '"';
    String expected = "about " + first.torque() + ", as in step " + step;
    String found = stage.stage().target().toString();
    return spot.at(stage.field("torque"), CheckRule.UNLIKE_ITS_LIKE, found, expected);
  }

  private static boolean far(Torque one, Torque other) {
    double ratio = one.inNewtonMetres() / other.inNewtonMetres();
    return ratio > MOST || 1 / ratio > MOST;
  }
}
