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
  FRICTION("FIG-011", "The friction lies outside all that is published.");

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
