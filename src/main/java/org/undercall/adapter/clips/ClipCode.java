package org.undercall.adapter.clips;

import org.undercall.port.Fault;

/** What can be wrong with clips. The codes are permanent. */
public enum ClipCode implements Fault.Code {
  CANNOT_KEEP("CLP-001", "A clip could not be put on disk; the decision counts without it."),
  CHANGED("CLP-002", "A clip is not the one that the log names."),
  CANNOT_READ("CLP-003", "A clip or the folder of clips cannot be read."),
  CANNOT_REMOVE("CLP-004", "A clip cannot be deleted.");

  private final String id;
  private final String meaning;

  ClipCode(String id, String meaning) {
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
