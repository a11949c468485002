package org.undercall.adapter.procedure;

import java.util.Locale;

/**
 * What can be wrong with a procedure file or a block. Numbers are permanent and never given out
 * again.
 */
public enum FaultCode {
  FILE_NOT_READABLE(1, "The file does not exist or cannot be read."),
  FILE_TOO_LARGE(2, "The file has more than 2 MB or more than 50 000 values."),
  NOT_UTF_8(3, "The file is not UTF-8 text."),
  NOT_JSON(4, "The text is not JSON; in a YAML file, not YAML."),
  TRUNCATED(5, "The text ends before it is complete."),
  TOO_DEEP(6, "Objects and lists are nested more than 32 deep."),
  DUPLICATE_KEY(7, "A field is written twice in one object."),
  UNKNOWN_FIELD(8, "A field has a name that the format does not know here."),
  MISSING_FIELD(9, "A field that must be there is missing."),
  WRONG_TYPE(10, "A value is of the wrong type, such as a text in place of a number."),
  OUT_OF_RANGE(11, "A number is too small or too large, or a list too long."),
  UNKNOWN_WORD(12, "A word is not one of those allowed here."),
  UNREADABLE_THREAD(13, "A thread designation is not of the form M12x1.5."),
  UNKNOWN_PROPERTY_CLASS(14, "A head marking is not a property class."),
  TEXT_TOO_LONG(15, "A text has more characters than allowed, 300 in most places."),
  BLANK_TEXT(16, "A text is empty or blank."),
  CONTROL_CHARACTER(17, "A text has a character that can be neither read nor spoken."),
  NOT_A_DATE(18, "A date is not a day of the calendar written as 2026-03-31."),
  UNKNOWN_TORQUE_UNIT(19, "A torque unit is not one of N·m, Nm, lbf·ft and lbf·in."),
  NO_CAUTIONS(20, "There is no caution, or more than 20."),
  NO_STEPS(21, "There is no phase, or a phase without a step, or too many of them."),
  NO_TOOLS(22, "No torque wrench is listed, or more than 50."),
  NO_STAGES(23, "A fastener has no stage or variant, or more than 10."),
  STAGES_OR_VARIANTS(24, "A fastener has both stages and variants, or neither."),
  WAIT_TIME(25, "A time to wait is zero, or longer than a day."),
  NUMBER_FORM(26, "A number is not plain: up to 7 digits before and 4 after the point."),
  UNREADABLE_ID(27, "The id of a step is not of small letters, digits and hyphens."),
  DUPLICATE_STEP(30, "Two steps have the same id."),
  DUPLICATE_TOOL(31, "Two tools have the same id."),
  DUPLICATE_MARKING(32, "Two variants have the same head marking."),
  MIXED_VARIANTS(33, "Of several variants, some have a head marking and some have none."),
  FIRST_STAGE_NOT_TORQUE(34, "The first stage is an angle."),
  ANGLE_BEFORE_TORQUE(35, "A torque stage comes after an angle stage."),
  TOLERANCE_TOO_WIDE(36, "A tolerance is not less than its target."),
  WRONG_ORDER(37, "The order of a set does not name each position once."),
  NO_TOOL_COVERS(38, "A torque lies outside the range of every listed tool."),
  TOOL_RANGE(39, "A tool's least torque is not less than its most."),
  LIMITS_CROSSED(40, "The least permitted value is more than the most."),
  NO_HEIGHT_TOLERANCE(41, "A step notes the ride height, but there is no tolerance for it."),
  HEIGHT_NOTE_MISPLACED(42, "The ride height is noted in another unit than mm, or not per side."),
  ARM_TRAVEL(
      43, "The heights of the arm do not rise from droop over ride to bump within its length."),
  ADAPTOR_TURNED_BACK(44, "An adaptor is turned back by as much as the wrench is long."),
  YAML_REFERENCE(45, "A YAML file has an alias or a tag."),
  INCLUDE_PATH(46, "The path of a block is not of plain names with a slash between them."),
  BLOCK_ABSENT(47, "An included block is not there."),
  BLOCK_OUTSIDE(48, "A link leads to a block outside the folder of the procedure."),
  INCLUDE_CIRCLE(49, "A file includes itself, at once or through others."),
  INCLUDED_TOO_DEEP(50, "Blocks include one another more than 4 deep."),
  TOO_MANY_INCLUDES(51, "A procedure includes more than 100 blocks."),
  ASSEMBLED_TOO_LARGE(52, "With its blocks, a procedure has more than 2 MB or 50 000 values."),
  BLOCK_KIND(53, "A block of steps stands for a phase, or a block of phases for a step."),
  BLOCK_ALONE(54, "The file is a block, which is included, and no procedure."),
  STEPS_OR_PHASES(55, "A block has both phases and steps, or neither."),
  IDS_FORM(56, "What is put before ids is not of small letters, digits and hyphens."),
  SAME_IDS(57, "A block is included twice with the same before its ids."),
  VALUE_NAME(58, "The name of a given value is not of small letters, digits and hyphens."),
  NOT_GIVEN(59, "A reference names a value that is not given there."),
  BLOCK_LACKS(60, "An include does not give a value that the block takes."),
  NOT_USED(61, "A value is given, or taken by a block, and nothing uses it.");

  private final int number;
  private final String meaning;

  FaultCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  /** The code as printed, for example {@code PRO-014}. */
  public String code() {
    return String.format(Locale.ROOT, "PRO-%03d", number);
  }

  /** What is wrong, in one sentence. */
  public String meaning() {
    return meaning;
  }

  /** The fault with a printed code. */
  static FaultCode of(String code) {
    for (FaultCode fault : values()) {
      if (fault.code().equals(code)) {
        return fault;
      }
    }
    throw new IllegalArgumentException("no such code: " + code);
  }
}
