package org.undercall.core.decision;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Missing;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.reply.Habit;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TorqueHint;

/**
 * Where the conversation stands.
 *
 * @param mode what the session as a whole is doing
 * @param pending what waits for read-back
 * @param missed how well it goes
 * @param last what was said last, if it can be taken back or was refused
 * @param habit how much is said
 * @param hinted the fastener whose torque after the last angle gave a hint just now
 */
public record Talk(
    Mode mode,
    Optional<Pending> pending,
    Missed missed,
    Optional<Last> last,
    Habit habit,
    Optional<StepRef> hinted) {

  /**
   * What was said last.
   *
   * @param kind its event
   * @param step the step at hand then
   */
  public record Last(EventKind kind, StepRef step) {
    /** What is said of the car, and is the last thing said then. */
    private static final Set<LoadChange> SAID =
        Set.of(
            LoadChange.CAR_RAISED,
            LoadChange.CAR_LOWERED,
            LoadChange.JACK_MOVED,
            LoadChange.DANGER_CALLED);

    /** What can be taken back. */
    private static final Set<EventKind> DONE =
        Set.of(
            EventKind.VALUE_CALLED,
            EventKind.STEP_CLOSED,
            EventKind.STAGE_CLOSED,
            EventKind.POSITIONS_CLOSED,
            EventKind.LOAD_CONFIRMED,
            EventKind.NOTE_KEPT,
            EventKind.NEW_HARDWARE_FITTED,
            EventKind.REUSE_NOTED,
            EventKind.MARKING_NOTED,
            EventKind.RUN_IN_BY_HAND,
            EventKind.RUN_DOWN_NOTED,
            EventKind.WITNESS_ASKED,
            EventKind.WRENCH_NAMED,
            EventKind.OVERDUE_NOTED,
            EventKind.JOB_NOTED,
            EventKind.FASTENER_SNUG,
            EventKind.STEP_PUT_OFF,
            EventKind.TURN_NOTED,
            EventKind.LOOSENED,
            EventKind.TROUBLE_NOTED,
            EventKind.OUT_OF_ORDER_NOTED);

    /** What was refused, changed or taken back: nothing is left to be taken back. */
    private static final Set<EventKind> NOTHING =
        Set.of(
            EventKind.CAUTIONS_UNDERSTOOD,
            EventKind.VALUE_REFUSED,
            EventKind.CLOSE_REFUSED,
            EventKind.MARKING_REFUSED,
            EventKind.REUSE_REFUSED,
            EventKind.LOAD_REFUSED,
            EventKind.NOT_NOW,
            EventKind.VALUE_DROPPED,
            EventKind.READ_BACK_DROPPED,
            EventKind.NOTE_DROPPED,
            EventKind.STEP_REOPENED,
            EventKind.REOPENED_TIGHT,
            EventKind.CLOSING_TAKEN_BACK,
            EventKind.STAGE_TAKEN_BACK,
            EventKind.POSITIONS_TAKEN_BACK,
            EventKind.TROUBLE_SETTLED,
            EventKind.SAYING_TAKEN_BACK,
            EventKind.TIGHTENING_INTERRUPTED,
            EventKind.CHECK_ANSWERED,
            EventKind.MEASURED,
            EventKind.FINAL_TORQUE_NOTED,
            EventKind.TIMER_STARTED,
            EventKind.NAMED_TIMER_STARTED,
            EventKind.NAMED_TIMER_CANCELLED,
            EventKind.WORK_DONE,
            EventKind.WORK_RESUMED,
            EventKind.WORK_HANDED_OVER,
            EventKind.WORK_TAKEN_OVER,
            EventKind.SESSION_RESUMED);

    /** Whether a kind of event, by its name, can be taken back as a saying. */
    static boolean canBeTakenBack(String event) {
      return DONE.stream().anyMatch(kind -> kind.name().equals(event));
    }

    /** What closed the last stage is taken back with it; after a witness nothing is. */
    private static Optional<Last> afterAsked(
        Optional<Last> before, SessionEvent.WitnessAsked asked) {
      Optional<EventKind> here =
          before.filter(last -> last.step().equals(asked.step())).map(Last::kind);
      if (here.equals(Optional.of(EventKind.STEP_CLOSED))) {
        return Optional.empty();
      }
      return here.equals(Optional.of(EventKind.STAGE_CLOSED))
          ? before
          : Optional.of(new Last(EventKind.WITNESS_ASKED, asked.step()));
    }

    /** What was said last after one more event at a step. */
    static Optional<Last> after(Optional<Last> before, SessionEvent event, StepRef at) {
      EventKind kind = EventKind.of(event);
      if (event instanceof SessionEvent.WitnessAsked asked) {
        return afterAsked(before, asked);
      }
      if (DONE.contains(kind)) {
        return Optional.of(new Last(kind, at));
      }
      if (event instanceof SessionEvent.CloseRefused refused
          && refused.missing() == Missing.AFFIRMATION) {
        return before;
      }
      boolean cures =
          event instanceof SessionEvent.TimerStarted timer
              && before
                  .filter(l -> l.kind() == EventKind.STEP_CLOSED && l.step().equals(timer.step()))
                  .isPresent();
      if (cures) {
        return before;
      }
      boolean cancelled =
          event instanceof SessionEvent.LoadChanged changed
              && (SAID.contains(changed.change())
                  || before.filter(last -> last.kind() == EventKind.LOAD_CONFIRMED).isPresent());
      boolean left =
          event instanceof SessionEvent.StepEntered
              && before.filter(last -> last.step().equals(at)).isEmpty();
      return left || cancelled || NOTHING.contains(kind) ? Optional.empty() : before;
    }
  }

  /** What the session as a whole is doing. */
  public enum Mode {
    BRIEFING,
    WORKING,
    NOTING,
    HELD,
    /** Handed over: the next technician names himself, and hears the cautions. */
    HANDED,
    ENDED
  }

  /**
   * What was not understood of late.
   *
   * @param inARow how many phrases in a row were asked for again, at most {@link #MANY}
   * @param quietUntil until when the reason is not remarked on again
   */
  public record Missed(int inARow, Optional<Instant> quietUntil) {
    /** So many in a row are worth a remark; more are not counted. */
    static final int MANY = 3;

    static final Missed NONE = new Missed(0, Optional.empty());

    /** The count with one more. */
    int andOneMore() {
      return Math.min(MANY, inARow + 1);
    }
  }

  /** The events that leave open whether the last phrase was understood; all others show it. */
  static final Set<EventKind> SAYS_NOTHING =
      Set.of(
          EventKind.NOT_UNDERSTOOD,
          EventKind.HEARING_REMARKED,
          EventKind.TIMER_ENDED,
          EventKind.NAMED_TIMER_ENDED,
          EventKind.TIMER_WARNED,
          EventKind.NAMED_TIMER_WARNED,
          EventKind.CLOCK_JUMPED,
          EventKind.REMINDED,
          EventKind.STEP_RECALLED);

  /** Answers and refusals. */
  private static final Set<EventKind> CHANGES_NOTHING =
      Set.of(EventKind.ASKED, EventKind.CLOSE_REFUSED, EventKind.NOT_NOW, EventKind.TALK_SET);

  static final Talk START =
      new Talk(
          Mode.BRIEFING,
          Optional.empty(),
          Missed.NONE,
          Optional.empty(),
          Habit.NEW,
          Optional.empty());

  Talk with(Mode next) {
    return new Talk(next, pending, missed, last, habit, hinted);
  }

  Talk awaiting(Pending next) {
    return new Talk(mode, Optional.of(next), missed, last, habit, hinted);
  }

  Talk settled() {
    return new Talk(mode, Optional.empty(), missed, last, habit, hinted);
  }

  /** With so many phrases in a row not understood, 0 after one that was. */
  Talk missed(int inARow) {
    return new Talk(mode, pending, new Missed(inARow, missed.quietUntil()), last, habit, hinted);
  }

  /** With the reason remarked on. */
  Talk quietUntil(Instant until) {
    return new Talk(
        mode, pending, new Missed(missed.inARow(), Optional.of(until)), last, habit, hinted);
  }

  /** With another habit. */
  public Talk with(Habit next) {
    return new Talk(mode, pending, missed, last, next, hinted);
  }

  /** What is left of the hint after an event: it outlasts only what changes nothing. */
  Talk hintedAfter(SessionEvent event) {
    EventKind kind = EventKind.of(event);
    if (event instanceof SessionEvent.FinalTorqueJudged e) {
      boolean outside = e.hint() != TorqueHint.AS_EXPECTED;
      return new Talk(
          mode, pending, missed, last, habit, outside ? Optional.of(e.step()) : Optional.empty());
    }
    return hinted.isEmpty() || SAYS_NOTHING.contains(kind) || CHANGES_NOTHING.contains(kind)
        ? this
        : new Talk(mode, pending, missed, last, habit, Optional.empty());
  }

  /** With what was said last. */
  Talk last(Optional<Last> next) {
    return new Talk(mode, pending, missed, next, habit, hinted);
  }
}
