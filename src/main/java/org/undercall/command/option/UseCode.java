package org.undercall.command.option;

import org.undercall.port.Fault;

/** What can be wrong with how the program is called. The codes are permanent. */
public enum UseCode implements Fault.Code {
  WRONG_USAGE("USE-001", "The command was typed wrongly, or nobody can be asked."),
  NO_ACCESS("USE-002", "A file or folder cannot be read or written.");

  private final String id;
  private final String meaning;

  UseCode(String id, String meaning) {
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
