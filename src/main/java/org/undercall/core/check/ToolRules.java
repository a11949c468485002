package org.undercall.core.check;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.WrenchClass;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.term.Torque;

/** Rules about the torque wrenches at hand. */
public final class ToolRules {
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
      if (tools.stream().noneMatch(tool -> tool.covers(torque))) {
        String ranges =
            tools.stream()
                .map(t -> t.least() + " to " + t.most())
                .collect(Collectors.joining(", "));
        String expected = "a setting within a wrench: " + ranges;
        findings.add(
            spot.at(stage.field("torque"), CheckRule.TOOL_AT_ITS_END, torque + "", expected));
      }
    }
    return findings;
  }

  /** How far the best wrench for a torque may deviate, either way in percent; empty if none. */
  public static Optional<BigDecimal> deviation(List<Tool> tools, Torque torque) {
    return tools.stream()
        .filter(tool -> tool.covers(torque))
        .map(tool -> tool.uncertainty().orElse(permissible(tool)))
        .min(Comparator.naturalOrder());
  }

  /** The same as a deviation; that of the standard where no wrench covers the torque. */
  static Deviation wrench(List<Tool> tools, Torque torque) {
    return deviation(tools, torque)
        .map(percent -> new Deviation(percent.doubleValue()))
        .orElseGet(() -> WrenchClass.II_A.permissible(torque));
  }

  private static BigDecimal permissible(Tool tool) {
    return BigDecimal.valueOf(WrenchClass.II_A.permissible(tool.most()).percent());
  }

  static List<Finding> uncertainties(List<Tool> tools) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < tools.size(); i++) {
      Tool tool = tools.get(i);
      BigDecimal permissible = permissible(tool);
      if (tool.uncertainty().filter(u -> u.compareTo(permissible) > 0).isPresent()) {
        String found = tool.id() + " with " + tool.uncertainty().get().toPlainString() + " %";
        String expected = "at most " + permissible.stripTrailingZeros().toPlainString() + " %";
        findings.add(
            new Finding(CheckRule.TOOL_UNSURE, "/tools/" + i + "/uncertainty", found, expected));
      }
    }
    return findings;
  }
}
