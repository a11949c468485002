package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.TimerName;

/** What the program says about timers with a name, times, reminders and steps put off. */
public final class Timing {
  private static final int LISTED = 4;
  private static final long MINUTE = 60;
  private static final long ROUND = 10;

  private Timing() {}

  /** A fastener that was closed must cure, and its timer runs. */
  public static Reply cures(long seconds) {
    return Reply.of("Curing. Timer running, " + Words.time(seconds) + ".");
  }

  /** What a reminder says is waited for. */
  public enum WaitedFor {
    CAUTIONS("the cautions"),
    WORK("the work"),
    CHECK("the check question"),
    VALUE("the measured value"),
    HARDWARE("new hardware"),
    MARKING("the head marking"),
    LOAD("the load condition"),
    TORQUE("torque stage"),
    ANGLE("angle stage"),
    TROUBLE("what went wrong"),
    TIMER("the waiting time"),
    HAND_OVER("the hand-over"),
    WITNESS("the witness"),
    READ_BACK("the read-back"),
    NOTE("your note"),
    OTHER_STEP("closed, others are open"),
    END("all steps closed");

    private final String words;

    WaitedFor(String words) {
      this.words = words;
    }
  }

  /** A timer with a name was started; the minutes are read digit by digit where they have two. */
  public static Reply started(TimerName name, int minutes, boolean again) {
    String runs = again ? " timer started again, " : " timer running, ";
    boolean plain = minutes < 10;
    String count = plain ? Words.count(minutes) : Words.digits(BigDecimal.valueOf(minutes));
    return Reply.of(
        Words.sentence(name(name)) + runs + count + (minutes == 1 ? " minute." : " minutes."));
  }

  /** The words for a timer with a name. */
  public static String name(TimerName name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The words for the timer of a step. */
  public static String name(int number, Walk.Place place) {
    return "step " + Words.count(number) + ", " + place.step().head().title();
  }

  /** The time a timer still runs, with its name. */
  public static Reply left(String name, long seconds) {
    return Reply.of(Words.sentence(name) + ": " + Words.time(seconds) + " left.");
  }

  /** No timer with this name runs. */
  public static Reply noTimer(TimerName name) {
    return Reply.of("No timer is running for the " + name(name) + ".");
  }

  /** No timer of this step runs. */
  public static Reply noTimer(int step) {
    return Reply.of("No timer is running for step " + Words.count(step) + ".");
  }

  /** Several timers run and none was named. */
  public static Reply which(List<String> names) {
    return Reply.of(
        "Which timer? " + Words.sentence(String.join("; ", names)) + ".",
        "Say: stop the timer for, and its name or step.");
  }

  /** One of several timers was cancelled. */
  public static Reply cancelled(String name) {
    return Reply.of("Timer cancelled: " + name + ".");
  }

  /** A timer soon runs out; tens of seconds, rounded up. */
  public static Reply soonOver(String name, long seconds) {
    long rounded = (seconds + ROUND - 1) / ROUND * ROUND;
    return Reply.of(Words.sentence(Words.time(rounded)) + " left: " + name + ".");
  }

  /** The timer of a step ran out; how long ago, if it is a minute or more. */
  public static Reply over(Walk.Place place, long secondsAgo) {
    String when = secondsAgo < MINUTE ? "Time is up: " : "Time was up " + ago(secondsAgo) + ": ";
    Step.Head head = place.step().head();
    return Reply.once(
        Lesson.TIME_OVER,
        when + Words.step(place.ref(), head.title()) + ".",
        when + Words.step(place.ref(), head.brief().orElse(head.title())) + ".");
  }

  /** A timer with a name ran out; how long ago, if it is a minute or more. */
  public static Reply over(TimerName name, long secondsAgo) {
    String when = secondsAgo < MINUTE ? " time is up." : " time was up " + ago(secondsAgo) + ".";
    return Reply.of("The " + name(name) + when);
  }

  /** Timers still run while the end of the work is near. */
  public static Reply stillRun(List<String> names) {
    return Reply.of(
        (names.size() == 1 ? "A timer is still running: " : "Timers are still running: ")
            + String.join("; ", names)
            + ".");
  }

  /** Timers ran when the work ended. */
  public static Reply notCalled(List<String> names) {
    return stillRun(names).and(Reply.of("I will not call the end any more."));
  }

  private static String ago(long seconds) {
    return Words.time(seconds / MINUTE * MINUTE) + " ago";
  }

  /** How long a step took so far, pauses apart. */
  public static Reply step(int number, long working, long held) {
    return Reply.of("Step " + Words.count(number) + ": " + spent(working, held));
  }

  /** How long the work took so far, pauses apart. */
  public static Reply work(long working, long held) {
    return Reply.of(Words.sentence(spent(working, held)));
  }

  private static String spent(long working, long held) {
    String pauses = held == 0 ? "" : ", and " + Words.time(held) + " on hold";
    return (working == 0 ? "just started" : Words.time(working) + " at work") + pauses + ".";
  }

  /** Nothing was heard for long. */
  public static Reply stillHere(int number, WaitedFor waitedFor) {
    return Reply.of(
        "I am still here.", "Step " + Words.count(number) + ", " + waitedFor.words + ".");
  }

  /** The wall clock was set forward, or back if negative. */
  public static Reply clockSet(long seconds, boolean timersRun) {
    String way = seconds < 0 ? "back" : "forward";
    String set = "The clock was set " + way + " by " + Words.time(Math.abs(seconds)) + ".";
    return timersRun ? Reply.of(set, "Timers keep their time.") : Reply.of(set);
  }

  /** All that is left are steps put off. */
  public static Reply leftOver(List<Walk.Place> steps) {
    return steps.size() == 1
        ? Reply.of("One step was put aside.")
        : Reply.of(
            Words.sentence(Words.count(steps.size()))
                + " steps were put aside: "
                + list(steps)
                + ".");
  }

  /** Steps put off for a load condition that is confirmed now. */
  public static Reply possibleNow(List<Walk.Place> steps) {
    return Reply.of("Possible now: " + list(steps) + ".");
  }

  private static String list(List<Walk.Place> steps) {
    String names =
        steps.stream()
            .limit(LISTED)
            .map(p -> Words.step(p.ref(), p.step().head().title()))
            .collect(Collectors.joining("; "));
    int more = steps.size() - LISTED;
    return more > 0 ? names + "; and " + Words.count(more) + " more" : names;
  }
}
