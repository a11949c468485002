package org.undercall.core.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.TorqueUnit;

/** Compares the last torque of a fastener with that of its like elsewhere in the procedure. */
final class LikeRules {
  private static final double MOST = 1.5;

  /** How near a ratio lies to that of two units to be taken for a slip. */
  private static final double NEAR = 0.01;

  private static final Pattern SIDE = Pattern.compile("\\b(left|right)\\b");

  private LikeRules() {}

  /** What makes two fasteners alike: the same name but for the side, and the same hardware. */
  private record Like(
      String name, String thread, Optional<HeadMarking> marking, Lubrication lubrication) {
    static Like of(Fastener fastener, Variant variant) {
      String name = fastener.name().toLowerCase(Locale.ROOT);
      return new Like(
          SIDE.matcher(name).replaceAll("").replaceAll(" +", " ").strip(),
          fastener.thread(),
          variant.marking(),
          fastener.part().lubrication());
    }
  }

  private record Seen(Staged<TorqueStage> stage, Spot spot) {
    boolean angle() {
      return AngleRules.turn(stage.variant()) > 0;
    }

    TorqueStage torque() {
      return stage.stage();
    }

    /** The side that its words name; empty if they name none. */
    String side() {
      String words =
          (spot.step().head().id() + " " + stage.fastener().name()).toLowerCase(Locale.ROOT);
      String corner = spot.step().head().bearing().corner().map(c -> c.words()).orElse("");
      String all = words + " " + corner;
      boolean left = Spot.word(all, "left");
      return left == Spot.word(all, "right") ? "" : left ? "left" : "right";
    }
  }

  static List<Finding> check(List<Spot> spots) {
    List<Finding> findings = new ArrayList<>();
    Map<Like, Seen> firsts = new HashMap<>();
    for (Spot spot : spots) {
      Map<Variant, Staged<TorqueStage>> lasts = new HashMap<>();
      Staged.torques(spot).forEach(stage -> lasts.put(stage.variant(), stage));
      for (Staged<TorqueStage> stage : lasts.values()) {
        Seen now = new Seen(stage, spot);
        Seen first = firsts.putIfAbsent(Like.of(stage.fastener(), stage.variant()), now);
        if (first != null) {
          compare(first, now).ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  private static Optional<Finding> compare(Seen first, Seen now) {
    double ratio =
        now.torque().target().inNewtonMetres() / first.torque().target().inNewtonMetres();
    String found = now.torque().target().toString();
    String expected = "about " + first.torque().target() + ", as in step \"" + id(first) + '"';
    if (first.angle() != now.angle()) {
      boolean same = ratio < MOST && 1 / ratio < MOST;
      Seen without = now.angle() ? first : now;
      Seen with = now.angle() ? now : first;
      return same
          ? Optional.of(
              without
                  .spot()
                  .at(
                      without.stage().field("torque"),
                      CheckRule.LIKE_WITHOUT_ANGLE,
                      without.torque().target() + " alone",
                      "an angle after it, as in step \"" + id(with) + '"'))
          : Optional.empty();
    }
    Optional<String> units = units(ratio);
    CheckRule rule =
        units.isPresent()
            ? CheckRule.UNIT_SLIP
            : ratio > MOST || 1 / ratio > MOST ? CheckRule.UNLIKE_ITS_LIKE : CheckRule.SIDES_UNLIKE;
    if (rule == CheckRule.SIDES_UNLIKE && !(acrossTheCar(first, now) && apart(first, now))) {
      return Optional.empty();
    }
    return Optional.of(
        now.spot()
            .at(
                now.stage().field("torque"),
                rule,
                found + units.map(u -> ", a ratio of " + u).orElse(""),
                expected));
  }

  private static boolean acrossTheCar(Seen one, Seen other) {
    return !one.side().isEmpty() && !other.side().isEmpty() && !one.side().equals(other.side());
  }

  private static boolean apart(Seen one, Seen other) {
    return one.torque().least().compareTo(other.torque().most()) > 0
        || other.torque().least().compareTo(one.torque().most()) > 0;
  }

  /** The two units whose factor the ratio is, in words; empty if it is none. */
  private static Optional<String> units(double ratio) {
    for (TorqueUnit one : TorqueUnit.values()) {
      for (TorqueUnit other : TorqueUnit.values()) {
        double factor = one.newtonMetres().doubleValue() / other.newtonMetres().doubleValue();
        if (one != other && Math.abs(ratio / factor - 1) < NEAR) {
          return Optional.of(one.symbol() + " to " + other.symbol());
        }
      }
    }
    return Optional.empty();
  }

  private static String id(Seen seen) {
    return seen.spot().step().head().id();
  }
}
