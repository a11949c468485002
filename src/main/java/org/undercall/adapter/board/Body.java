package org.undercall.adapter.board;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The body of a request, of limited size.
 *
 * @param json a JSON object, if there is no refusal
 * @param refusal why it is not accepted
 */
record Body(JsonNode json, Optional<Answer> refusal) {
  /** The largest body, in bytes. */
  static final int MOST_BYTES = 2048;

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Reads the body of a request. */
  static Body of(HttpExchange exchange) throws IOException {
    byte[] bytes = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      return refused(Answer.text(413, "Expected at most " + MOST_BYTES + " bytes."));
    }
    try {
      JsonNode json = JSON.readTree(new String(bytes, StandardCharsets.UTF_8));
      return json.isObject()
          ? new Body(json, Optional.empty())
          : refused(Answer.text(400, "Expected a JSON object."));
    } catch (JsonProcessingException e) {
      return refused(Answer.text(400, "Expected a JSON object."));
    }
  }

  private static Body refused(Answer answer) {
    return new Body(MissingNode.getInstance(), Optional.of(answer));
  }
}
