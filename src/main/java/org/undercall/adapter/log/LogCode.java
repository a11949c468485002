package org.undercall.adapter.log;

import org.undercall.core.decision.Replay;
import org.undercall.port.Fault;

/** What can be wrong with a log or a session folder. The codes are permanent. */
public enum LogCode implements Fault.Code {
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
  IMPOSSIBLE("LOG-027", "A line holds an event that cannot follow the lines before it."),
  OTHER_OCCASION("LOG-028", "A rehearsal is not gone on with as work, nor work as a rehearsal."),
  NO_RECORD("LOG-029", "A rehearsal or demonstration is no record of work, and is not signed.");

  private final String id;
  private final String meaning;

  LogCode(String id, String meaning) {
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

  /** No session follows from the decisions of a log; the number of a decision is its line. */
  public static Fault impossible(Replay.Broken broken) {
    String found =
        broken
            .event()
            .map(event -> LogJson.write(EventJson.write(event)))
            .orElse("a decision without an event");
    return new Fault(IMPOSSIBLE, "log line " + broken.seq(), found, broken.expected());
  }
}
