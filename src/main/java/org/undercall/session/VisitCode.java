package org.undercall.session;

import org.undercall.port.Fault;

/** Why a session cannot be gone on from with a visit. The codes are permanent. */
public enum VisitCode implements Fault.Code {
  SEVERAL("VIS-001", "Several sessions are meant by a registration or vehicle number."),
  NOT_COMPLETE("VIS-002", "The session to go on from is not complete."),
  REHEARSED(
      "VIS-003", "The session to go on from is a rehearsal or a demonstration, and no record."),
  OTHER_CAR("VIS-004", "The car of the session to go on from is another one."),
  NOTHING_AGAIN("VIS-005", "Nothing of the session is to be tightened again by torque.");

  private final String id;
  private final String meaning;

  VisitCode(String id, String meaning) {
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
