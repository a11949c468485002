package org.undercall.command.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.desk.DeskCode;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import org.undercall.session.Practice;

/** The rehearsals of the pages, one each; nothing of them is kept. */
final class DeskPractice {
  private static final int MOST = 8;
  private static final int LONGEST_PHRASE = 300;

  private final Map<Integer, Practice> open = new HashMap<>();
  private int last;

  /** Begins one, and ends the oldest if there are many. */
  synchronized JsonNode begin(Optional<Procedure> procedure) throws Fault {
    if (procedure.isEmpty()) {
      throw new Fault(
          DeskCode.NO_PRACTICE, "the procedure", "faults", "none: with one it cannot be walked");
    }
    open.put(++last, Practice.of(procedure.get()));
    Optional.ofNullable(open.remove(last - MOST)).ifPresent(Practice::close);
    return lines(last, open.get(last), 0);
  }

  /** Says a phrase: {@code number}, {@code phrase}, and {@code from}, the lines that are known. */
  JsonNode say(JsonNode asked) throws Fault {
    Practice practice = of(asked);
    String phrase = asked.path("phrase").asText().strip();
    if (phrase.isEmpty() || phrase.length() > LONGEST_PHRASE) {
      throw new Fault(DeskCode.NOT_READ, "the phrase", phrase.length() + " characters", "1 to 300");
    }
    practice.say(phrase);
    return heard(asked);
  }

  /** What was said since: {@code number} and {@code from}. */
  JsonNode heard(JsonNode asked) throws Fault {
    return lines(asked.path("number").asInt(), of(asked), asked.path("from").asInt());
  }

  private synchronized Practice of(JsonNode asked) throws Fault {
    Practice practice = open.get(asked.path("number").asInt());
    if (practice == null) {
      throw new Fault(DeskCode.NO_PRACTICE, "the rehearsal", "none of that number", "one begun");
    }
    return practice;
  }

  private static JsonNode lines(int number, Practice practice, int from) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("number", number).put("ended", practice.ended());
    ArrayNode lines = json.putArray("lines");
    practice
        .from(from)
        .forEach(
            line ->
                lines
                    .addObject()
                    .put("typed", line.typed())
                    .put("words", line.words())
                    .put("id", line.ref()));
    return json;
  }
}
