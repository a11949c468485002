package org.undercall.adapter.report;

import org.undercall.core.procedure.Stage;

/** What a stage is and what it asks for, in words. */
final class StageWords {
  private StageWords() {}

  /** "torque", "torque range", "check pass", "angle" or "back-off". */
  static String kind(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      return switch (torque.form()) {
        case NOMINAL -> "torque";
        case RANGE -> "torque range";
        case CHECK_PASS -> "check pass";
      };
    }
    return ((Stage.AngleStage) stage).backOff() ? "back-off" : "angle";
  }

  /** The target alone. */
  static String target(Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? torque.target().toString()
        : ((Stage.AngleStage) stage).target().toString();
  }

  /** The target with its tolerance: "110 N·m ±5 N·m", "100 N·m to 120 N·m", "90° ±5°". */
  static String specified(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      return torque.form() == Stage.TorqueStage.Form.RANGE
          ? torque.least() + " to " + torque.most()
          : target(stage)
              + " ±"
              + torque.plusMinus().toPlainString()
              + " "
              + torque.target().unit().symbol();
    }
    Stage.AngleStage angle = (Stage.AngleStage) stage;
    return target(stage) + " ±" + angle.plusMinus().toPlainString() + "°";
  }
}
