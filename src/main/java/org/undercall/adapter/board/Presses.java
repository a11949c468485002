package org.undercall.adapter.board;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.undercall.core.board.Board;
import org.undercall.core.board.Choice;
import org.undercall.port.Heard;
import org.undercall.web.Answer;

/** Takes presses from the page, one at a time, and answers what became of them. */
final class Presses {
  private static final int LONGEST_PHRASE = 300;
  private static final int AT_ONCE = 10;
  private static final long MILLIS_EACH = 250;
  private static final long PATIENCE_MILLIS = 60_000;
  private static final String MOVED_ON =
      "The work has moved on. Look at the board again, then press.";

  private final BoardHub hub;
  private final PressSlot slot;
  private final RateLimit rate;
  private final SecondPress second;

  Presses(BoardHub hub, PressSlot slot, LongSupplier clock) {
    this.hub = hub;
    this.slot = slot;
    this.rate = new RateLimit(AT_ONCE, MILLIS_EACH, clock);
    this.second = new SecondPress(clock);
  }

  /** Whether one more press is let through now. */
  boolean mayPress() {
    return rate.allows();
  }

  /**
   * Takes a press: {@code state}, {@code phrase}, {@code pressed} for a button, and {@code again}
   * with the second press.
   */
  Answer press(JsonNode json) {
    String phrase = json.path("phrase").asText().strip();
    if (phrase.isEmpty() || phrase.length() > LONGEST_PHRASE) {
      return Answer.outcome(400, "phrase", "Expected a phrase of at most 300 letters.");
    }
    Optional<Board> board = hub.newest().map(BoardHub.Shown::board);
    long state = json.path("state").asLong(-1);
    if (board.isEmpty() || board.get().times().state() != state) {
      return stale();
    }
    if (!json.path("pressed").asBoolean()) {
      return put(new Press(state, phrase, Heard.How.TYPED));
    }
    Optional<Choice> choice =
        board.get().walk().choices().stream().filter(c -> c.phrase().equals(phrase)).findFirst();
    if (choice.isEmpty()) {
      return stale();
    }
    Optional<String> again =
        choice.get().twice()
            ? second.press(json.path("again").asText(), state, phrase)
            : Optional.empty();
    return again
        .map(Presses::again)
        .orElseGet(() -> put(new Press(state, phrase, Heard.How.PRESSED)));
  }

  private Answer put(Press press) {
    return switch (slot.put(press, PATIENCE_MILLIS)) {
      case TAKEN -> Answer.outcome(200, "taken", "");
      case STALE -> stale();
      case BUSY -> Answer.outcome(409, "busy", "Another press still waits.");
      case WITHDRAWN -> Answer.outcome(503, "late", "Not taken in time. Nothing was done.");
      case CLOSED -> Answer.outcome(503, "closed", "The session is over.");
    };
  }

  /** Asks for the same press once more, with a text for the page to act on. */
  private static Answer again(String id) {
    String json =
        JsonNodeFactory.instance
            .objectNode()
            .put("outcome", "again")
            .put("again", id)
            .put("soonest", SecondPress.SOONEST_MILLIS)
            .put("latest", SecondPress.LATEST_MILLIS)
            .toString();
    return new Answer(200, "application/json", json);
  }

  private static Answer stale() {
    return Answer.outcome(409, "stale", MOVED_ON);
  }
}
