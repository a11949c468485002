package org.undercall.command.figure;

import org.undercall.port.Fault;

/** What can be wrong with the values of a figure. The codes are permanent. */
enum FigureCode implements Fault.Code {
  FRICTION_UNKNOWN("FIG-001", "No friction is published for the state."),
  PLOT_NOT_WRITTEN("FIG-002", "The plot cannot be written."),
  SIZES_INCOMPLETE("FIG-003", "Only some sizes of the joint are given."),
  SHANK("FIG-004", "The shank is not shorter than the clamped length, or negative."),
  NO_SIZES("FIG-005", "A plot needs the sizes of the joint."),
  TOLERANCE("FIG-006", "A tolerance is negative, or not less than the torque."),
  OUT_OF_TRAVEL("FIG-007", "The height lies outside the travel of the arm."),
  NO_CLASS("FIG-008", "The class is no head marking."),
  BORE("FIG-009", "A bore, or the hole of the seat, does not let the bolt through."),
  NARROW("FIG-010", "The clamped part is narrower than the seat that presses on it."),
  FRICTION("FIG-011", "The friction lies outside all that is published."),
  NO_STEP("FIG-012", "The procedure has no such step that tightens a fastener."),
  NO_VARIANT("FIG-013", "The step has no stages for this head marking, or it is not stated."),
  SEAT_SHAPE("FIG-014", "A cone or ball seat lacks its diameters, or both are given."),
  THREAD_END("FIG-015", "What the thread is screwed into is stated twice or in part."),
  NO_SECOND("FIG-016", "There is no second variant to compare with."),
  WANTED("FIG-017", "The wanted preload is not one that can be."),
  SIZES_NEEDED("FIG-018", "This figure needs the sizes of the joint."),
  NO_BUSH("FIG-019", "A moment of a bush needs its sizes and the stiffness of its rubber.");

  private final String id;
  private final String meaning;

  FigureCode(String id, String meaning) {
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
