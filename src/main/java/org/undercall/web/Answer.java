package org.undercall.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * An answer to a request.
 *
 * @param status the HTTP status
 * @param type the content type
 * @param body what is sent, as UTF-8
 */
public record Answer(int status, String type, String body) {
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self';"
          + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  /** A short text. */
  public static Answer text(int status, String text) {
    return new Answer(status, "text/plain; charset=utf-8", text + "\n");
  }

  /** What became of a request, for the page to act on and to show. */
  public static Answer outcome(int status, String outcome, String message) {
    String json =
        JsonNodeFactory.instance
            .objectNode()
            .put("outcome", outcome)
            .put("message", message)
            .toString();
    return new Answer(status, "application/json", json);
  }

  /** Sends it and ends the exchange. */
  public void send(HttpExchange exchange) throws IOException {
    safe(exchange.getResponseHeaders()).set("Content-Type", type);
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    boolean bare = exchange.getRequestMethod().equals("HEAD");
    exchange.sendResponseHeaders(status, bare ? -1 : bytes.length);
    if (!bare) {
      exchange.getResponseBody().write(bytes);
    }
    exchange.close();
  }

  /** The headers that every answer carries. */
  public static Headers safe(Headers headers) {
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
    return headers;
  }
}
