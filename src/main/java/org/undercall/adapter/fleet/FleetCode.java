package org.undercall.adapter.fleet;

import org.undercall.port.Fault;

/** What can be wrong with many sessions together. The codes are permanent. */
public enum FleetCode implements Fault.Code {
  NO_INDEX("FLT-002", "The index cannot be used; the logs are read anew."),
  NOT_READ("FLT-003", "The folder of sessions or the index cannot be read."),
  UNREADABLE_SESSION("FLT-004", "A session cannot be read."),
  NOTHING_TO_COMPARE("FLT-005", "There is no session to compare."),
  PLOT_NOT_WRITTEN("FLT-006", "The picture of a comparison cannot be written."),
  NO_FOLDER("FLT-007", "What is named as the folder of sessions is a file.");

  private final String id;
  private final String meaning;

  FleetCode(String id, String meaning) {
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
