package org.undercall.core.writing;

import static org.undercall.core.reply.Wanted.*;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.reply.Wanted;

/**
 * The answer that an empty line stands for. There is none for a value that tightens something, for
 * what it depends on, and for the source of the values.
 */
final class Otherwise {
  /** The questions that can be answered with: none. */
  private static final Set<Wanted> MAY_BE_NONE =
      EnumSet.of(
          MORE_CAUTIONS,
          MORE_TOOLS,
          CALIBRATED,
          UNCERTAINTY,
          FRICTION,
          SEAT,
          BEYOND_YIELD,
          CLAMPED,
          NUT_CLASS,
          ORDER,
          JOINT,
          ARM,
          REASON,
          MARKING,
          MORE_STAGES,
          MORE_MARKINGS,
          CHECK,
          BRIEF,
          WHEELS,
          LEAST,
          MOST,
          NOTE);

  private static final Map<Wanted, String> FIXED = fixed();

  private Otherwise() {}

  private static Map<Wanted, String> fixed() {
    Map<Wanted, String> fixed = new EnumMap<>(Wanted.class);
    fixed.put(REVISION, "1");
    fixed.put(CAUTION, "Stands carry the car. Never work under a jack alone.");
    fixed.put(SIDE, "both");
    fixed.put(COUNT, "1");
    fixed.put(OUTSIDE, "fault");
    fixed.put(NOTES_HEIGHT, "no");
    for (Wanted wanted : MAY_BE_NONE) {
      if (wanted != MARKING && wanted != MORE_STAGES && wanted != CALIBRATED) {
        fixed.put(wanted, Given.NONE);
      }
    }
    return fixed;
  }

  /** The answer, if the question has one. */
  static Optional<String> of(Wanted wanted, Draft draft) {
    return switch (wanted) {
      case PHASE -> draft.anywhere(PHASE).isEmpty() ? Optional.of("tighten") : Optional.empty();
      case KIND -> Optional.of(draft.rows().isEmpty() ? "fasten" : "done");
      case HARDWARE -> hardware(draft.inStep(FASTENER).orElse(""));
      case STEP -> title(draft);
      default -> Optional.ofNullable(FIXED.get(wanted));
    };
  }

  /** Whether it can be answered with: none. */
  static boolean mayBeNone(Wanted wanted) {
    return MAY_BE_NONE.contains(wanted);
  }

  /** A name that says bolt or screw, and not nut, tells what is turned. */
  private static Optional<String> hardware(String name) {
    String words = name.toLowerCase(Locale.ROOT);
    boolean bolt = words.matches(".*\\b(bolts?|screws?)\\b.*") && !words.contains("nut");
    return bolt ? Optional.of("bolt") : Optional.empty();
  }

  private static Optional<String> title(Draft draft) {
    return draft
        .inStep(FASTENER)
        .map(name -> "Tighten the " + name)
        .or(() -> draft.inStep(CONDITION).map(to -> "Bring the suspension to " + to));
  }
}
