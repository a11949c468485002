package org.undercall.core.fastening;

import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.term.Refused;

/** What can be said about the preload after a torque stage and an angle stage. */
public sealed interface AngleOutcome {

  /** Something the preload depends on that is not known. */
  enum Missing {
    JOINT_SIZES("the sizes of the clamped parts and the bolt's free length"),
    FRICTION("the friction of thread and seat");

    private final String words;

    Missing(String words) {
      this.words = words;
    }

    /** What is missing, in words. */
    public String words() {
      return words;
    }
  }

  /** How far a tightening goes, over the whole range of friction. */
  enum Reach {
    /** Below yield whatever the friction. */
    BELOW_YIELD,
    /** Below yield or at it, depending on the friction. */
    MAY_REACH_YIELD,
    /** At yield whatever the friction. */
    ABOUT_YIELD
  }

  /**
   * The preload cannot be told.
   *
   * @param missing what is not known, at least one
   */
  record NotKnown(Set<Missing> missing) implements AngleOutcome {
    public NotKnown {
      missing = Set.copyOf(missing);
      if (missing.isEmpty()) {
        throw new Refused("FAS-031", "outcome", "nothing missing", "one thing or more");
      }
    }

    @Override
    public String toString() {
      return missing.stream()
          .sorted()
          .map(Missing::words)
          .collect(Collectors.joining(" and ", "the preload cannot be told without ", ""));
    }
  }

  /**
   * The preload to expect. No end of it lies above the yield preload: beyond yield the bolt
   * stretches at about that preload, and the elastic number would be false.
   *
   * @param reach how far the tightening goes
   * @param preload the range after the angle stage
   * @param afterTorque the range after the torque stage alone
   * @param yieldPreload the range of the yield preload, which depends on thread friction too
   * @param angleToYield the range of angle at which yield begins; zero if the torque stage reaches
   *     it
   */
  record Expected(
      Reach reach,
      Range<Force> preload,
      Range<Force> afterTorque,
      Range<Force> yieldPreload,
      Range<Rotation> angleToYield)
      implements AngleOutcome {

    @Override
    public String toString() {
      return switch (reach) {
        case BELOW_YIELD -> "preload " + preload + ", below yield (" + yieldPreload + ")";
        case MAY_REACH_YIELD ->
            "preload " + preload + ", may reach yield (after " + angleToYield + ")";
        case ABOUT_YIELD -> "about yield preload, " + preload + " (after " + angleToYield + ")";
      };
    }
  }
}
