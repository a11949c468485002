package org.undercall.command.doctor;

import org.undercall.port.Fault;

/** What only the doctor finds. The codes are permanent. */
public enum DoctorCode implements Fault.Code {
  OLD_JAVA("DOC-001", "Java is older than 17."),
  NO_ANSWER("DOC-002", "A check did not end in time; the device or disk hangs."),
  UNEXPECTED("DOC-003", "A check failed in a way nobody thought of."),
  NOT_WRITABLE("DOC-004", "The folder of sessions cannot be written."),
  LITTLE_SPACE("DOC-005", "There is little space left for sessions."),
  SLOW_DISK("DOC-006", "The disk takes long until a decision is on it."),
  DEAD_SILENCE("DOC-007", "The microphone gives not the faintest noise."),
  OVERDRIVEN("DOC-008", "The sound of the microphone is cut off at its loudest."),
  LOUD("DOC-009", "It is loud at the microphone."),
  NO_DETECTOR("DOC-010", "The native detector of speech cannot be loaded."),
  NO_PROCEDURE("DOC-011", "No procedure was found."),
  LITTLE_MEMORY("DOC-012", "Java may use little memory."),
  UNREAD_FILE(
      "DOC-013", "A file lies in an old place and is not read, because the new one is there."),
  NO_CANCELLER("DOC-014", "The program's own voice cannot be taken out of the microphone.");

  private final String id;
  private final String meaning;

  DoctorCode(String id, String meaning) {
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

  /** A line with the code. */
  String line(String found, String expected) {
    return new Fault.Finding(this, "", found, expected).toString();
  }
}
