package org.undercall.core.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Elapsed;
import org.undercall.core.decision.Session;
import org.undercall.core.decision.StepState;
import org.undercall.core.decision.TimerKey;
import org.undercall.core.decision.Timers;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;

/**
 * Everything that the board shows at one moment. It never changes.
 *
 * @param times the number and the times of the state shown
 * @param place the step at hand
 * @param task what is to be done now
 * @param talk what was heard and said last
 * @param walk all steps, and what runs
 * @param frame what stands there at every moment
 */
public record Board(Times times, Place place, Task task, Talk talk, Overview walk, Frame frame) {

  /**
   * The number and the times of the state shown.
   *
   * @param state number of the state, for presses
   * @param now when it was made, by the clock of the session
   * @param elapsed how long the work and the step at hand took until then
   */
  public record Times(long state, Instant now, Elapsed elapsed) {}

  /**
   * The step at hand.
   *
   * @param number from 1
   * @param side where it is done
   * @param title as in the procedure
   * @param load the load condition it needs
   * @param holds whether that condition is confirmed for the side, or none is needed
   */
  public record Place(int number, Side side, String title, LoadCondition load, boolean holds) {}

  /**
   * What was heard and said last.
   *
   * @param heard empty before the first phrase
   * @param said the last reply, as spoken
   * @param prompt what the session waits for, in the words it is asked with
   * @param devices what became of the microphone and the loudspeaker
   */
  public record Talk(Optional<Heard> heard, String said, String prompt, Devices devices) {}

  /**
   * What was heard last.
   *
   * @param text the words
   * @param how spoken, typed or pressed
   * @param verdict what became of it
   */
  public record Heard(String text, String how, Verdict verdict) {}

  /**
   * All steps, and what runs.
   *
   * @param steps in the order of the walk
   * @param next the number of the step that follows once the one at hand is closed; 0 if none does
   * @param timers that run, the next to end first
   * @param choices what can be pressed
   */
  public record Overview(List<Item> steps, int next, List<Timer> timers, List<Choice> choices) {
    public Overview {
      steps = List.copyOf(steps);
      timers = List.copyOf(timers);
      choices = List.copyOf(choices);
    }
  }

  /**
   * A step of the walk.
   *
   * @param side where it is done
   * @param title as in the procedure
   * @param status whether it is open, and how
   * @param why why it was put off; empty if it was not
   */
  public record Item(Side side, String title, StepState.Status status, String why) {}

  /**
   * A timer that runs.
   *
   * @param what its name, or the step it belongs to
   * @param step the number of its step, from 1; 0 for one with a name
   * @param due when it runs out, by the clock of the session
   */
  public record Timer(String what, int step, Instant due) {}

  /**
   * What the board shows of a session.
   *
   * @param happened what came before
   * @param devices what became of the devices
   * @param said the last reply
   * @param now by the clocks of the session
   */
  public static Board of(
      Session session, Happened happened, Devices devices, String said, Moment now) {
    return new Board(
        new Times(happened.state(), now.wall().toInstant(), session.elapsed(now)),
        place(session),
        Task.of(session),
        new Talk(
            happened.heard().flatMap(Board::heard), said, Decider.prompt(session).text(), devices),
        overview(session),
        Frame.of(session, happened.occasion()));
  }

  private static Place place(Session session) {
    Walk.Place place = session.place();
    LoadCondition needed = needs(place.step());
    Side side = place.ref().side();
    boolean holds = session.loads().holds(side, needed);
    return new Place(session.progress().at() + 1, side, place.step().head().title(), needed, holds);
  }

  private static LoadCondition needs(Step step) {
    if (step instanceof Step.Fasten fasten) {
      return fasten.fastener().needs();
    }
    return step instanceof Step.Load load ? load.condition() : LoadCondition.ANY;
  }

  private static Optional<Heard> heard(Recorded decision) {
    Verdict verdict = Verdict.of(decision.events());
    return decision.heard().map(heard -> new Heard(heard.text(), heard.how(), verdict));
  }

  private static Overview overview(Session session) {
    List<Item> items = new ArrayList<>();
    for (Walk.Place place : session.walk().places()) {
      StepState state = session.progress().states().get(items.size());
      items.add(
          new Item(place.ref().side(), place.step().head().title(), state.status(), why(state)));
    }
    return new Overview(
        items,
        next(session),
        session.timers().running().entrySet().stream()
            .map(running -> timer(session, running))
            .sorted(Comparator.comparing(Timer::due))
            .toList(),
        Choice.in(session));
  }

  /** Where the walk goes on, were the step at hand closed. */
  private static int next(Session session) {
    Session closed = session.after(new SessionEvent.StepClosed(session.place().ref()));
    return closed.next().map(index -> index + 1).orElse(0);
  }

  private static String why(StepState state) {
    return state.reason().filter(reason -> !state.closed()).map(Board::words).orElse("");
  }

  private static Timer timer(Session session, Map.Entry<TimerKey, Timers.Running> running) {
    Instant due = running.getValue().due();
    if (running.getKey() instanceof TimerKey.Named named) {
      return new Timer(words(named.name()), 0, due);
    }
    int step = session.walk().indexOf(((TimerKey.OfStep) running.getKey()).step()) + 1;
    return new Timer("step " + step, step, due);
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
