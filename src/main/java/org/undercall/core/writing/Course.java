package org.undercall.core.writing;

import static org.undercall.core.reply.Wanted.*;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.reply.Wanted;

/** The order of the questions: which comes after the answers so far. */
final class Course {
  /** A title of so many words is brief as it is. */
  private static final int MOST_WORDS = 5;

  /** What always comes after what. */
  private static final Map<Wanted, Wanted> FIXED = fixed();

  private Course() {}

  private static Map<Wanted, Wanted> fixed() {
    Map<Wanted, Wanted> fixed = new EnumMap<>(Wanted.class);
    chain(fixed, TITLE, VEHICLE, AUTHOR, REVISION, SOURCE, CAUTION, MORE_CAUTIONS);
    chain(fixed, TOOL, TOOL_LEAST, TOOL_MOST, CALIBRATED);
    chain(fixed, UNCERTAINTY, MORE_TOOLS);
    chain(fixed, PHASE, SIDE, KIND);
    chain(fixed, FASTENER, THREAD, HARDWARE);
    chain(fixed, NUT_CLASS, SOCKET, COUNT);
    chain(fixed, ORDER, BY_HAND, ONE_TIME, LUBRICATION);
    chain(fixed, FRICTION, JOINT);
    chain(fixed, ARM, NEEDS);
    chain(fixed, SEAT_ANGLE, MARKING, STAGE, MORE_STAGES);
    chain(fixed, CHECK, WHEELS, CHANGES_LOAD, NOTE);
    chain(fixed, UNIT, LEAST, MOST);
    chain(fixed, HEIGHT_TOLERANCE, NOTE);
    chain(fixed, SECONDS, NOTE);
    chain(fixed, CONDITION, BY_WHEELS, STEP);
    chain(fixed, DUE, NOTE);
    return fixed;
  }

  private static void chain(Map<Wanted, Wanted> fixed, Wanted... questions) {
    for (int i = 1; i < questions.length; i++) {
      fixed.put(questions[i - 1], questions[i]);
    }
  }

  static Optional<Wanted> next(Draft draft) {
    Optional<Given> last = draft.last();
    if (last.isEmpty()) {
      return Optional.of(TITLE);
    }
    Wanted after = FIXED.get(last.get().wanted());
    return after != null ? Optional.of(after) : chosen(draft, last.get());
  }

  private static Optional<Wanted> chosen(Draft draft, Given last) {
    boolean none = last.isNone();
    return switch (last.wanted()) {
      case MORE_CAUTIONS -> Optional.of(none ? TOOL : MORE_CAUTIONS);
      case CALIBRATED -> Optional.of(none ? MORE_TOOLS : UNCERTAINTY);
      case MORE_TOOLS -> Optional.of(none ? PHASE : TOOL_LEAST);
      case KIND -> ofKind(last.text());
      case MORE_STAGES -> Optional.of(none ? afterStages(draft) : MORE_STAGES);
      case BEYOND_YIELD -> Optional.of(isOpen(draft, CLAMPED) ? CLAMPED : nextClass(draft));
      case CLAMPED -> Optional.of(nextClass(draft));
      case MORE_MARKINGS -> Optional.of(none ? STEP : STAGE);
      case STEP -> Optional.of(isLong(last.text()) ? BRIEF : afterTitle(draft));
      case BRIEF -> Optional.of(afterTitle(draft));
      case NOTE -> Optional.of(none ? KIND : NOTE);
      case MOST -> Optional.of(limited(draft) ? OUTSIDE : afterLimits(draft));
      case OUTSIDE -> Optional.of(afterLimits(draft));
      case NOTES_HEIGHT -> Optional.of(last.text().equals("yes") ? tolerance(draft) : NOTE);
      default -> Optional.of(ofFastener(draft, last));
    };
  }

  private static Optional<Wanted> ofKind(String kind) {
    return switch (kind) {
      case "done" -> Optional.empty();
      case "phase" -> Optional.of(PHASE);
      case "fasten" -> Optional.of(FASTENER);
      case "load" -> Optional.of(CONDITION);
      default -> Optional.of(STEP);
    };
  }

