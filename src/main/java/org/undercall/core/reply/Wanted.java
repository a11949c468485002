package org.undercall.core.reply;

import java.util.List;

/**
 * Everything that is asked of somebody who writes a procedure, with the words of each question.
 *
 * <p>A question that takes one of a few words lists them; every other takes a text or a value.
 */
public enum Wanted {
  TITLE("title", "Title of the procedure", "It is spoken at the start. Such as: rear arm, bushes"),
  VEHICLE("vehicle", "Vehicle", "What it is for. Such as: light van, long wheelbase"),
  AUTHOR("author", "Who writes it", "The name of whoever answers for it"),
  REVISION("revision", "Revision", "Such as: 1, or 2026-03"),
  SOURCE(
      "source",
      "Where the values come from",
      "It is spoken before the work and never filled in. Such as: repair data, March edition"),
  CAUTION("caution", "Caution spoken before the work", "Such as: Never work under a jack alone."),
  MORE_CAUTIONS("caution", "Another caution, - for none", "Each is spoken before the work"),
  TOOL("tool", "Torque wrench, as it is marked", "Such as: wrench 2"),
  TOOL_LEAST("", "Its least torque with unit", "The beginning of its scale. Such as: 40 Nm"),
  TOOL_MOST("", "Its largest torque", "The end of its scale, in the same unit. Such as: 210 Nm"),
  CALIBRATED("", "Last calibrated, year-month-day, - if not known", "Such as: 2026-03-31"),
  UNCERTAINTY(
      "",
      "Uncertainty on its certificate in percent, - if not known",
      "The check then reckons with it in place of the 4 percent of ISO 6789. Such as: 1.8"),
  MORE_TOOLS("tool", "Another torque wrench, - for none", "Every torque must lie in one's range"),
  PHASE("phase", "Phase of the work", "Such as: remove, fit, tighten, finish"),
  SIDE(
      "side",
      "On each side, or once for the car",
      "both: each side has these steps. front, rear, corner: those corners have. car: once",
      "both|front|rear|corner|car"),
  KIND(
      "kind",
      "Next step",
      "fasten: tighten something. do: work, with a check if you like. measure: a value is called."
          + " wait: a time. load: ride height or full droop. hand-over: for later or others."
          + " phase: a new phase. done: that was the last",
      "fasten|do|measure|wait|load|hand-over|phase|done"),
  FASTENER("fastener", "Fastener", "As it is spoken, without side. Such as: arm bush bolt"),
  THREAD(
      "thread", "Thread with pitch, such as M12x1.5", "Diameter and pitch, as in the repair data"),
  HARDWARE("hardware", "What is turned", "What the wrench is on", "bolt|nut|self-locking nut"),
  NUT_CLASS("nut class", "Class on the nut, - if not stated", "Such as: 10"),
  SOCKET("socket", "Socket or key in mm", "Such as: 18"),
  COUNT("count", "How many, tightened in one step", "Such as: 5 wheel bolts"),
  ORDER("order", "Order of tightening, - if free", "Such as: 1-3-5-2-4"),
  BY_HAND("by hand first", "Run in by hand first", "yes: all are counted first", "yes|no"),
  ONE_TIME("one time use", "New each time", "yes: it is asked for before the torque", "yes|no"),
  LUBRICATION(
      "lubrication",
      "Thread and seat",
      "What the torque holds for. It changes the preload more than anything else",
      "dry|oiled|greased|paste|threadlocker|as delivered|unstated"),
  FRICTION(
      "friction",
      "Coefficient of friction, such as 0.1 to 0.14, - if not known",
      "The least and the most of a coating. Without it the check takes a wide range"),
  JOINT(
      "joint",
      "What it holds, - if not stated",
      "A bonded bush is twisted for good if it is tightened at the wrong height",
      "rigid|bonded bush|spherical joint|-"),
  ARM("arm", "Arm it belongs to, - if not stated", "Its bushes are compared. Such as: lower arm"),
  NEEDS(
      "load condition",
      "Load condition when it is tightened",
      "The step stays closed to values until it is confirmed",
      "any|ride height|full droop"),
  REASON(
      "needs reason",
      "Why at this condition, - if not stated",
      "Without one the check finds bushes of an arm that differ. Such as: the maker says so"),
  WHEEL("wheel", "Does it hold a wheel", "Then order and a later check are asked for", "yes|no"),
  SEAT(
      "seat",
      "Its seat, - if not known",
      "What rubs under it. A cone or a ball needs more torque for the same force",
      "flat|cone|ball|-"),
  SEAT_ANGLE("seat angle", "Whole angle of the cone in degrees", "Such as: 60"),
  MARKING(
      "class",
      "Class on the head, - if the torque does not depend on it",
      "With a class it must be read out before a value is given. Such as: 10.9"),
  STAGE(
      "torque",
      "Torque with tolerance and unit, such as 52 ± 3 Nm",
      "Also: 52 +/- 3 Nm, 70 Nm ± 4 %"),
  MORE_STAGES(
      "torque",
      "Next stage, such as 60 ± 5 deg, - if that was the last",
      "A torque such as 65 ± 3 Nm, or an angle such as 60 ± 5°, or 60 +/- 5 deg"),
  BEYOND_YIELD(
      "beyond yield",
      "Is the bolt meant to yield, - if not stated",
      "The check judges the angle by it. yes: such a bolt is stretched for good",
      "yes|no|-"),
  CLAMPED(
      "clamped length",
      "Clamped length in mm, - if not known",
      "All parts between head and nut together. With it the check reckons with the joint itself."
          + " Such as: 64"),
  MORE_MARKINGS("class", "Another class with its own torque, - for none", "Such as: 8.8"),
  STEP("step", "Title of the step", "As it is spoken. Such as: Tighten the arm bush bolt"),
  BRIEF(
      "brief",
      "The title in a few words, - for none",
      "Spoken where the step is known. Such as: arm bush bolt"),
  CHECK("check", "Question before it closes, - for none", "Such as: Is the boot dry and whole?"),
  WHEELS("wheels on", "Wheels: on, off, or - as they are", "Puts them on or off", "on|off|-"),
  CHANGES_LOAD(
      "changes load",
      "Can it change how the suspension is loaded",
      "yes: a confirmed ride height is asked for again. Such as: lower the car",
      "yes|no"),
  UNIT("unit", "Unit", "What the value is called in", "mm|in|deg|bar|km"),
  LEAST("least", "Least that is permitted, - for none", "Such as: 2.5"),
  MOST("most", "Most that is permitted, - for none", "Such as: 10"),
  OUTSIDE(
      "outside",
      "A value outside is",
      "fault: the step stays open. finding: it closes and is reported",
      "fault|finding"),
  NOTES_HEIGHT(
      "notes ride height",
      "Is it the ride height before the work",
      "Hub centre to arch. A later height is compared with it",
      "yes|no"),
  HEIGHT_TOLERANCE("", "How far off may a later height lie, in mm", "Such as: 10"),
  SECONDS("seconds", "Seconds to wait", "Such as: 600 for ten minutes"),
  CONDITION(
      "load condition", "To which load condition", "It is confirmed", "ride height|full droop"),
  BY_WHEELS(
      "by wheels",
      "Is it done by wheels that carry the car",
      "yes: the wheels must be on before",
      "yes|no"),
  DUE("due", "When it is due", "Such as: after 50 km"),
  NOTE("note", "Caution at this step, - for none", "Spoken when the step comes. Several: one each");

  private final String heading;
  private final String asked;
  private final String explained;
  private final String choices;

  Wanted(String heading, String asked, String explained) {
    this(heading, asked, explained, "");
  }

  Wanted(String heading, String asked, String explained, String choices) {
    this.heading = heading;
    this.asked = asked;
    this.explained = explained;
    this.choices = choices;
  }

  /** The heading of its column, or the word of its line above the table; blank if it has none. */
  public String heading() {
    return heading;
  }

  /** The question, without the words to choose from. */
  public String asked() {
    return asked;
  }

  /** The question without its example and without what only typing needs. */
  public String brief() {
    return asked.replaceFirst(", (such as|-) .*", "");
  }

  /** What it is for, with an example, in whole sentences. */
  public String explained() {
    return explained.endsWith(".") ? explained : explained + ".";
  }

  /** The words to choose from; none if it takes a text or a value. */
  public List<String> choices() {
    return choices.isEmpty() ? List.of() : List.of(choices.split("\\|", -1));
  }
}
