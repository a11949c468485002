package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.Trouble;

/** What the technician meant by one phrase. */
public sealed interface Intent {

  /** Which intent it is. */
  IntentKind kind();

  /** An intent that needs nothing else. */
  record Plain(IntentKind kind) implements Intent {}

  /** An intent with a number: a called value, a completed stage with its value, an arch height. */
  record OfNumber(IntentKind kind, SpokenNumber number, Optional<SpokenUnit> unit)
      implements Intent {}

  /**
   * A measured value called with its sign, or in degrees and minutes.
   *
   * @param value below zero after "minus"
   * @param unit of minutes, the value is all of them: one degree thirty is 90
   * @param signed whether "plus" or "minus" was said
   */
  record OfReading(IntentKind kind, BigDecimal value, Optional<SpokenUnit> unit, boolean signed)
      implements Intent {}

  /** An intent about the step with a number, from 1. */
  record OfStep(IntentKind kind, int number) implements Intent {}

  /** An intent about a side. */
  record OfSide(IntentKind kind, Side side) implements Intent {}

  /** A head marking that was read out. */
  record Marking(HeadMarking marking) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.HEAD_MARKING;
    }
  }

  /**
   * What was said not to be so, or not surely.
   *
   * @param denied what it would have been without the denial
   */
  record Denied(IntentKind denied, Optional<Integer> position) implements Intent {
    /** A denial of no position of a set. */
    public Denied(IntentKind denied) {
      this(denied, Optional.empty());
    }

    @Override
    public IntentKind kind() {
      return IntentKind.DENIED;
    }
  }

  /** A step put off for a reason. */
  record PutOff(PutOffReason reason) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.PUT_OFF;
    }
  }

  /** A stage of one fastener of a set, by its position from 1. */
  record OfPosition(IntentKind kind, int position) implements Intent {}

  /**
   * A whole set by its number, such as "five of five".
   *
   * @param number how many
   * @param of how many there are
   */
  record Counted(IntentKind kind, int number, int of) implements Intent {}

  /** Something that went wrong; of a set at a position, if one is named. */
  record OfTrouble(Trouble trouble, Optional<Integer> position) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.TROUBLE;
    }
  }

  /** Several things in one answer, in the order in which they are judged. */
  record Several(List<Intent> parts) implements Intent {
    public Several {
      parts = List.copyOf(parts);
    }

    @Override
    public IntentKind kind() {
      return IntentKind.SEVERAL;
    }
  }

  /** Why a step is closed before those that should come first. */
  record OutOfOrder(OrderReason reason) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.OUT_OF_ORDER;
    }
  }

  /** What the next words report, and where if that is said. */
  record OfFinding(Finding finding, Optional<Side> side) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.FINDING;
    }
  }

  /** Something about the job, in capitals and digits. */
  record OfJob(JobField field, String text) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.JOB_TOLD;
    }
  }

  /** A second person, named in capitals and digits. */
  record OfWitness(IntentKind kind, String name) implements Intent {}

  /** Why a wrench is used although its calibration is over. */
  record Overdue(OverdueReason reason) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.OVERDUE;
    }
  }

  /** An intent about the timer with a name. */
  record OfTimer(IntentKind kind, TimerName timer) implements Intent {}

  /** A timer to be started, with its name and its whole minutes. */
  record SetTimer(TimerName timer, int minutes) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.TIMER_SET;
    }
  }

  /**
   * The wall clock ran apart from the steady one, or nothing could be heard.
   *
   * @param millis how far the wall clock was set forward, negative for back; 0 if it was not
   * @param asleepMillis for how long the machine may have slept
   */
  record ClockJumped(long millis, long asleepMillis) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.CLOCK_JUMPED;
    }
  }

  /** Nothing was heard for a time, in milliseconds. */
  record NothingHeard(long millis) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.NOTHING_HEARD;
    }
  }

  /** The words of a note, as heard, unchecked. */
  record NoteText(String text) implements Intent {
    @Override
    public IntentKind kind() {
      return IntentKind.NOTE_TEXT;
    }
  }

  /**
   * Something heard that is no phrase of this phase.
   *
   * @param reason why it does not count
   * @param number the number of a {@link Reason#LONE_NUMBER}
   * @param levels how loud it was, if the ear measures that
   */
  record Unclear(Reason reason, Optional<SpokenNumber> number, Optional<SoundLevels> levels)
      implements Intent {
    /** Why a phrase does not count. */
    public enum Reason {
      /** It holds words that are on no list. */
      FOREIGN_WORDS,
      /** Its words are known, but one alone, or heard with little confidence: no whole phrase. */
      STRAY_WORDS,
      /** It is a number of one word without its unit, which chatter is full of. */
      LONE_NUMBER,
      /** Its words are known, but they are no whole phrase. */
      NOT_A_PHRASE,
      /** A word in a whole phrase was heard with too little confidence. */
      LOW_CONFIDENCE,
      /** It could be read as two different numbers. */
      AMBIGUOUS_NUMBER;

      /** Whether it is close to a phrase, so that the technician should be asked again. */
      public boolean isClose() {
        return switch (this) {
          case FOREIGN_WORDS, STRAY_WORDS, LONE_NUMBER -> false;
          case NOT_A_PHRASE, LOW_CONFIDENCE, AMBIGUOUS_NUMBER -> true;
        };
      }
    }

    public Unclear {
      Objects.requireNonNull(reason, "reason");
      Objects.requireNonNull(number, "number");
      Objects.requireNonNull(levels, "levels");
    }

    /** Something unclear of which only the reason is known. */
    public Unclear(Reason reason) {
      this(reason, Optional.empty(), Optional.empty());
    }

    /** The same with the levels it was heard at. */
    public Unclear at(Optional<SoundLevels> heard) {
      return new Unclear(reason, number, heard);
    }

    @Override
    public IntentKind kind() {
      return IntentKind.UNCLEAR;
    }
  }
}
