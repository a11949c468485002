package org.undercall.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
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
public record Body(JsonNode json, Optional<Answer> refusal) {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  /**
   * Reads the body of a request.
   *
   * @param most how large it may be, in bytes
   */
  public static Body of(HttpExchange exchange, int most) throws IOException {
    byte[] bytes = exchange.getRequestBody().readNBytes(most + 1);
    if (bytes.length > most) {
      return refused(Answer.text(413, "Expected at most " + most + " bytes."));
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
