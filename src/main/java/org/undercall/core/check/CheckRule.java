package org.undercall.core.check;

import java.util.Locale;

/** What is looked for in a procedure. Numbers are permanent and never given out again. */
public enum CheckRule {
  TORQUE_TOO_HIGH(
      1,
      Severity.ERROR,
      "A torque reaches the yield of thread and class at the low friction of its stated state.",
      Source.VDI),
  TORQUE_MAY_BE_TOO_HIGH(
      2,
      Severity.WARNING,
      "A torque may reach yield, and the state of thread and seat is not told closely enough.",
      Source.VDI),
  TORQUE_TOO_LOW(
      3,
      Severity.WARNING,
      "A final torque makes less than a tenth of the yield preload, whatever the friction.",
      "VDI 2230 Part 1 for the preload; the tenth is a choice of this program"),
  ANGLE_REUSED(
      4,
      Severity.WARNING,
      "An angle stage tightens a fastener that is not marked for one use.",
      "published repair manuals: bolts tightened by torque and angle are always replaced"),
  BUSH_WITHOUT_LOAD(
      5, Severity.ERROR, "A bonded bush is tightened at any load condition.", Source.BUSH),
  JOINT_WITH_LOAD(6, Severity.REMARK, "A spherical joint waits for ride height.", Source.PRACTICE),
  MIXED_LOADS(
      7,
      Severity.WARNING,
      "Bonded bushes of one arm are tightened at different load conditions without a reason.",
      Source.BUSH),
  BUSH_NOT_STATED(
      8,
      Severity.WARNING,
      "A fastener with \"bush\" in its name needs no load condition, and its joint is not stated.",
      Source.BUSH),
  ONE_SIDE_ONLY(
      9,
      Severity.WARNING,
      "A step done once for the car names one side, and the other side has none like it.",
      Source.PRACTICE),
  SIDE_IN_BOTH(
      10, Severity.WARNING, "A step that is walked for both sides names one of them.", Source.FORM),
  NO_MARKINGS(
      11,
      Severity.WARNING,
      "A one-time-use bolt has one specification for every head marking, though a new bolt may be"
          + " of another class.",
      "ISO 898-1 for the strengths; common practice, no source"),
  WHEEL_WITHOUT_ORDER(
      12, Severity.WARNING, "Wheel fasteners have no order of tightening.", Source.WHEEL_MANUALS),
  NO_RETORQUE(
      13,
      Severity.WARNING,
      "Wheel fasteners are tightened, and no hand-over asks to check them again.",
      "published tyre maker's advice: check again after 50 km"),
  ORDER_NOT_DIAGONAL(
      14,
      Severity.WARNING,
      "Wheel fasteners are not tightened across the wheel.",
      Source.WHEEL_MANUALS),
  TOOL_AT_ITS_END(
      15,
      Severity.WARNING,
      "A torque lies below a fifth of the largest torque of every wrench that covers it.",
      "ISO 6789:2003: calibrated from 20 % to 100 %"),
  CALIBRATION_OVER(
      16,
      Severity.WARNING,
      "A torque wrench is out of calibration on the day of the check.",
      "ISO 6789-1:2017: 12 months, if nothing else is laid down"),
  LUBRICATION_UNSTATED(
      17,
      Severity.WARNING,
      "The state of thread and seat is not stated.",
      "VDI 2230 Part 1, table A5: preload depends on it"),
  WHEELS_OFF(
      18, Severity.ERROR, "A step needs the wheels on, and they are still off.", Source.FORM),
  NO_STANDS(
      19,
      Severity.WARNING,
      "No caution at the start speaks of stands.",
      "published repair manuals: never rely on a jack alone"),
  UNLIKE_ITS_LIKE(
      20,
      Severity.WARNING,
      "A torque differs by more than 1.5 from that of the same fastener elsewhere.",
      "choice of this program"),
  UNUSUAL_DRIVE(
      21,
      Severity.REMARK,
      "The size of the socket or key is unusual for the thread.",
      "ISO 272 and common practice, from memory"),
  NEAR_YIELD(
      22,
      Severity.REMARK,
      "A bolt up to class 8.8 may reach yield in its angle stage even in a long joint.",
      "VDI 2230 Part 1; clamped length of 6 diameters assumed"),
  NUT_TOO_WEAK(
      23, Severity.ERROR, "The nut does not carry the class of the bolt.", "ISO 898-2:2012"),
  THREAD_NOT_KNOWN(
      24,
      Severity.REMARK,
      "The thread is not in the table, so its torque cannot be judged.",
      "ISO 261, M4 to M24"),
  WHEEL_STAYS_OFF(
      26, Severity.ERROR, "A wheel is taken off, and no later step puts it on again.", Source.FORM),
  UNDONE_NOT_TIGHTENED(
      27,
      Severity.WARNING,
      "A fastener is undone, and no later step tightens one of its kind.",
      Source.FORM),
  LOAD_CANNOT_HOLD(
      28,
      Severity.ERROR,
      "A load condition is needed where the car or its wheels cannot bring it about.",
      Source.FORM),
  ENDS_BACKED_OFF(
      29, Severity.ERROR, "A fastener is backed off and not tightened again.", Source.FORM),
  TAPPED_SHORT(
      30,
      Severity.WARNING,
      "A tapped hole engages less thread than is usual for its material, or it is not stated how"
          + " much.",
      "rule of thumb: 1 diameter in steel, 1.5 in cast iron, 2 in aluminium; common practice, no"
          + " source"),
  CLASS_NOT_MADE(
      25,
      Severity.ERROR,
      "The property class does not exist for the diameter.",
      "ISO 898-1:2013: class 9.8 up to 16 mm");

  /** Sources that several rules share. */
  private static final class Source {
    static final String VDI = "VDI 2230 Part 1; ISO 898-1:2013";
    static final String BUSH =
        "a bonded bush keeps the twist it is tightened with: common practice";
    static final String PRACTICE = "common practice, no source";
    static final String FORM = "follows from the procedure itself";
    static final String WHEEL_MANUALS = "published repair and owner manuals: diagonally";
  }

  private final int number;
  private final Severity severity;
  private final String meaning;
  private final String source;

  CheckRule(int number, Severity severity, String meaning, String source) {
    this.number = number;
    this.severity = severity;
    this.meaning = meaning;
    this.source = source;
  }

  /** The code as printed, for example {@code CHK-005}. */
  public String code() {
    return String.format(Locale.ROOT, "CHK-%03d", number);
  }

  /** How much its findings weigh. */
  public Severity severity() {
    return severity;
  }

  /** What is wrong, in one sentence. */
  public String meaning() {
    return meaning;
  }

  /** Where the rule comes from. */
  public String source() {
    return source;
  }
}
