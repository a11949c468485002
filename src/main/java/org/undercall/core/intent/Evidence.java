package org.undercall.core.intent;

import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What speaks for each meaning of a value that was not sure enough, kept for when it is said again.
 * Twice the same is believed sooner than either alone; where the two differ, the second stands by
 * itself.
 *
 * @param allowed what could be said then; elsewhere another value is meant
 * @param until seconds of the source after which it does not count any more
 * @param shares the share of each meaning, from 0 to 1
 */
public record Evidence(Set<IntentKind> allowed, double until, Map<Object, Double> shares) {
  /** How long a value is remembered, in seconds. */
  private static final double SECONDS = 15;

  /** The share of a meaning that was not among the alternatives, at most. */
  private static final double ABSENT = 0.01;

  public Evidence {
    allowed = Set.copyOf(allowed);
    shares = Map.copyOf(shares);
  }

  /** What was heard, as evidence from then on. */
  public static Evidence of(Meanings.Choice heard, Set<IntentKind> allowed, double seconds) {
    return new Evidence(allowed, seconds + SECONDS, heard.shares());
  }

  /**
   * A choice with what spoke for it before.
   *
   * @param seconds when it was said
   * @return the choice itself if another meaning leads now, or if this does not belong to it
   */
  public Meanings.Choice with(Meanings.Choice again, Set<IntentKind> now, double seconds) {
    if (seconds > until || !allowed.equals(now) || again.shares().isEmpty()) {
      return again;
    }
    Set<Object> meanings = new HashSet<>(shares.keySet());
    meanings.addAll(again.shares().keySet());
    Object chosen =
        Collections.max(again.shares().entrySet(), Map.Entry.comparingByValue()).getKey();
    double all = 0;
    double most = 0;
    for (Object meaning : meanings) {
      double both = before(meaning) * share(again.shares(), meaning);
      all += both;
      most = Math.max(most, both);
    }
    double both = before(chosen) * share(again.shares(), chosen);
    return both < most ? again : again.with(Math.max(again.share(), both / all));
  }

  /**
   * What spoke for a meaning before, with half the weight in the logarithm: who is misheard once is
   * often misheard alike again.
   */
  private double before(Object meaning) {
    return Math.sqrt(share(shares, meaning));
  }

  private static double share(Map<Object, Double> shares, Object meaning) {
    double least = Math.min(ABSENT, Collections.min(shares.values()));
    return shares.getOrDefault(meaning, least);
  }
}
