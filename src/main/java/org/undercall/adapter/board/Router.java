package org.undercall.adapter.board;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.undercall.web.Answer;
import org.undercall.web.Body;
import org.undercall.web.Gate;
import org.undercall.web.Hosts;
import org.undercall.web.Pages;

/** Answers the few paths there are; a path is compared as a whole and never looked up as a file. */
final class Router implements HttpHandler {
  /** The largest body, in bytes. */
  static final int MOST_BYTES = 2048;

  private static final Map<String, String> FILES =
      Map.ofEntries(
          Map.entry("/", "board.html"),
          Map.entry("/code", "code.html"),
          Map.entry("/board.css", "board.css"),
          Map.entry("/colours.css", "/org/undercall/web/colours.css"),
          Map.entry("/board.js", "board.js"),
          Map.entry("/draw.js", "draw.js"),
          Map.entry("/shapes.js", "shapes.js"),
          Map.entry("/words.js", "words.js"),
          Map.entry("/press.js", "press.js"),
          Map.entry("/theme.js", "/org/undercall/web/theme.js"),
          Map.entry("/code.js", "code.js"),
          Map.entry("/board.svg", "board.svg"));

  private final Gate gate;
  private final Access access;
  private final Presses presses;
  private final Streams streams;
  private final Pages pages = new Pages(Router.class, FILES);

  /**
   * Answers for a board.
   *
   * @param access which browsers are let in
   */
  Router(Hosts hosts, Access access, Presses presses, Streams streams) {
    this.gate = new Gate(hosts, "board");
    this.access = access;
    this.presses = presses;
    this.streams = streams;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    Optional<Answer> refused = gate.wrongHost(exchange);
    if (refused.isPresent()) {
      refused.get().send(exchange);
    } else {
      answer(exchange);
    }
  }

  private void answer(HttpExchange exchange) throws IOException {
    String path = Gate.path(exchange);
    switch (exchange.getRequestMethod()) {
      case "GET", "HEAD" -> get(exchange, path);
      case "POST" -> post(exchange, path).send(exchange);
      default -> Answer.text(405, "Expected GET or POST.").send(exchange);
    }
  }

  private boolean open(HttpExchange exchange) {
    return access.knows(gate.cookie(exchange));
  }

  private void get(HttpExchange exchange, String path) throws IOException {
    if (path.equals("/events") && !open(exchange)) {
      Answer.text(401, "This browser has not been let in.").send(exchange);
    } else if (path.equals("/events")) {
      streams.serve(exchange);
    } else {
      String page = path.equals("/") && !open(exchange) ? "/code" : path;
      boolean hidden = path.equals("/code");
      Optional<Answer> found = hidden ? Optional.empty() : pages.at(page);
      found.orElseGet(() -> Answer.text(404, "There is no such page.")).send(exchange);
    }
  }

  private Answer post(HttpExchange exchange, String path) throws IOException {
    if (!path.equals("/press") && !path.equals("/code")) {
      return Answer.text(404, "There is no such page.");
    }
    Optional<Answer> refused = gate.notFromPage(exchange);
    if (refused.isPresent()) {
      return refused.get();
    }
    if (path.equals("/press") && !open(exchange)) {
      return Answer.text(401, "This browser has not been let in.");
    }
    boolean allowed = path.equals("/press") ? presses.mayPress() : access.mayTry();
    if (!allowed) {
      return Answer.outcome(429, "slow", "Too many at once. Wait a little.");
    }
    Body body = Body.of(exchange, MOST_BYTES);
    return body.refusal().orElseGet(() -> act(exchange, path, body.json()));
  }

  private Answer act(HttpExchange exchange, String path, JsonNode json) {
    return path.equals("/press") ? presses.press(json) : enter(exchange, json);
  }

  private Answer enter(HttpExchange exchange, JsonNode json) {
    Optional<String> word = access.enter(json.path("code").asText());
    word.ifPresent(w -> exchange.getResponseHeaders().add("Set-Cookie", gate.cookie(w)));
    return word.isPresent()
        ? Answer.outcome(200, "in", "")
        : Answer.outcome(403, "wrong", "That is not the code. Read the console again.");
  }
}
