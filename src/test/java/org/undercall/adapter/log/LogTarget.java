package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.board.Board;
import org.undercall.core.board.Devices;
import org.undercall.core.board.Happened;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Replay;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * Any bytes as a log: as they are, or, after a first byte {@code +}, each line given the sums that
 * make it whole, so that what is in it is reached. A log that can be read is replayed, taken up and
 * reviewed.
 */
public final class LogTarget {
  private static final Walk WALK = walk();
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-25T12:00:00+01:00");

  /** Said to a session that was taken up: each must be answered. */
  private static final List<String> PHRASES =
      List.of(
          "cautions understood",
          "that is correct",
          "step completed",
          "three eight two",
          "torque reached 62 foot pounds",
          "angle turned 75",
          "head marking 10.9",
          "wheels carry the car",
          "left side at ride height",
          "cancel that",
          "what is left",
          "where am i",
          "time left",
          "how long so far",
          "step time",
          "end of work");

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
    } catch (Fault e) {
      Coded.requireCode("LOG", e.getMessage());
    }
  }

  private static void use(LogContent content) {
    Review.of(WALK, content.decisions());
    content.decisions().forEach(d -> d.events().forEach(EventFields::json));
    if (Replay.of(WALK, content.decisions()) instanceof Replay.Broken broken) {
      Coded.requireCode("LOG", LogCode.impossible(broken).getMessage());
    } else {
      show(content);
    }
  }

  private static void show(LogContent content) {
    Session session = Session.start(WALK);
    Happened happened = Happened.NOTHING;
    for (Recorded decision : content.decisions()) {
      Session next = session.after(decision);
      happened = happened.after(decision, session, next);
      session = next;
      Decider.heard(session);
      Board.of(session, happened, Devices.WELL, decision.said(), decision.at());
    }
    OffsetDateTime last = content.decisions().get(content.decisions().size() - 1).at().wall();
    Duration away = Duration.between(last, NOW);
    Decision up = Decider.takeUp(session, "test", away);
    Session on = session.after(up.events());
    Set<IntentKind> heard = Decider.heard(on);
    for (String phrase : PHRASES) {
      Intent intent = Interpreter.interpret(RecognisedPhrase.typed(phrase), heard, 0.6);
      Decision decision = Decider.decide(on, intent, new Moment(NOW, 0));
      on.after(decision.events());
    }
    Decider.decide(on, new Intent.Plain(IntentKind.TIMER_ENDED), new Moment(NOW, 0));
  }

  private static byte[] sealed(byte[] data) {
    StringBuilder log = new StringBuilder();
    String prev = LogLine.FIRST;
    for (String open : new String(data, 1, data.length - 1, UTF_8).split("\n", -1)) {
      if (!open.isEmpty()) {
        String text = open + ",\"prev\":\"" + prev + "\"";
        prev = Sha256.hex(text.getBytes(UTF_8));
        log.append(text).append(",\"sum\":\"").append(prev).append("\"}\n");
      }
    }
    return log.toString().getBytes(UTF_8);
  }

  private static Walk walk() {
    try {
      Path demo = Path.of("shared", "procedures", "demo-lateral-link.json");
      return Walk.of(ProcedureFile.load(demo).procedure());
    } catch (Fault e) {
      throw new IllegalStateException(e);
    }
  }
}
