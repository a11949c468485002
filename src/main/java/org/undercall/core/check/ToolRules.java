package org.undercall.core.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.fastening.ToolRange;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.term.Torque;

/** Rules about the torque wrenches at hand. */
final class ToolRules {
  private ToolRules() {}

  static List<Finding> calibrations(List<Tool> tools, LocalDate on, Map<String, Integer> uses) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < tools.size(); i++) {
      Tool tool = tools.get(i);
      if (tool.calibrated().isEmpty()) {
        continue;
      }
      LocalDate calibrated = tool.calibrated().get();
      Calibration calibration = new Calibration(calibrated, counted(uses, tool));
      Calibration.State state = calibration.on(on, Calibration.Interval.ISO_6789);
      if (state == Calibration.State.DUE_BY_USES) {
        String found = tool.id() + " used " + uses.get(tool.id()) + " times since its calibration";
        String expected = "less than " + Calibration.Interval.ISO_6789.uses() + " uses";
        findings.add(
            new Finding(
                CheckRule.CALIBRATION_OVER, "/tools/" + i + "/calibrated", found, expected));
      } else if (state != Calibration.State.VALID) {
        String found = tool.id() + " calibrated on " + calibrated;
        String expected = "a day up to 12 months before " + on;
        String pointer = "/tools/" + i + "/calibrated";
        findings.add(new Finding(CheckRule.CALIBRATION_OVER, pointer, found, expected));
      }
    }
    return findings;
  }

  private static OptionalInt counted(Map<String, Integer> uses, Tool tool) {
    Integer count = uses.get(tool.id());
    return count == null ? OptionalInt.empty() : OptionalInt.of(count);
  }

  static List<Finding> ranges(Spot spot, List<Tool> tools) {
    List<Finding> findings = new ArrayList<>();
    for (Staged<TorqueStage> stage : Staged.torques(spot)) {
      Torque torque = stage.stage().setting();
      if (tools.stream().noneMatch(tool -> wellCovered(tool, torque))) {
        String ranges =
            tools.stream()
                .map(t -> ToolRange.upTo(t.most()))
                .map(r -> r.least() + " to " + r.most())
                .collect(Collectors.joining(", "));
        String expected = "a torque from 20 % to 100 % of a wrench: " + ranges;
        findings.add(
            spot.at(stage.field("torque"), CheckRule.TOOL_AT_ITS_END, torque + "", expected));
      }
    }
    return findings;
  }

  private static boolean wellCovered(Tool tool, Torque torque) {
    return tool.covers(torque)
        && ToolRange.upTo(tool.most()).place(torque) == ToolRange.Place.WITHIN;
  }
}