  private static Wanted ofFastener(Draft draft, Given last) {
    return switch (last.wanted()) {
      case HARDWARE -> last.text().endsWith("nut") ? NUT_CLASS : SOCKET;
      case COUNT -> last.text().equals("1") ? ONE_TIME : ORDER;
      case LUBRICATION -> isVague(draft) ? FRICTION : JOINT;
      case WHEEL -> last.text().equals("yes") ? SEAT : MARKING;
      case SEAT -> last.text().equals("cone") ? SEAT_ANGLE : MARKING;
      case JOINT -> last.isNone() || last.text().equals("rigid") ? NEEDS : ARM;
      case NEEDS -> differs(draft) ? REASON : afterReason(draft);
      default -> afterReason(draft);
    };
  }

  private static Wanted afterReason(Draft draft) {
    String name = draft.inStep(FASTENER).orElse("").toLowerCase(Locale.ROOT);
    return name.matches(".*\\bwheels?\\b.*") ? WHEEL : MARKING;
  }

  /** Whether a bush is tightened otherwise than usual, or than one of the same arm. */
  private static boolean differs(Draft draft) {
    String needs = draft.inStep(NEEDS).orElse("");
    if (needs.equals("any") || !draft.inStep(JOINT).orElse("").equals("bonded bush")) {
      return false;
    }
    if (needs.equals("full droop")) {
      return true;
    }
    String arm = draft.inStep(ARM).orElse(Given.NONE);
    String name = draft.inStep(FASTENER).orElse("");
    List<Map<String, String>> rows = draft.rows();
    return rows.stream()
        .filter(row -> row.getOrDefault(JOINT.heading(), "").equals("bonded bush"))
        .filter(row -> sameArm(row, arm, name))
        .map(row -> row.get(NEEDS.heading()))
        .anyMatch(other -> !other.equals("any") && !other.equals(needs));
  }

  private static boolean sameArm(Map<String, String> row, String arm, String name) {
    String other = row.getOrDefault(ARM.heading(), Given.NONE);
    boolean none = arm.equals(Given.NONE) && other.equals(Given.NONE);
    return none ? row.get(FASTENER.heading()).equalsIgnoreCase(name) : other.equalsIgnoreCase(arm);
  }

  /** Whether the torque is judged, and by a state of thread and seat that can be many things. */
  private static boolean isVague(Draft draft) {
    String state = draft.inStep(LUBRICATION).orElse("");
    return isJudged(draft) && (state.equals("as delivered") || state.equals("unstated"));
  }

  /** Whether the check knows the thread, so that more about its joint can matter. */
  private static boolean isJudged(Draft draft) {
    return draft.inStep(THREAD).filter(t -> t.toLowerCase(Locale.ROOT).startsWith("m")).isPresent();
  }

  private static boolean isOpen(Draft draft, Wanted wanted) {
    return draft.inStep(wanted).isEmpty();
  }

  /** Only of an angle it matters whether yield is meant, and most of all what is clamped. */
  private static Wanted afterStages(Draft draft) {
    return isJudged(draft) && Rows.endsTurning(draft) ? BEYOND_YIELD : nextClass(draft);
  }

  private static Wanted nextClass(Draft draft) {
    boolean marked = !draft.inStep(MARKING).orElse(Given.NONE).equals(Given.NONE);
    return marked ? MORE_MARKINGS : STEP;
  }

  /** Whether there is something to shorten in a title. */
  private static boolean isLong(String title) {
    return title.strip().split("\\s+", -1).length > MOST_WORDS;
  }

  private static Wanted afterTitle(Draft draft) {
    return switch (draft.inStep(KIND).orElse("")) {
      case "do" -> CHECK;
      case "measure" -> UNIT;
      case "wait" -> SECONDS;
      case "hand-over" -> DUE;
      default -> NOTE;
    };
  }

  private static boolean limited(Draft draft) {
    return !draft.inStep(LEAST).orElse(Given.NONE).equals(Given.NONE)
        || !draft.inStep(MOST).orElse(Given.NONE).equals(Given.NONE);
  }

  private static Wanted afterLimits(Draft draft) {
    boolean height =
        draft.inStep(UNIT).orElse("").equals("mm")
            && !draft.anywhere(SIDE).orElse("car").equals("car");
    return height ? NOTES_HEIGHT : NOTE;
  }

  private static Wanted tolerance(Draft draft) {
    return draft.anywhere(HEIGHT_TOLERANCE).isPresent() ? NOTE : HEIGHT_TOLERANCE;
  }
}
