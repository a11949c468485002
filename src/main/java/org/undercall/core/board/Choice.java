package org.undercall.core.board;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;

/**
 * A phrase that can be pressed in place of being said.
 *
 * @param phrase the whole phrase, as it would be said
 * @param group where it belongs on the board
 * @param twice whether it must be pressed a second time, because it changes what stands recorded
 */
public record Choice(String phrase, Group group, boolean twice) {

  /** The phases that wait for a load condition. */
  private static final Set<Phase> LOADING = Set.of(Phase.GATE, Phase.LOAD, Phase.LOAD_READ_BACK);

  /** What a phrase is for. */
  public enum Group {
    /** It answers what the session waits for. */
    GO_ON,
    /** It tells how the car stands. */
    LOAD,
    /** It leaves the step, opens one again, or takes something back. */
    LEAVE,
    /** It asks. */
    ASK,
    /** Notes, pauses, timers and the end. */
    WORK
  }

  /** The phrases of a phase that need no number, in the order of the groups. */
  public static List<Choice> in(Phase phase) {
    return Stream.of(Group.values())
        .flatMap(
            group -> Decider.offered(phase).stream().filter(kind -> group(kind, phase) == group))
        .flatMap(kind -> of(kind, phase))
        .toList();
  }

  private static Stream<Choice> of(IntentKind kind, Phase phase) {
    return Phrasebook.withoutNumber(kind).stream()
        .filter(phrase -> !kind.isShort())
        .map(phrase -> new Choice(phrase, group(kind, phase), kind.changesState()));
  }

  private static Group group(IntentKind kind, Phase phase) {
    boolean proof = group(kind) == Group.LOAD && kind.closes() && LOADING.contains(phase);
    return proof ? Group.GO_ON : group(kind);
  }

  private static Group group(IntentKind kind) {
    return switch (kind) {
      case WHEELS_CARRY,
          KNUCKLE_JACKED,
          ARCH_HEIGHT,
          HANGS_FREE,
          RIDE_HEIGHT_READ_BACK,
          FULL_DROOP_READ_BACK,
          CAR_RAISED,
          CAR_LOWERED,
          JACK_MOVED,
          DANGER ->
          Group.LOAD;
      case GO_TO_STEP, STEP_BACK, PUT_OFF, FITTED_SNUG, REOPEN, SIDE_CHANGE, TROUBLE, CANCEL_THAT ->
          Group.LEAVE;
      case REPEAT,
          WHAT_IS_LEFT,
          WHERE_AM_I,
          WHICH_ONE,
          WRENCH_SETTING,
          OTHER_UNIT,
          WHY_THIS_VALUE,
          TIMER_LEFT,
          STEP_TIME,
          WORK_TIME ->
          Group.ASK;
      case WRENCH_NAMED,
          FINDING,
          NOTE,
          NOTE_TEXT,
          HOLD,
          SHIFT_CHANGE,
          TIMER_SET,
          TIMER_CANCEL,
          END_OF_WORK ->
          Group.WORK;
      default -> Group.GO_ON;
    };
  }
}
