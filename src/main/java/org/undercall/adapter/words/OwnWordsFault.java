package org.undercall.adapter.words;

import java.nio.file.Path;
import java.util.List;
import org.undercall.text.Shown;

/** A file of own words cannot be used. The message has one line for each fault, with its code. */
public final class OwnWordsFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong; the codes are permanent. */
  public enum Code {
    NOT_READ("WRD-001", "The file cannot be read, or is no JSON or YAML object of lists of texts."),
    NO_MEANING("WRD-002", "There is no such meaning, or it is only said with a number or choice."),
    FORM("WRD-003", "A wording is not two to eight lower-case words."),
    TAKEN("WRD-004", "A wording means something already, or stands there twice."),
    TOO_CLOSE("WRD-005", "A wording is too close to a phrase that means something else."),
    UNKNOWN_WORD("WRD-006", "The speech model does not know a word, so it can never be heard."),
    LANGUAGE("WRD-007", "The language is no tag of BCP 47, such as de or pt-BR.");

    private final String id;
    private final String meaning;

    Code(String id, String meaning) {
      this.id = id;
      this.meaning = meaning;
    }

    /** The permanent code. */
    public String id() {
      return id;
    }

    /** What it means, one sentence. */
    public String meaning() {
      return meaning;
    }
  }

  /** Faults, one line each. */
  public OwnWordsFault(List<String> lines) {
    super(String.join("\n", lines));
  }

  /** One line: code, file, and what was found and expected. */
  public static String line(Code code, Path file, String what) {
    return code.id() + " " + Shown.plain(file.toString()) + ": " + what;
  }
}
