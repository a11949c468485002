package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.ShiftTalk;
import org.undercall.core.term.PutOffReason;

/**
 * How the work stands, for the one who goes on with it.
 *
 * @param session the session
 */
public record Standing(Session session) {

  static Standing of(Session session) {
    return new Standing(session);
  }

  /**
   * In at most twenty seconds.
   *
   * @param next whether the next step is named too
   */
  Reply spoken(boolean next) {
    return ShiftTalk.spoken(matters(), session.found().notes().size(), next ? nextStep() : "");
  }

  /** The whole of it, to be read; one line each. */
  public List<String> written() {
    List<String> lines = new ArrayList<>();
    Map<String, Integer> closed = new LinkedHashMap<>();
    for (Walk.Place place : places(StepState::closed)) {
      closed.merge(session.account().closers().getOrDefault(place.ref(), ""), 1, Integer::sum);
    }
    closed.forEach((who, steps) -> lines.add(ShiftTalk.closedBy(who, steps)));
    for (ShiftTalk.Matter matter : matters()) {
      matter.steps().forEach(step -> lines.add(matter.what() + ": " + step));
    }
    if (!session.found().notes().isEmpty()) {
      lines.add("notes and findings: " + session.found().notes().size());
    }
    lines.add(nextStep().isEmpty() ? "every step is closed" : "next: " + nextStep());
    return lines;
  }

  private List<ShiftTalk.Matter> matters() {
    return List.of(
        new ShiftTalk.Matter("hand tight", named(state -> state.status() == StepState.Status.SNUG)),
        new ShiftTalk.Matter("part tightened", begun()),
        new ShiftTalk.Matter("witness missing", named(state -> state.watch().waits())),
        new ShiftTalk.Matter("put off", putOff()),
        new ShiftTalk.Matter("not in order", wrong()),
        new ShiftTalk.Matter("timer runs", TimerRules.runningNames(session)));
  }

  private List<String> begun() {
    return places(s -> !s.closed() && !s.watch().waits() && s.tightening().begun()).stream()
        .map(place -> ShiftTalk.begun(place, state(place).tightening().stagesClosed()))
        .toList();
  }

  private List<String> putOff() {
    return places(state -> state.status() == StepState.Status.PUT_OFF).stream()
        .map(place -> ShiftTalk.putOff(place, state(place).reason().orElse(PutOffReason.LATER)))
        .toList();
  }

  private List<String> wrong() {
    return session.walk().places().stream()
        .filter(place -> !state(place).closed())
        .filter(
            place ->
                state(place).wrong().isPresent()
                    || session.account().failed().contains(place.ref()))
        .map(ShiftTalk::step)
        .toList();
  }

  private String nextStep() {
    if (session.progress().allClosed()) {
      return "";
    }
    int at = session.progress().at();
    int index = session.state().closed() ? session.next().orElse(at) : at;
    return ShiftTalk.step(index + 1, session.walk().places().get(index));
  }

  private List<String> named(Predicate<StepState> wanted) {
    return places(wanted).stream().map(ShiftTalk::step).toList();
  }

  private List<Walk.Place> places(Predicate<StepState> wanted) {
    return IntStream.range(0, session.walk().places().size())
        .filter(i -> wanted.test(session.progress().states().get(i)))
        .<Walk.Place>mapToObj(session.walk().places()::get)
        .toList();
  }

  private StepState state(Walk.Place place) {
    return session.progress().states().get(session.walk().indexOf(place.ref()));
  }
}
