package org.undercall.adapter.report;

import org.undercall.core.review.ToolState;

/** The words of the written review for torque wrenches. */
final class ToolWords {
  /** Said of every list of wrenches. */
  static final String NOT_NAMED =
      "The log does not name the wrench: a torque counts for the first one whose range holds it.";

  private ToolWords() {}

  static String of(ToolState state) {
    return state.tool().id()
        + ": "
        + state.tool().least()
        + " to "
        + state.tool().most()
        + ", calibrated "
        + state.tool().calibrated()
        + ", "
        + state(state)
        + ", torques closed: "
        + state.uses();
  }

  /** Whether the calibration held. */
  static String state(ToolState state) {
    return switch (state.state()) {
      case VALID -> "calibration holds until " + state.due();
      case DUE_BY_DATE -> "CALIBRATION OVER since " + state.due();
      case DUE_BY_USES -> "CALIBRATION OVER by uses";
      case DATE_NOT_YET -> "CALIBRATION DATE not yet reached";
    };
  }
}
