package org.undercall.adapter.clips;

import java.io.IOException;

/** Something is wrong with a clip; the message is one line and starts with a code. */
public final class ClipFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong. The codes are permanent. */
  public enum Code {
    CANNOT_KEEP("CLP-001", "A clip could not be put on disk; the decision counts without it."),
    CHANGED("CLP-002", "A clip is not the one that the log names."),
    CANNOT_READ("CLP-003", "A clip or the folder of clips cannot be read."),
    CANNOT_REMOVE("CLP-004", "A clip cannot be deleted.");

    private final String id;
    private final String sentence;

    Code(String id, String sentence) {
      this.id = id;
      this.sentence = sentence;
    }

    /** The permanent code, for example {@code CLP-002}. */
    public String id() {
      return id;
    }

    /** What is wrong, in one sentence. */
    public String sentence() {
      return sentence;
    }
  }

  private final Code code;

  ClipFault(Code code, String place, String found, String expected) {
    super(code.id() + " " + place + ": found " + found + ", expected " + expected);
    this.code = code;
  }

  static ClipFault of(Code code, String place, IOException cause, String expected) {
    String name = cause.getClass().getSimpleName();
    String why = cause.getMessage() == null ? name : name + " " + cause.getMessage();
    ClipFault fault = new ClipFault(code, place, why, expected);
    fault.initCause(cause);
    return fault;
  }

  /** What is wrong. */
  public Code code() {
    return code;
  }
}
