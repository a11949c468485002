package org.undercall.command.record;

/** A report cannot be written; the message is for the user. */
final class ReportFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong, with a permanent code. */
  enum Code {
    CANNOT_WRITE("RPT-001"),
    CANNOT_COPY("RPT-002"),
    NO_ANGLE_STAGE("RPT-003"),
    NO_SKETCH("RPT-004");

    private final String id;

    Code(String id) {
      this.id = id;
    }
  }

  ReportFault(Code code, String place, String found, String expected) {
    super(code.id + " " + place + ": found " + found + ", expected " + expected);
  }
}
