package org.undercall.core.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.LoadCondition;

/** Rules about words that ask for another load condition than the fastener they stand at. */
final class LoadWordRules {
  private LoadWordRules() {}

  static List<Finding> check(List<Spot> spots) {
    List<Finding> findings = new ArrayList<>();
    for (Spot spot : spots) {
      spot.fastener()
          .filter(fastener -> !fastener.holdsWheel())
          .ifPresent(fastener -> check(spot, fastener, spots, findings));
    }
    return findings;
  }

  private static void check(
      Spot spot, Fastener fastener, List<Spot> spots, List<Finding> findings) {
    texts(spot.step().head())
        .forEach(
            (field, text) -> {
              for (LoadWords.Asked asked : LoadWords.asked(text)) {
                if (contradicts(asked, fastener.needs()) && !isElsewhere(asked, spot, spots)) {
                  findings.add(
                      spot.at(
                          field,
                          CheckRule.WORDS_AGAINST_LOAD,
                          '"' + asked.words() + "\" at load " + Kebab.of(fastener.needs()),
                          "words and load condition that ask for the same"));
                  return;
                }
              }
            });
  }

  private static Map<String, String> texts(Step.Head head) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("title", head.title());
    for (int i = 0; i < head.cautions().size(); i++) {
      texts.put("cautions/" + i, head.cautions().get(i));
    }
    head.why().ifPresent(why -> texts.put("why", why));
    return texts;
  }

  /**
   * Whether the fastener's condition is none that the words leave. On its wheels is no height: a
   * hub nut is tightened so at any load, and a jack brings an arm to ride height before.
   */
  private static boolean contradicts(LoadWords.Asked asked, LoadCondition needs) {
    return switch (asked.named()) {
      case RIDE_HEIGHT -> asked.refused() == (needs == LoadCondition.RIDE_HEIGHT) || isAny(needs);
      case FULL_DROOP -> asked.refused() == (needs == LoadCondition.FULL_DROOP) || isAny(needs);
      case ON_ITS_WHEELS -> !asked.refused() && needs == LoadCondition.FULL_DROOP;
    };
  }

  private static boolean isAny(LoadCondition needs) {
    return needs == LoadCondition.ANY;
  }

  /** Whether the words may be about another step for the same fastener, at that condition. */
  private static boolean isElsewhere(LoadWords.Asked asked, Spot spot, List<Spot> spots) {
    String name = spot.fastener().map(Fastener::name).orElse("").toLowerCase(Locale.ROOT);
    return spots.stream()
        .filter(other -> !other.equals(spot))
        .flatMap(other -> other.fastener().stream())
        .filter(other -> other.name().toLowerCase(Locale.ROOT).equals(name))
        .anyMatch(other -> !contradicts(asked, other.needs()));
  }
}
