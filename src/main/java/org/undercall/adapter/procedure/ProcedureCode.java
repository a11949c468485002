package org.undercall.adapter.procedure;

import org.undercall.port.Fault;

/** What can be wrong with a procedure file or a block. The codes are permanent. */
public enum ProcedureCode implements Fault.Code {
  FILE_NOT_READABLE("PRO-001", "The file does not exist or cannot be read."),
  FILE_TOO_LARGE("PRO-002", "The file has more than 2 MB or more than 50 000 values."),
  NOT_UTF_8("PRO-003", "The file is not UTF-8 text."),
  NOT_JSON("PRO-004", "The text is not JSON; in a YAML file, not YAML."),
  TRUNCATED("PRO-005", "The text ends before it is complete."),
  TOO_DEEP("PRO-006", "Objects and lists are nested more than 32 deep."),
  DUPLICATE_KEY("PRO-007", "A field is written twice in one object."),
  UNKNOWN_FIELD("PRO-008", "A field has a name that the format does not know here."),
  MISSING_FIELD("PRO-009", "A field that must be there is missing."),
  WRONG_TYPE("PRO-010", "A value is of the wrong type, such as a text in place of a number."),
  OUT_OF_RANGE("PRO-011", "A number is too small or too large, or a list too long."),
  UNKNOWN_WORD("PRO-012", "A word is not one of those allowed here."),
  UNREADABLE_THREAD("PRO-013", "A thread designation is not of the form M12x1.5."),
  UNKNOWN_PROPERTY_CLASS("PRO-014", "A head marking is not a property class."),
  TEXT_TOO_LONG("PRO-015", "A text has more characters than allowed, 300 in most places."),
  BLANK_TEXT("PRO-016", "A text is empty or blank."),
  CONTROL_CHARACTER("PRO-017", "A text has a character that can be neither read nor spoken."),
  NOT_A_DATE("PRO-018", "A date is not a day of the calendar written as 2026-03-31."),
  UNKNOWN_TORQUE_UNIT("PRO-019", "A torque unit is not one of N·m, Nm, lbf·ft and lbf·in."),
  NO_CAUTIONS("PRO-020", "There is no caution, or more than 20."),
  NO_STEPS("PRO-021", "There is no phase, or a phase without a step, or too many of them."),
  NO_TOOLS("PRO-022", "No torque wrench is listed, or more than 50."),
  NO_STAGES("PRO-023", "A fastener has no stage or variant, or more than 10."),
  STAGES_OR_VARIANTS("PRO-024", "A fastener has both stages and variants, or neither."),
  WAIT_TIME("PRO-025", "A time to wait is zero, or longer than a day."),
  NUMBER_FORM("PRO-026", "A number is not plain: up to 7 digits before and 4 after the point."),
  UNREADABLE_ID("PRO-027", "The id of a step is not of small letters, digits and hyphens."),
  DUPLICATE_STEP("PRO-030", "Two steps have the same id."),
  DUPLICATE_TOOL("PRO-031", "Two tools have the same id."),
  DUPLICATE_MARKING("PRO-032", "Two variants have the same head marking."),
  MIXED_VARIANTS("PRO-033", "Of several variants, some have a head marking and some have none."),
  FIRST_STAGE_NOT_TORQUE("PRO-034", "The first stage is an angle."),
  ANGLE_BEFORE_TORQUE("PRO-035", "A torque stage comes after an angle stage."),
  TOLERANCE_TOO_WIDE("PRO-036", "A tolerance is not less than its target."),
  WRONG_ORDER("PRO-037", "The order of a set does not name each position once."),
  NO_TOOL_COVERS("PRO-038", "A torque lies outside the range of every listed tool."),
  TOOL_RANGE("PRO-039", "A tool's least torque is not less than its most."),
  LIMITS_CROSSED("PRO-040", "The least permitted value is more than the most."),
  NO_HEIGHT_TOLERANCE("PRO-041", "A step notes the ride height, but there is no tolerance for it."),
  HEIGHT_NOTE_MISPLACED(
      "PRO-042", "The ride height is noted in another unit than mm, or not per side."),
  ARM_TRAVEL(
      "PRO-043",
      "The heights of the arm do not rise from droop over ride to bump within its length."),
  ADAPTOR_TURNED_BACK("PRO-044", "An adaptor is turned back by as much as the wrench is long."),
  YAML_REFERENCE("PRO-045", "A YAML file has an alias or a tag."),
  INCLUDE_PATH("PRO-046", "The path of a block is not of plain names with a slash between them."),
  BLOCK_ABSENT("PRO-047", "An included block is not there."),
  BLOCK_OUTSIDE("PRO-048", "A link leads to a block outside the folder of the procedure."),
  INCLUDE_CIRCLE("PRO-049", "A file includes itself, at once or through others."),
  INCLUDED_TOO_DEEP("PRO-050", "Blocks include one another more than 4 deep."),
  TOO_MANY_INCLUDES("PRO-051", "A procedure includes more than 100 blocks."),
  ASSEMBLED_TOO_LARGE(
      "PRO-052", "With its blocks, a procedure has more than 2 MB or 50 000 values."),
  BLOCK_KIND("PRO-053", "A block of steps stands for a phase, or a block of phases for a step."),
  BLOCK_ALONE("PRO-054", "The file is a block, which is included, and no procedure."),
  STEPS_OR_PHASES("PRO-055", "A block has both phases and steps, or neither."),
  IDS_FORM("PRO-056", "What is put before ids is not of small letters, digits and hyphens."),
  SAME_IDS("PRO-057", "A block is included twice with the same before its ids."),
  VALUE_NAME("PRO-058", "The name of a given value is not of small letters, digits and hyphens."),
  NOT_GIVEN("PRO-059", "A reference names a value that is not given there."),
  BLOCK_LACKS("PRO-060", "An include does not give a value that the block takes."),
  NO_STEP_BEFORE("PRO-062", "A step names one in after or undoes that does not come before it."),
  BACK_OFF_FIRST("PRO-063", "A back-off stands before any torque."),
  RANGE_NOT_RISING("PRO-064", "A range of torque does not end above its beginning."),
  SIDES_AND_CORNERS("PRO-066", "A side is named in a procedure that has corners."),
  ARM_OF_TWO_AXLES("PRO-067", "One arm is given for the ride height of two axles."),
  NOT_TAPPED("PRO-068", "A length of engagement is given, and not what it is tapped into."),
  RUN_DOWN("PRO-065", "A run-down torque is asked of several fasteners, or with an adaptor."),
  RENEWED_AND_REUSED(
      "PRO-069", "A reason to renew a fastener is given, and it is not for one use."),
  SIZES_CROSSED(
      "PRO-070",
      "Sizes of a joint contradict each other, such as an inner diameter above the outer."),
  LIMIT_IN_VAIN(
      "PRO-080",
      "A limit for using a fastener again stands beside a reason that it does not settle."),
  BLOCK_REVISION("PRO-081", "A block is of another revision than its include was written for."),
  WITNESS_MISPLACED(
      "PRO-082",
      "A witness is asked for at a step that moves the car or a wheel, or notes the ride height."),
  NOT_USED("PRO-061", "A value is given, or taken by a block, and nothing uses it.");

  private final String id;
  private final String meaning;

  ProcedureCode(String id, String meaning) {
    this.id = id;
    this.meaning = meaning;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String meaning() {
    return meaning;
  }
}
