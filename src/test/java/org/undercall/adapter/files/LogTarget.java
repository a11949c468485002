package org.undercall.adapter.files;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.Optional;
import org.undercall.core.board.Board;
import org.undercall.core.board.Devices;
import org.undercall.core.board.Happened;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;

/**
 * Any bytes as a log: as they are, or, after a first byte {@code +}, each line given the sums that
 * make it whole, so that what is in it is reached. A log that can be read is replayed and reviewed.
 */
public final class LogTarget {
  private static final Walk WALK = walk();

  private LogTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) {
    byte[] log = data.length > 0 && data[0] == '+' ? sealed(data) : data;
    LogAudit.of(log, "log.jsonl");
    SumState.of(log, Optional.of(new String(data, UTF_8)));
    try {
      LogContent content = LogContent.of(log, "log.jsonl");
      content.started();
      use(content);
    } catch (LogFault e) {
      Coded.requireCode("LOG", e.getMessage());
    }
  }

  private static void use(LogContent content) {
    Session session = Session.start(WALK);
    Happened happened = Happened.NOTHING;
    for (Recorded decision : content.decisions()) {
      Session next = session.after(decision);
      happened = happened.after(decision, session, next);
      session = next;
      Decider.heard(session);
      Board.of(session, happened, Devices.WELL, decision.said(), decision.at());
      decision.events().forEach(EventFields::json);
    }
    Review.of(WALK, content.decisions());
  }

  private static byte[] sealed(byte[] data) {
    StringBuilder log = new StringBuilder();
    String prev = LogLine.FIRST;
    for (String open : new String(data, 1, data.length - 1, UTF_8).split("\n", -1)) {
      if (!open.isEmpty()) {
        String text = open + ",\"prev\":\"" + prev + "\"";
        prev = LogLine.sha256(text.getBytes(UTF_8));
        log.append(text).append(",\"sum\":\"").append(prev).append("\"}\n");
      }
    }
    return log.toString().getBytes(UTF_8);
  }

  private static Walk walk() {
    try {
      Path demo = Path.of("shared", "procedures", "demo-lateral-link.json");
      return Walk.of(ProcedureFile.load(demo).procedure());
    } catch (ProcedureFaults e) {
      throw new IllegalStateException(e);
    }
  }
}
