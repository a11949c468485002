package org.undercall.adapter.report;

import org.undercall.port.Fault;

/** Why a report cannot be written. The codes are permanent. */
public enum ReportCode implements Fault.Code {
  CANNOT_WRITE("RPT-001", "A file of the report or the job sheet cannot be written."),
  CANNOT_COPY("RPT-002", "A sound cannot be copied."),
  NO_ANGLE_STAGE(
      "RPT-003",
      "The sketch needs a step with one torque and one angle stage whose head marking was read."),
  NO_SKETCH(
      "RPT-004",
      "The sketch cannot be drawn: no sizes of the joint, no head marking, or friction not known.");

  private final String id;
  private final String meaning;

  ReportCode(String id, String meaning) {
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
