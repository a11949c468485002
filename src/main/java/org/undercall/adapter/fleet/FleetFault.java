package org.undercall.adapter.fleet;

/** Many sessions cannot be looked at; the message is for the user. */
public final class FleetFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong, with a permanent code. */
  public enum Code {
    NO_INDEX("FLT-002", "The index cannot be used; the logs are read anew."),
    NOT_READ("FLT-003", "The folder of sessions or the index cannot be read."),
    UNREADABLE_SESSION("FLT-004", "A session cannot be read."),
    NOTHING_TO_COMPARE("FLT-005", "There is no session to compare."),
    PLOT_NOT_WRITTEN("FLT-006", "The picture of a comparison cannot be written."),
    NO_FOLDER("FLT-007", "What is named as the folder of sessions is a file.");

    private final String id;
    private final String sentence;

    Code(String id, String sentence) {
      this.id = id;
      this.sentence = sentence;
    }

    /** The permanent code, for example {@code FLT-001}. */
    public String id() {
      return id;
    }

    /** What is wrong, in one sentence. */
    public String sentence() {
      return sentence;
    }
  }

  private final Code code;

  /** A fault with where it is, what was found and what was expected. */
  public FleetFault(Code code, String place, String found, String expected) {
    super(code.id() + " " + place + ": found " + found + ", expected " + expected);
    this.code = code;
  }

  /** What is wrong. */
  public Code code() {
    return code;
  }
}
