package org.undercall.adapter.recogniser;

import org.undercall.port.Fault;

/** What can be wrong with the speech model. The codes are permanent. */
public enum ModelCode implements Fault.Code {
  NO_FOLDER("MOD-001", "There is no such folder."),
  FILE_MISSING("MOD-002", "A file on the list of checksums is missing."),
  FILE_DAMAGED("MOD-003", "A file is not what the list of checksums says."),
  FILE_NOT_LISTED("MOD-004", "A file is not on the list of checksums."),
  LIST_DAMAGED("MOD-005", "The list of checksums is damaged."),
  NOT_A_MODEL(
      "MOD-006",
      "There is no list, and a file that every model needs is missing or of another kind."),
  NO_WORD_LISTS("MOD-007", "The model cannot be held to a word list."),
  UNLISTED("MOD-008", "Warning: there is no list of checksums, so only the structure was checked."),
  NO_LIBRARY("MOD-009", "There is no recogniser library for this system."),
  REFUSED("MOD-010", "The recogniser refused the model."),
  UNKNOWN_WORDS("MOD-011", "Warning: the model does not know some words that may be said."),
  UNREADABLE("MOD-012", "A file cannot be read.");

  private final String id;
  private final String meaning;

  ModelCode(String id, String meaning) {
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
