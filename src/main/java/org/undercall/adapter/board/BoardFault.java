package org.undercall.adapter.board;

/** The board cannot be shown; the message is one line and starts with a code. */
public final class BoardFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong. The code is stable; the number is never reused. */
  public enum Code {
    /** The port is in use or may not be used. */
    PORT("BRD-001");

    private final String id;

    Code(String id) {
      this.id = id;
    }

    /** The code as printed, such as BRD-001. */
    public String id() {
      return id;
    }
  }

  private final Code code;

  BoardFault(Code code, String where, String what) {
    super(code.id() + " " + where + ": " + what);
    this.code = code;
  }

  /** What is wrong. */
  public Code code() {
    return code;
  }
}
