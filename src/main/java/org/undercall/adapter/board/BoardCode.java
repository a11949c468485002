package org.undercall.adapter.board;

import org.undercall.port.Fault;

/** Why the board cannot be shown. The codes are permanent. */
public enum BoardCode implements Fault.Code {
  PORT("BRD-001", "The port of the board is in use or may not be used.");

  private final String id;
  private final String meaning;

  BoardCode(String id, String meaning) {
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
