package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Finding;
import org.undercall.core.term.Job;
import org.undercall.core.term.StepRef;

/**
 * A session looked at afterwards: what was done, when, how long it took and what is still open.
 * Everything is worked out from the recorded events, nothing is taken from a state kept elsewhere.
 *
 * @param head what was worked on, and when
 * @param steps every step of the walk, in its order
 * @param remarks what else was recorded
 * @param totals the times of the whole session
 * @param ending how it ended
 * @param origin what it was begun for, and how its answers came
 */
public record Review(
    Head head,
    List<StepReview> steps,
    Remarks remarks,
    Totals totals,
    Ending ending,
    Origin origin) {

  /**
   * What was worked on, and with what.
   *
   * @param about the procedure
   * @param version the version of the program the session began with; empty if not recorded
   * @param started time of the first decision
   * @param last time of the last decision
   * @param tools the torque wrenches of the procedure
   * @param visit the session that this one goes on from, if it does
   */
  public record Head(
      Procedure.About about,
      String version,
      OffsetDateTime started,
      OffsetDateTime last,
      Job job,
      List<ToolState> tools,
      Optional<SessionEvent.VisitBegun> visit) {
    public Head {
      tools = List.copyOf(tools);
    }
  }

  /**
   * What else was recorded.
   *
   * @param refusals everything the program refused
   * @param notes spoken notes, unchecked
   * @param loads load conditions confirmed and cancelled, ride heights noted
   * @param handOvers items handed over, still to be done
   * @param timers timers started, ended and cancelled, and a clock that was set
   * @param troubles what went wrong, and how it was settled
   * @param changes what was undone, taken back, broken off and done out of order
   * @param haste what was answered sooner than it can be done
   */
  public record Remarks(
      List<Refusal> refusals,
      List<Timed<SessionEvent.NoteKept>> notes,
      List<Timed<SessionEvent>> loads,
      List<Timed<SessionEvent.HandedOver>> handOvers,
      List<Timed<SessionEvent>> timers,
      List<Timed<SessionEvent>> troubles,
      List<Timed<SessionEvent>> changes,
      List<Haste> haste) {
    public Remarks {
      haste = List.copyOf(haste);
      troubles = List.copyOf(troubles);
      changes = List.copyOf(changes);
      timers = List.copyOf(timers);
      refusals = List.copyOf(refusals);
      notes = List.copyOf(notes);
      loads = List.copyOf(loads);
      handOvers = List.copyOf(handOvers);
    }

    /** What went wrong and was not settled, in the order in which it was said. */
    public List<Timed<SessionEvent.TroubleNoted>> unsettled() {
      Map<StepRef, Timed<SessionEvent.TroubleNoted>> open = new LinkedHashMap<>();
      for (Timed<SessionEvent> timed : troubles) {
        if (timed.event() instanceof SessionEvent.TroubleNoted e) {
          open.put(e.step(), new Timed<>(timed.at(), e, timed.clip()));
        } else if (timed.event() instanceof SessionEvent.TroubleSettled e) {
          open.remove(e.step());
        } else if (timed.event() instanceof SessionEvent.SayingTakenBack e) {
          open.remove(e.step());
        }
      }
      return List.copyOf(open.values());
    }
  }

  /** The notes that report this, or with nothing the plain ones, in order. */
  public List<Timed<SessionEvent.NoteKept>> notes(Optional<Finding> about) {
    return remarks.notes().stream().filter(note -> note.event().about().equals(about)).toList();
  }

  /** What went wrong and was not settled, in the order in which it was said. */
  public List<Timed<SessionEvent.TroubleNoted>> unsettled() {
    return remarks.unsettled();
  }

  /**
   * Something the program refused.
   *
   * @param at when
   * @param step the step it is about, else the step at hand
   * @param event why
   * @param heard the words; empty if none were heard
   * @param clip the file with their sound, as the log names it; empty if there is none
   */
  public record Refusal(
      OffsetDateTime at,
      Optional<StepRef> step,
      SessionEvent event,
      Optional<String> heard,
      Optional<String> clip) {}

  /**
   * An event and when it was recorded.
   *
   * @param clip the file with the sound of what it says, as the log names it; empty if there is
   *     none
   */
  public record Timed<E extends SessionEvent>(OffsetDateTime at, E event, Optional<String> clip) {
    /** Without sound. */
    public Timed(OffsetDateTime at, E event) {
      this(at, event, Optional.empty());
    }
  }

  /**
   * The times of the whole session. They add up with the time between steps.
   *
   * @param elapsed from the first decision to the last
   * @param working on a step at hand
   * @param held while the work was held
   * @param away while the program did not run
   * @param notUnderstood how often something heard was no phrase
   */
  public record Totals(
      Span elapsed, Duration working, Duration held, Duration away, int notUnderstood) {}

  /**
   * How the session ended.
   *
   * @param ended whether it was ended and not taken up again
   * @param saidComplete whether the program then said that it was complete
   * @param unknownSteps steps that the log names and the procedure does not have
   * @param losses when the log was found not to be whole; what it lost is not known
   */
  public record Ending(
      boolean ended,
      boolean saidComplete,
      List<StepRef> unknownSteps,
      List<Timed<SessionEvent.LogDoubted>> losses) {
    public Ending {
      unknownSteps = List.copyOf(unknownSteps);
      losses = List.copyOf(losses);
    }
  }

  public Review {
    steps = List.copyOf(steps);
  }

  /**
   * Reviews a session.
   *
   * @param walk the procedure it was done with
   * @param log every decision, at least one
   */
  public static Review of(Walk walk, List<Recorded> log) {
    ReviewReader reader = new ReviewReader(walk, log.get(0));
    log.forEach(reader::read);
    return reader.review(ToolState.of(walk, log), Origin.of(log));
  }

  /** The steps that are not closed, in the order of the walk. */
  public List<StepReview> open() {
    return steps.stream().filter(step -> step.state() != StepReview.State.CLOSED).toList();
  }

  /** The steps that the log closes without something they need. */
  public List<StepReview> doubtful() {
    return steps.stream().filter(step -> !step.doubts().isEmpty()).toList();
  }

  /**
   * Whether all work is done: ended as complete, every step closed, each with all it needs, and
   * nothing of the log lost.
   */
  public boolean complete() {
    return ending.ended()
        && ending.saidComplete()
        && ending.unknownSteps().isEmpty()
        && ending.losses().isEmpty()
        && open().isEmpty()
        && doubtful().isEmpty();
  }

  /** What was handed over and is still to be done, what is due first in front. */
  public List<Due> due() {
    return remarks.handOvers().stream()
        .map(h -> Due.of(h.event().step(), h.at(), h.event().due()))
        .sorted(Comparator.comparing(due -> due.time().when()))
        .toList();
  }

  /** What may be said of the work as a whole. */
  public Verdict verdict() {
    return complete() ? Verdict.ofClosed(due()) : Verdict.NOT_COMPLETE;
  }

  /** Whether the values of the procedure are said to be invented or for demonstration. */
  public boolean invented() {
    String values = head.about().values().toLowerCase(Locale.ROOT);
    return values.contains("invent") || values.contains("demo");
  }

  /** The steps in groups that follow each other on the same side and in the same phase. */
  public List<List<StepReview>> bySideAndPhase() {
    List<List<StepReview>> groups = new ArrayList<>();
    for (StepReview step : steps) {
      List<StepReview> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      if (last.isEmpty() || !last.get(0).sameGroup(step)) {
        last = new ArrayList<>();
        groups.add(last);
      }
      last.add(step);
    }
    return groups;
  }
}
