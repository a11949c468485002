package org.undercall.core.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.JointKind;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.LoadCondition;

/** Rules about the load condition and the joint of a fastener. */
final class JointRules {
  private JointRules() {}

  static List<Finding> check(Spot spot) {
    return spot.fastener().flatMap(fastener -> needs(spot, fastener)).stream().toList();
  }

  private static Optional<Finding> needs(Spot spot, Fastener fastener) {
    Optional<JointKind> kind = fastener.joint().kind();
    boolean any = fastener.needs() == LoadCondition.ANY;
    if (any && kind.filter(k -> k == JointKind.BONDED_BUSH).isPresent()) {
      String expected = "\"ride-height\", or \"full-droop\" if the maker says so";
      return Optional.of(needs(spot, CheckRule.BUSH_WITHOUT_LOAD, "\"any\" at a bush", expected));
    }
    if (any && kind.isEmpty() && Spot.word(fastener.name(), "bush")) {
      String expected = "a load condition, or a stated \"joint\" other than \"bonded-bush\"";
      String found = "\"any\", a bush guessed from the name \"" + fastener.name() + "\"";
      return Optional.of(needs(spot, CheckRule.BUSH_NOT_STATED, found, expected));
    }
    boolean spherical = kind.filter(k -> k == JointKind.SPHERICAL_JOINT).isPresent();
    if (spherical && fastener.needs() == LoadCondition.RIDE_HEIGHT) {
      String found = "\"ride-height\" at a joint that turns";
      return Optional.of(needs(spot, CheckRule.JOINT_WITH_LOAD, found, "\"any\""));
    }
    return Optional.empty();
  }

  private static Finding needs(Spot spot, CheckRule rule, String found, String expected) {
    return spot.at("fastener/needs", rule, found, expected);
  }

  /** Bonded bushes of one arm; where no arm is stated, those of the same name. */
  static List<Finding> mixedLoads(List<Spot> spots) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Spot> firsts = new HashMap<>();
    for (Spot spot : spots) {
      Optional<Fastener> bush = spot.fastener().filter(JointRules::loadedBush);
      if (bush.isPresent()) {
        Spot first = firsts.putIfAbsent(group(bush.get()), spot);
        if (first != null && unlike(first.fastener().orElseThrow(), bush.get())) {
          String found = words(bush.get().needs()) + ", other than step " + id(first);
          String expected = "the same load condition, or \"needsReason\"";
          findings.add(needs(spot, CheckRule.MIXED_LOADS, found, expected));
        }
      }
    }
    return findings;
  }

  private static boolean loadedBush(Fastener fastener) {
    boolean bush = fastener.joint().kind().filter(k -> k == JointKind.BONDED_BUSH).isPresent();
    return bush && fastener.needs() != LoadCondition.ANY;
  }

  private static String group(Fastener bush) {
    String name = bush.joint().arm().map(arm -> "arm " + arm).orElse("name " + bush.name());
    return name.toLowerCase(Locale.ROOT);
  }

  private static boolean unlike(Fastener one, Fastener other) {
    boolean reason = one.joint().reason().isPresent() || other.joint().reason().isPresent();
    return one.needs() != other.needs() && !reason;
  }

  private static String words(LoadCondition needs) {
    return '"' + Kebab.of(needs) + '"';
  }

  private static String id(Spot spot) {
    return '"' + spot.step().head().id() + '"';
  }
}
