package org.undercall.core.check;

import java.util.Locale;

/** What is looked for in a procedure. Numbers are permanent and never given out again. */
public enum CheckRule {
  TORQUE_TOO_HIGH(
      1,
      Severity.ERROR,
      "A torque reaches the yield of thread and class whatever the friction of its stated state.",
      Basis.TORQUE,
      "Compare the torque, its unit and the class with the repair data; if it is an angle, write"
          + " it as one."),
  TORQUE_MAY_BE_TOO_HIGH(
      2,
      Severity.WARNING,
      "A torque may reach yield at the low friction of its state.",
      Basis.TORQUE,
      "Compare torque and class with the repair data, and state the friction if it is known."),
  TORQUE_TOO_LOW(
      3,
      Severity.WARNING,
      "A final torque makes less than a tenth of the yield preload, whatever the friction.",
      Basis.TORQUE,
      "Look for a lost digit, a wrong unit or a stage that is missing."),
  ANGLE_REUSED(
      4,
      Severity.WARNING,
      "An angle stage tightens a fastener that is not marked for one use.",
      Basis.RENEWED,
      "Mark it for one use, or note where the maker allows to use it again."),
  BUSH_WITHOUT_LOAD(
      5,
      Severity.ERROR,
      "A bonded bush is tightened at any load condition.",
      Basis.BUSH,
      "State the load condition that the maker gives."),
  JOINT_WITH_LOAD(
      6,
      Severity.REMARK,
      "A spherical joint waits for ride height.",
      Basis.PRACTICE,
      "Leave the load condition out if the joint turns freely."),
  MIXED_LOADS(
      7,
      Severity.WARNING,
      "Bonded bushes of one arm are tightened at different load conditions without a reason.",
      Basis.BUSH,
      "State the reason, or the same load condition."),
  BUSH_NOT_STATED(
      8,
      Severity.WARNING,
      "A fastener with \"bush\" in its name needs no load condition, and its joint is not stated.",
      Basis.BUSH,
      "State the joint."),
  ONE_SIDE_ONLY(
      9,
      Severity.WARNING,
      "A step done once for the car names one side, and the other side has none like it.",
      Basis.PRACTICE,
      "Add the step for the other side, or name both."),
  SIDE_IN_BOTH(
      10,
      Severity.WARNING,
      "A step that is walked for both sides names one of them.",
      Basis.FORM,
      "Leave the side out of its words, or walk it once for the car."),
  NO_MARKINGS(
      11,
      Severity.WARNING,
      "A one-time-use bolt has one specification for every head marking, though a new bolt may be"
          + " of another class.",
      Basis.MARKS,
      "Give a variant for each marking that the parts list knows."),
  WHEEL_WITHOUT_ORDER(
      12,
      Severity.WARNING,
      "Wheel fasteners have no order of tightening.",
      Basis.WHEEL,
      "Give an order across the wheel."),
  NO_RETORQUE(
      13,
      Severity.WARNING,
      "Wheel fasteners are tightened, and no hand-over asks to check them again.",
      Basis.WHEEL_AGAIN,
      "Add a hand-over for it, unless the maker says that none is needed."),
  ORDER_NOT_DIAGONAL(
      14,
      Severity.WARNING,
      "Wheel fasteners are not tightened across the wheel.",
      Basis.WHEEL,
      "Give an order across the wheel."),
  TOOL_AT_ITS_END(
      15,
      Severity.WARNING,
      "What is to be set lies outside the marked range of every wrench.",
      Basis.TOOL,
      "List a wrench whose scale holds the setting, or use another adaptor."),
  CALIBRATION_OVER(
      16,
      Severity.WARNING,
      "A torque wrench is out of calibration on the day of the check.",
      Basis.CALIBRATION,
      "Have it calibrated, and write the new day."),
  LUBRICATION_UNSTATED(
      17,
      Severity.WARNING,
      "The state of thread and seat is not stated.",
      Basis.STATE,
      "State it as the repair data have it."),
  WHEELS_OFF(
      18,
      Severity.ERROR,
      "A step needs the wheels on, and they are still off.",
      Basis.FORM,
      "Put the step after the fitting of the wheels."),
  NO_STANDS(
      19,
      Severity.WARNING,
      "No caution at the start tells that stands carry the car.",
      Basis.STANDS,
      "Add such a caution."),
  UNLIKE_ITS_LIKE(
      20,
      Severity.WARNING,
      "A torque differs by more than 1.5 from that of the same fastener elsewhere.",
      Basis.SHARE,
      "Compare both with the repair data."),
  UNUSUAL_DRIVE(
      21,
      Severity.REMARK,
      "The size of the socket or key is unusual for the thread.",
      Basis.DRIVE,
      "Look at the part, then at thread and size."),
  NEAR_YIELD(
      22,
      Severity.REMARK,
      "A bolt up to class 8.8 may reach yield in its angle stage even in a long joint.",
      Basis.ANGLE,
      "State \"beyondYield\" as the repair data mean it."),
  NUT_TOO_WEAK(
      23,
      Severity.ERROR,
      "The nut does not carry the class of the bolt.",
      Basis.NUT,
      "Compare both classes with the parts list."),
  THREAD_NOT_KNOWN(
      24,
      Severity.REMARK,
      "The thread is not in the table, so its torque cannot be judged.",
      Basis.THREADS,
      "Compare the thread with the part."),
  CLASS_NOT_MADE(
      25,
      Severity.ERROR,
      "The property class does not exist for the diameter.",
      Basis.CLASSES,
      "Read the marking of the part again."),
  WHEEL_STAYS_OFF(
      26,
      Severity.ERROR,
      "A wheel is taken off, and no later step puts it on again.",
      Basis.FORM,
      "Add the step that fits it."),
  UNDONE_NOT_TIGHTENED(
      27,
      Severity.WARNING,
      "A fastener is undone, and no later step tightens one of its kind.",
      Basis.WORDS,
      "Add the step that tightens it."),
  LOAD_CANNOT_HOLD(
      28,
      Severity.ERROR,
      "A load condition is needed where the car or its wheels cannot bring it about.",
      Basis.FORM,
      "Change the order of the steps."),
  ENDS_BACKED_OFF(
      29,
      Severity.ERROR,
      "A fastener is backed off and not tightened again.",
      Basis.FORM,
      "Add the stage that tightens it again."),
  TAPPED_SHORT(
      30,
      Severity.WARNING,
      "A tapped hole engages less thread than is usual for its material, or it is not stated how"
          + " much.",
      Basis.THUMB,
      "Measure how much of the thread carries."),
  TURNED_TOO_FAR(
      31,
      Severity.ERROR,
      "An angle stretches the bolt further than its class bears.",
      Basis.ANGLE,
      "Compare the angles and the class with the repair data, and state the clamped length."),
  TOLERANCE_EMPTY(
      32,
      Severity.ERROR,
      "A tolerance is so wide that the stage specifies nothing.",
      Basis.SHARE,
      "Write the tolerance of the repair data."),
  TOLERANCE_WIDE(
      33,
      Severity.WARNING,
      "A tolerance is more than a third of its target.",
      Basis.SHARE,
      "Compare the tolerance with the repair data."),
  TOLERANCE_NARROW(
      34,
      Severity.WARNING,
      "A tolerance is narrower than the wrench can prove.",
      Basis.TOOL_PROOF,
      "Write the tolerance of the repair data, or state the uncertainty of a better wrench."),
  TOP_YIELDS(
      35,
      Severity.WARNING,
      "At the top of tolerance and wrench a torque may reach yield at the low friction of its state.",
      Basis.SPREAD,
      "Narrow the tolerance, or state the friction if it is known."),
  STAGES_FALL(
      36,
      Severity.ERROR,
      "A torque stage is lower than the one before it, and nothing is backed off between.",
      Basis.FORM,
      "Put the stages in their order, or write the back-off."),
  STAGES_OVERLAP(
      37,
      Severity.WARNING,
      "A torque stage adds nothing that the tolerance of the one before it does not cover.",
      Basis.FORM,
      "Compare the stages, or mark the second as a check pass."),
  WEAKER_TIGHTER(
      38,
      Severity.ERROR,
      "The bolt of the weaker class is tightened to more torque than that of the stronger.",
      Basis.FORM,
      "Look whether the values of the classes are exchanged."),
  VARIANTS_UNLIKE(
      39,
      Severity.REMARK,
      "The bolts of two classes clamp the same joint with very different forces.",
      Basis.ANGLE,
      "Compare the stages of both classes with the repair data."),
  GREASED_WHEEL(
      40,
      Severity.WARNING,
      "Wheel fasteners are greased, oiled or have paste on them.",
      Basis.WHEEL_DRY,
      "State them dry, or note where the maker asks for it."),
  LOCK_NUT_REUSED(
      41,
      Severity.WARNING,
      "A self-locking nut is not marked for one use.",
      Basis.RENEWED,
      "Mark it for one use, or note where the maker allows to use it again."),
  LIFT_KEEPS_LOAD(
      42,
      Severity.WARNING,
      "A step raises or lowers the car and does not say that it changes the load.",
      Basis.FORM,
      "Write \"changesLoad\": true."),
  WHEEL_NOT_STATED(
      43,
      Severity.WARNING,
      "Fasteners seem to hold a wheel and do not say so, so a session does not treat them so.",
      Basis.WHEEL,
      "Write \"wheel\": true if they do."),
  WHEEL_IN_THE_AIR(
      44,
      Severity.WARNING,
      "Wheel fasteners get their final torque while the car is raised.",
      Basis.WHEEL,
      "Seat the wheel in the air, lower the car, then tighten to the torque."),
  UNIT_SLIP(
      45,
      Severity.WARNING,
      "A torque differs from that of the same fastener elsewhere by just the factor of two units.",
      Basis.FORM,
      "Look which unit the repair data have."),
  LIKE_WITHOUT_ANGLE(
      46,
      Severity.WARNING,
      "The same fastener has an angle stage elsewhere and none here.",
      Basis.FORM,
      "Look whether the last stage is missing."),
  STAGE_MISSING(
      47,
      Severity.WARNING,
      "A strong one-time-use bolt is tightened by a torque alone that uses little of its strength.",
      Basis.TORQUE,
      "Look whether an angle stage is missing."),
  TORQUE_FAINT(
      48,
      Severity.WARNING,
      "A final torque is less than a tenth of what is usual for a bolt of that thread.",
      Basis.TORQUE,
      "Look for a lost digit or a wrong unit; state the class if it is right."),
  SOCKET_TOO_SMALL(
      49,
      Severity.ERROR,
      "The socket is not larger than the thread of the nut it turns.",
      Basis.DRIVE,
      "Correct the thread or the size of the socket."),
  LEFT_HAND_UNSAID(
      50,
      Severity.WARNING,
      "The words speak of a left-handed thread and the fastener does not say so.",
      Basis.WORDS,
      "Write \"leftHand\": true if it is."),
  NET_LOOSENED(
      51,
      Severity.ERROR,
      "After a back-off the fastener is turned on by no more than it was backed off.",
      Basis.FORM,
      "Put the torque that the repair data have between them."),
  BACK_OFF_WIDE(
      52,
      Severity.WARNING,
      "A back-off is more than a full turn.",
      Basis.SHARE,
      "Compare the angle with the repair data."),
  SNUG_FAINT(
      53,
      Severity.WARNING,
      "The torque before an angle is too small to seat the parts, so the angle begins anywhere.",
      Basis.TORQUE,
      "Look for a lost digit or a wrong unit in the torque."),
  YIELD_NOT_REACHED(
      54,
      Severity.WARNING,
      "An angle is meant to reach yield and does not.",
      Basis.ANGLE,
      "Compare torque, angle and class with the repair data."),
  YIELD_NOT_MEANT(
      55,
      Severity.WARNING,
      "An angle reaches yield where that is not meant.",
      Basis.ANGLE,
      "Compare torque, angle and class with the repair data; state \"beyondYield\" and one use if"
          + " yield is meant."),
  SEAT_CRUSHED(
      56,
      Severity.WARNING,
      "The pressure under head or nut is more than the clamped parts bear.",
      Basis.PRESSURE,
      "Look for a flange or a washer that is not stated."),
  THREAD_STRIPS(
      57,
      Severity.ERROR,
      "The thread strips before the torque is reached.",
      Basis.STRIP,
      "Compare nut, engagement and torque with the repair data."),
  SHORT_CLAMP(
      58,
      Severity.WARNING,
      "So little is clamped that settling takes much of the preload.",
      Basis.EMBED,
      "Compare the clamped length with the part, and have it checked again after use."),
  PREVAILING_EATS(
      59,
      Severity.WARNING,
      "A self-locking nut may use up much of the torque before it clamps.",
      Basis.PREVAILING,
      "Measure the run-down torque, with \"runDown\"."),
  MAY_STAY_LOOSE(
      60,
      Severity.WARNING,
      "At the bottom of tolerance and wrench a torque may leave less than a tenth of the yield"
          + " preload.",
      Basis.SPREAD,
      "Narrow the tolerance, or state the friction if it is known."),
  THIN_NUT(
      61,
      Severity.WARNING,
      "A thin nut may be loaded beyond its proof load.",
      Basis.NUT,
      "Look whether the nut is a lock nut, and whether the torque is for it."),
  LOCKER_WITHOUT_CURE(
      62,
      Severity.REMARK,
      "A thread locker has no time to cure.",
      Basis.PRACTICE,
      "State \"cureMinutes\" as the maker of the product has it."),
  CONE_ODD(
      63,
      Severity.WARNING,
      "The cone of a seat has an unusual angle.",
      Basis.PRACTICE,
      "Give the whole angle of the cone, such as 60."),
  SIDES_UNLIKE(
      64,
      Severity.WARNING,
      "The same fastener has another torque on the left than on the right.",
      Basis.FORM,
      "Compare both with the repair data."),
  BAND_BELOW(
      65,
      Severity.ERROR,
      "The torque after the last angle may lie below the torque before it.",
      Basis.FORM,
      "Compare the band with the repair data."),
  TOOL_UNSURE(
      66,
      Severity.WARNING,
      "The stated uncertainty of a wrench is more than the standard permits it to deviate.",
      Basis.TOOL_PROOF,
      "Compare it with the certificate, or list another wrench."),
  STRETCHED_FAR(
      67,
      Severity.WARNING,
      "An angle may stretch the bolt near to the limit of its class.",
      Basis.ANGLE,
      "Compare the angles and the class with the repair data, and state the friction if it is"
          + " known."),
  BAND_ELSEWHERE(
      68,
      Severity.WARNING,
      "The torque after the last angle is not what the stated joint should show.",
      Basis.ANGLE,
      "Compare the band and the sizes with the repair data."),
  WORDS_AGAINST_LOAD(
      69,
      Severity.WARNING,
      "Title, caution or reason of a step asks for another load condition than its fastener.",
      Basis.LOAD_WORDS,
      "Look up which of both the repair data has, and write it into both."),
  DUE_UNREAD(
      70,
      Severity.REMARK,
      "When a hand-over item is due is told in words that are not read.",
      Basis.WORDS,
      "Say a time, a distance or \"before driving\", if one is meant; else it is asked about before"
          + " the car is driven.");

  private final int number;
  private final Severity severity;
  private final String meaning;
  private final Basis basis;
  private final String todo;

  CheckRule(int number, Severity severity, String meaning, Basis basis, String todo) {
    this.number = number;
    this.severity = severity;
    this.meaning = meaning;
    this.basis = basis;
    this.todo = todo;
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
    return basis.source();
  }

  /** What it takes for granted. */
  public String assumes() {
    return basis.assumes();
  }

  /** What it cannot see, so that it may be wrong. */
  public String unseen() {
    return basis.unseen();
  }

  /** What to do about it, in one sentence. */
  public String todo() {
    return todo;
  }
}
