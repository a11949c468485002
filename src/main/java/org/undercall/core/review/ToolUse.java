package org.undercall.core.review;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.StepRef;

/**
 * How often the torque wrenches were used since their calibration, as far as the logs tell.
 *
 * <p>A closed torque stage counts for the wrench that was named, once for each fastener of a set.
 * Where none was named it counts for every listed one that could have served, since a calibration
 * that runs out too early does no harm.
 */
public final class ToolUse {
  private final List<Tool> tools;
  private final Map<String, Integer> uses = new HashMap<>();
  private final Map<String, Integer> named = new HashMap<>();

  /** Counts for these tools, each from the day of its calibration. */
  public ToolUse(List<Tool> tools) {
    this.tools = List.copyOf(tools);
  }

  /** The uses counted so far, by the tool's id; a tool that was not used is absent. */
  public Map<String, Integer> uses() {
    return Map.copyOf(uses);
  }

  /** Those of them that were closed while the wrench was named. */
  Map<String, Integer> named() {
    return Map.copyOf(named);
  }

  /** Adds what one session recorded. */
  public void add(Walk walk, List<Recorded> decisions) {
    Map<StepRef, HeadMarking> markings = new HashMap<>();
    WrenchTrace wrench = new WrenchTrace(walk.procedure().wrenches());
    for (Recorded decision : decisions) {
      LocalDate day = decision.at().wall().toLocalDate();
      for (SessionEvent event : decision.events()) {
        wrench.read(event);
        if (event instanceof SessionEvent.MarkingNoted noted) {
          markings.put(noted.step(), noted.marking());
        } else if (event instanceof SessionEvent.StageClosed closed) {
          add(walk, closed, Optional.ofNullable(markings.get(closed.step())), day, wrench);
        }
      }
    }
  }

  private void add(
      Walk walk,
      SessionEvent.StageClosed closed,
      Optional<HeadMarking> marking,
      LocalDate day,
      WrenchTrace wrench) {
    int index = walk.indexOf(closed.step());
    if (index < 0 || !(walk.places().get(index).step() instanceof Step.Fasten step)) {
      return;
    }
    Optional<Stage> stage =
        step.fastener()
            .stagesFor(marking)
            .filter(stages -> closed.stage() >= 1 && closed.stage() <= stages.size())
            .map(stages -> stages.get(closed.stage() - 1));
    if (stage.isPresent() && stage.get() instanceof Stage.TorqueStage torque) {
      Optional<Tool> told = wrench.at(torque);
      int count = step.fastener().set().count();
      told.map(Tool::id)
          .filter(id -> isCounted(id, day))
          .ifPresent(id -> named.merge(id, count, Integer::sum));
      List<Tool> counted =
          told.map(List::of).orElseGet(() -> walk.procedure().wrenches().serving(torque.setting()));
      counted.stream()
          .map(Tool::id)
          .filter(id -> isCounted(id, day))
          .forEach(id -> uses.merge(id, count, Integer::sum));
    }
  }

  private boolean isCounted(String id, LocalDate day) {
    return tools.stream()
        .filter(tool -> tool.id().equals(id))
        .anyMatch(tool -> tool.calibrated().filter(day::isBefore).isEmpty());
  }
}
