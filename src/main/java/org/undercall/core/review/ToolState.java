package org.undercall.core.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.undercall.core.event.Recorded;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;

/**
 * A torque wrench of the procedure as it stood at the end of a session.
 *
 * @param tool the wrench
 * @param calibration whether its calibration held; empty if no day of it is stated
 * @param uses torques closed while it was named, once for each fastener of a set
 * @param possible torques that nobody named a wrench for and that it could have served; they are
 *     not known to be its own
 */
public record ToolState(Tool tool, Optional<Held> calibration, int uses, int possible) {

  /**
   * Whether a calibration held on the day of the last entry.
   *
   * @param due the day from which on a new one is due (12 months, ISO 6789-1:2017)
   */
  public record Held(Calibration.State state, LocalDate due) {}

  /** The wrenches of a procedure in its order, with their uses in one log. */
  static List<ToolState> of(Walk walk, List<Recorded> log) {
    List<Tool> tools = walk.procedure().tools();
    ToolUse use = new ToolUse(tools);
    use.add(walk, log);
    Map<String, Integer> uses = use.uses();
    Map<String, Integer> named = use.named();
    LocalDate day = log.get(log.size() - 1).at().wall().toLocalDate();
    return tools.stream()
        .map(
            t -> {
              int own = named.getOrDefault(t.id(), 0);
              return of(t, day, own, uses.getOrDefault(t.id(), 0) - own);
            })
        .toList();
  }

  private static ToolState of(Tool tool, LocalDate day, int uses, int possible) {
    Calibration.Interval interval = Calibration.Interval.ISO_6789;
    return new ToolState(
        tool,
        tool.calibrated()
            .map(date -> new Calibration(date, OptionalInt.empty()))
            .map(c -> new Held(c.on(day, interval), c.dueOn(interval))),
        uses,
        possible);
  }
}
