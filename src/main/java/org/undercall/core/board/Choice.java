package org.undercall.core.board;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.term.Side;

/**
 * A phrase that can be pressed in place of being said.
 *
 * @param phrase the whole phrase, as it would be said
 * @param action what the press does, in a few words
 * @param group where it belongs on the board
 * @param effect what it does to what stands recorded
 * @param twice whether it must be pressed a second time, because it changes what stands recorded
 */
public record Choice(String phrase, String action, Group group, Effect effect, boolean twice) {

  /** The phases that wait for a load condition. */
  private static final Set<Phase> LOADING = Set.of(Phase.GATE, Phase.LOAD, Phase.LOAD_READ_BACK);

  /** What a phrase is for. */
  public enum Group {
    /** It answers what the session waits for. */
    GO_ON,
    /** It says no to what was said, or takes it back. */
    TAKE_BACK,
    /** It tells how the car stands. */
    LOAD,
    /** It leaves the step, or opens one again. */
    LEAVE,
    /** It tells what went wrong. */
    WRONG,
    /** It closes something on other grounds than usual. */
    EXCEPT,
    /** It asks. */
    ASK,
    /** Notes, pauses, timers and the end. */
    WORK
  }

  /** What a phrase does to what stands recorded. */
  public enum Effect {
    /** It closes, confirms or releases. */
    CLOSES,
    /** It cancels, opens or warns. */
    UNDOES,
    /** Neither. */
    NEITHER
  }

  /** What can be pressed in a session: of the sides only those that its procedure knows. */
  static List<Choice> in(Session session) {
    Set<Side> known =
        session.walk().places().stream()
            .map(place -> place.ref().side())
            .collect(Collectors.toSet());
    known.add(Side.CAR);
    known.addAll(session.walk().procedure().wheels());
    Predicate<Choice> strange =
        choice ->
            Stream.of(Side.values())
                .filter(side -> !known.contains(side))
                .anyMatch(side -> choice.phrase().contains(side.place()));
    return in(session.phase()).stream().filter(strange.negate()).toList();
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
        .map(
            phrase ->
                new Choice(
                    phrase,
                    Actions.of(kind, phrase),
                    group(kind, phase),
                    effect(kind),
                    kind.changesState()));
  }

  private static Effect effect(IntentKind kind) {
    if (kind.closes()) {
      return Effect.CLOSES;
    }
    boolean warns = kind == IntentKind.DANGER || kind == IntentKind.TROUBLE;
    return warns || kind.changesState() ? Effect.UNDOES : Effect.NEITHER;
  }

  private static Group group(IntentKind kind, Phase phase) {
    boolean proof = group(kind) == Group.LOAD && kind.closes() && LOADING.contains(phase);
    boolean settles = kind == IntentKind.SETTLED && phase == Phase.TROUBLE;
    boolean byHand = kind == IntentKind.FITTED_SNUG && phase == Phase.BY_HAND;
    boolean loose = kind == IntentKind.LOOSENED && phase == Phase.BEGUN;
    boolean over = kind == IntentKind.END_OF_WORK && phase == Phase.ALL_CLOSED;
    return proof || settles || byHand || loose || over ? Group.GO_ON : group(kind);
  }

  private static Group group(IntentKind kind) {
    return switch (kind) {
      case READ_BACK_WRONG, CHECK_FAILED, CANCEL_THAT -> Group.TAKE_BACK;
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
      case GO_TO_STEP, STEP_BACK, PUT_OFF, REOPEN, SIDE_CHANGE -> Group.LEAVE;
      case TROUBLE -> Group.WRONG;
      case FITTED_SNUG, OUT_OF_ORDER, OVERDUE, LOOSENED, SETTLED -> Group.EXCEPT;
      case REPEAT,
          WHAT_IS_LEFT,
          WHERE_AM_I,
          WHICH_ONE,
          WRENCH_SETTING,
          OTHER_UNIT,
          WHY_THIS_VALUE,
          TIMER_LEFT,
          STEP_TIME,
          WORK_TIME,
          SAY_MORE,
          SAY_LESS ->
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
