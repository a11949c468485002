package org.undercall.core.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.undercall.core.event.Recorded;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;

/**
 * A torque wrench of the procedure as it stood at the end of a session.
 *
 * @param tool the wrench
 * @param state whether its calibration held on the day of the last entry
 * @param due the day from which on a new calibration is due (12 months, ISO 6789-1:2017)
 * @param uses closed torque stages that count for it, once for each fastener of a set
 */
public record ToolState(Tool tool, Calibration.State state, LocalDate due, int uses) {

  /** The wrenches of a procedure in its order, with their uses in one log. */
  static List<ToolState> of(Walk walk, List<Recorded> log) {
    List<Tool> tools = walk.procedure().tools();
    ToolUse use = new ToolUse(tools);
    use.add(walk, log);
    Map<String, Integer> uses = use.uses();
    LocalDate day = log.get(log.size() - 1).at().wall().toLocalDate();
    return tools.stream().map(t -> of(t, day, uses.getOrDefault(t.id(), 0))).toList();
  }

  private static ToolState of(Tool tool, LocalDate day, int uses) {
    Calibration calibration = new Calibration(tool.calibrated(), OptionalInt.empty());
    Calibration.Interval interval = Calibration.Interval.ISO_6789;
    return new ToolState(tool, calibration.on(day, interval), calibration.dueOn(interval), uses);
  }

  /** The first listed wrench whose range holds the setting of a stage; an angle needs none. */
  public static Optional<ToolState> first(List<ToolState> tools, Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? tools.stream().filter(t -> t.tool().covers(torque.setting())).findFirst()
        : Optional.empty();
  }
}
