package org.undercall.adapter.recogniser;

/** A fault of the speech model, with a stable code; the message starts with it and is one line. */
public final class ModelFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong. The code is stable; the number is never reused. */
  public enum Code {
    /** There is no folder. */
    NO_FOLDER("MOD-001"),
    /** A file on the checksum list is not there. */
    FILE_MISSING("MOD-002"),
    /** A file is not what the checksum list says. */
    FILE_DAMAGED("MOD-003"),
    /** There is a file that is not on the checksum list. */
    FILE_NOT_LISTED("MOD-004"),
    /** The checksum list itself cannot be understood. */
    LIST_DAMAGED("MOD-005"),
    /**
     * There is no checksum list, and a file that every model needs is missing or of another kind.
     */
    NOT_A_MODEL("MOD-006"),
    /** The model has one fixed graph, so it cannot be held to a word list. */
    NO_WORD_LISTS("MOD-007"),
    /** Warning: there is no checksum list, only the structure was checked. */
    UNLISTED("MOD-008"),
    /** There is no recogniser library for this system. */
    NO_LIBRARY("MOD-009"),
    /** The recogniser could not load the model. */
    REFUSED("MOD-010"),
    /** Warning: the model does not know some of the words that may be said. */
    UNKNOWN_WORDS("MOD-011"),
    /** A file cannot be read. */
    UNREADABLE("MOD-012");

    private final String id;

    Code(String id) {
      this.id = id;
    }

    /** The code as printed, such as MOD-003. */
    public String id() {
      return id;
    }
  }

  private final Code code;

  ModelFault(Code code, String where, String what) {
    super(line(code, where, what));
    this.code = code;
  }

  /** What is wrong. */
  public Code code() {
    return code;
  }

  static String line(Code code, Object where, String what) {
    return code.id() + " " + where + ": " + what;
  }
}
