package org.undercall.adapter.report;

import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Tool;
import org.undercall.core.review.StepReview;
import org.undercall.core.review.ToolState;

/** The words of the written review for torque wrenches. */
final class ToolWords {
  /** Said of every list of wrenches. */
  static final String NOT_NAMED =
      "A wrench is written as used only where it was named. A torque for which none was is not"
          + " known to be with any of those that could have served.";

  private ToolWords() {}

  static String of(ToolState state) {
    return state.tool().id()
        + ": "
        + state.tool().least()
        + " to "
        + state.tool().most()
        + (state.tool().kind() == Tool.Kind.INDICATING ? ", indicating" : "")
        + state.tool().calibrated().map(day -> ", calibrated " + day).orElse("")
        + ", "
        + state(state)
        + ", torques closed while it was named: "
        + state.uses()
        + (state.possible() == 0 ? "" : ", not known to be with it: " + state.possible());
  }

  /** Whether the calibration held. */
  static String state(ToolState state) {
    return state
        .calibration()
        .map(
            held ->
                switch (held.state()) {
                  case VALID -> "calibration holds until " + held.due();
                  case DUE_BY_DATE -> "CALIBRATION OVER since " + held.due();
                  case DUE_BY_USES -> "CALIBRATION OVER by uses";
                  case DATE_NOT_YET -> "CALIBRATION DATE not yet reached";
                })
        .orElse("calibration not stated");
  }

  /** The wrench that was named for a stage, if just one was. */
  static Optional<ToolState> named(List<ToolState> tools, StepReview.StageReview stage) {
    return tools.stream()
        .filter(state -> stage.wrenches().equals(List.of(state.tool().id())))
        .findFirst();
  }
}
