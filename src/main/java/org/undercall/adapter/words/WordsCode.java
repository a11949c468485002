package org.undercall.adapter.words;

import org.undercall.port.Fault;

/** What can be wrong with a file of own words. The codes are permanent. */
public enum WordsCode implements Fault.Code {
  NOT_READ("WRD-001", "The file cannot be read, or is no JSON or YAML object of lists of texts."),
  NO_MEANING("WRD-002", "There is no such meaning, or it is only said with a number or choice."),
  FORM("WRD-003", "A wording is not two to eight lower-case words."),
  TAKEN("WRD-004", "A wording means something already, or stands there twice."),
  TOO_CLOSE("WRD-005", "A wording is too close to a phrase that means something else."),
  UNKNOWN_WORD("WRD-006", "The speech model does not know a word, so it can never be heard."),
  LANGUAGE("WRD-007", "The language is no tag of BCP 47, such as de or pt-BR.");

  private final String id;
  private final String meaning;

  WordsCode(String id, String meaning) {
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
