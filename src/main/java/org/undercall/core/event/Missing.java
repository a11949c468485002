package org.undercall.core.event;

/** What was missing when the program refused to close or confirm something. */
public enum Missing {
  CAUTIONS_UNDERSTOOD,
  RIDE_HEIGHT,
  FULL_DROOP,
  NEW_HARDWARE,
  HEAD_MARKING,
  VALUE_CALLED,
  DIGIT_BY_DIGIT,
  TORQUE_STAGE,
  ANGLE_STAGE,
  CHECK_ANSWER,
  MEASURED_VALUE,
  READ_BACK,
  LOAD_READ_BACK,
  TIME,
  HEIGHT_NOTED_BEFORE,
  HEIGHT_WITHIN_TOLERANCE,
  /** The height at the arch, measured, where one was noted before. */
  HEIGHT_MEASURED,
  /** The wheel on the hub. */
  WHEEL_ON,
  /** The car on its wheels. */
  CAR_ON_WHEELS,
  /** Steps that come before. */
  STEPS_BEFORE,
  /** How far an angle was turned, or a fastener loosened. */
  TURNED_SO_FAR,
  /** A way out of what went wrong. */
  REMEDY,
  ONE_SIDE,
  /** The side at hand, where another one was said. */
  SIDE,
  /** The number of all fasteners of a set. */
  COUNT,
  /** The fasteners of a set one by one. */
  ONE_BY_ONE,
  /** A position of the set that is open. */
  POSITION,
  OTHER_UNIT,
  /** Plus or minus, where a value may be below zero. */
  SIGN,
  /** A value that is not below zero. */
  NOT_BELOW_ZERO,
  /** The unit of a value, where the procedure mixes them. */
  UNIT,
  /** A wrench that is listed and fits the torque. */
  WRENCH,
  /** A calibration that holds. */
  CALIBRATION,
  /** A text about the job that can be one. */
  JOB_TEXT,
  /** The car that was worked on before. */
  SAME_CAR,
  /** A fastener that was closed last with an angle. */
  CLOSED_ANGLE,
  /** The torque that a nut needs to run down. */
  RUN_IN_BY_HAND,
  RUN_DOWN,
  /** The name of the technician who takes the work over. */
  TECHNICIAN,
  /** A second person who saw it. */
  WITNESS,
  /** A witness who did not work on it. */
  OTHER_PERSON,
  /** A name that is on the list of witnesses, of one person only. */
  KNOWN_NAME,
  /** It was said not to be so, or not surely. */
  AFFIRMATION
}
