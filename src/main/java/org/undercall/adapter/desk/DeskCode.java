package org.undercall.adapter.desk;

import org.undercall.port.Fault;

/** Why something cannot be done at the desk. The codes are permanent. */
public enum DeskCode implements Fault.Code {
  PORT("DSK-001", "The port of the desk is in use or may not be used."),
  CHANGED("DSK-002", "The file was changed on the disk since the page read it."),
  FAULTY("DSK-003", "A procedure with faults is saved only as a draft, which is asked for."),
  COMMENTS("DSK-004", "Comments of the file would be lost, which is asked about before."),
  NOT_READ("DSK-005", "What the page sent is not what the desk expects."),
  NO_PRACTICE("DSK-006", "There is no rehearsal, or none that goes on.");

  private final String id;
  private final String meaning;

  DeskCode(String id, String meaning) {
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
