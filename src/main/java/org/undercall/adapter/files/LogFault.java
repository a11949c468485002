package org.undercall.adapter.files;

import org.undercall.core.decision.Replay;

/** A session log or session folder cannot be used as it is; the message is for the user. */
public final class LogFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong, with a permanent code. */
  public enum Code {
    CANNOT_RECORD("LOG-001", "A decision could not be put on disk."),
    CANNOT_READ("LOG-002", "The log or a file of the session cannot be read."),
    IN_USE("LOG-003", "Another program has the session open."),
    DAMAGED("LOG-004", "A line was changed or cut since it was written."),
    OUT_OF_CHAIN("LOG-005", "A line does not follow the line before it."),
    OUT_OF_COUNT("LOG-006", "The decisions are not numbered without a gap."),
    UNKNOWN_EVENT("LOG-007", "A line holds an event that this version does not know."),
    BAD_MEMBER("LOG-008", "A member is absent or does not have its form."),
    CANNOT_CREATE("LOG-009", "The session folder cannot be created."),
    NO_SUCH_SESSION("LOG-010", "There is no such session."),
    OTHER_PROCEDURE("LOG-011", "The kept procedure file is not the one the session began with."),
    NOT_STARTED("LOG-012", "The log does not begin with the start of a session."),
    COMPLETE("LOG-013", "The session is complete, so there is nothing to take up."),
    LINES_GONE("LOG-020", "Lines are gone from the end of the log."),
    OTHER_SUM("LOG-021", "The log is not the one that its sum file was made for."),
    NO_SUM("LOG-022", "There is no sum file, or it cannot be read."),
    LOSS_RECORDED("LOG-023", "The log says that lines of it were lost before."),
    BAD_KEY("LOG-024", "A key file cannot be read or has no key of the kind needed."),
    CANNOT_WRITE("LOG-025", "A key or signature file cannot be written."),
    OTHER_SIGNATURE("LOG-026", "The signature is not one of this log by this key."),
    IMPOSSIBLE("LOG-027", "A line holds an event that cannot follow the lines before it.");

    private final String id;
    private final String sentence;

    Code(String id, String sentence) {
      this.id = id;
      this.sentence = sentence;
    }

    /** The permanent code, for example {@code LOG-004}. */
    public String id() {
      return id;
    }

    /** What is wrong, in one sentence. */
    public String sentence() {
      return sentence;
    }
  }

  private final Code code;
  private final String place;
  private final String found;
  private final String expected;

  LogFault(Code code, String place, String found, String expected) {
    super(code.id() + " " + place + ": found " + Shown.line(found) + ", expected " + expected);
    this.code = code;
    this.place = place;
    this.found = Shown.line(found);
    this.expected = expected;
  }

  String found() {
    return found;
  }

  String expected() {
    return expected;
  }

  /** A session that was to be taken up is complete. */
  public static LogFault complete(String session) {
    return new LogFault(
        Code.COMPLETE, "session " + session, "a complete session", "one with open steps");
  }

  /** No session follows from the decisions of a log; the number of a decision is its line. */
  public static LogFault impossible(Replay.Broken broken) {
    String found =
        broken
            .event()
            .map(event -> LogJson.write(EventJson.write(event)))
            .orElse("a decision without an event");
    return new LogFault(Code.IMPOSSIBLE, "log line " + broken.seq(), found, broken.expected());
  }

  /** The same, said of a session that was to be gone on with, and how to begin another one. */
  public static LogFault notTakenUp(String session, LogFault fault) {
    return new LogFault(
        fault.code,
        "session " + session + ", " + fault.place,
        fault.found,
        fault.expected + "; --new begins another session, \"undercall review\" shows this one");
  }

  /** What is wrong. */
  public Code code() {
    return code;
  }

  LogFault because(Throwable cause) {
    initCause(cause);
    return this;
  }
}
