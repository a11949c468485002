package org.undercall.adapter.board;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.net.URI;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Answers the few paths there are; a path is compared as a whole and never looked up as a file. */
final class Router implements HttpHandler {
  private final Gate gate;
  private final Presses presses;
  private final Streams streams;
  private final Pages pages = new Pages();
  private int running;

  Router(Gate gate, Presses presses, Streams streams) {
    this.gate = gate;
    this.presses = presses;
    this.streams = streams;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    count(1);
    try {
      Optional<Answer> refused = gate.wrongHost(exchange);
      if (refused.isPresent()) {
        refused.get().send(exchange);
      } else {
        answer(exchange);
      }
    } finally {
      exchange.close();
      count(-1);
    }
  }

  private synchronized void count(int more) {
    running += more;
    notifyAll();
  }

  /** Waits until every answer has been sent, but not longer than this. */
  synchronized void finish(long millis) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    for (long left = millis; running > 0 && left > 0; ) {
      wait(left);
      left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
    }
  }

  private void answer(HttpExchange exchange) throws IOException {
    String path = path(exchange.getRequestURI());
    switch (exchange.getRequestMethod()) {
      case "GET", "HEAD" -> get(exchange, path);
      case "POST" -> post(exchange, path).send(exchange);
      default -> Answer.text(405, "Expected GET or POST.").send(exchange);
    }
  }

  /** The path, if nothing but a path was asked for: no other host, no query, no fragment. */
  private static String path(URI uri) {
    boolean plain = uri.toString().equals(uri.getRawPath());
    return plain ? uri.getRawPath() : "";
  }

  private void get(HttpExchange exchange, String path) throws IOException {
    if (path.equals("/events") && !gate.open(exchange)) {
      Answer.text(401, "This browser has not been let in.").send(exchange);
    } else if (path.equals("/events")) {
      streams.serve(exchange);
    } else {
      String page = path.equals("/") && !gate.open(exchange) ? "/code" : path;
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
    if (path.equals("/press") && !gate.open(exchange)) {
      return Answer.text(401, "This browser has not been let in.");
    }
    boolean allowed = path.equals("/press") ? presses.mayPress() : gate.access().mayTry();
    if (!allowed) {
      return Answer.outcome(429, "slow", "Too many at once. Wait a little.");
    }
    Body body = Body.of(exchange);
    return body.refusal().orElseGet(() -> act(exchange, path, body.json()));
  }

  private Answer act(HttpExchange exchange, String path, JsonNode json) {
    return path.equals("/press") ? presses.press(json) : enter(exchange, json);
  }

  private Answer enter(HttpExchange exchange, JsonNode json) {
    Optional<String> word = gate.access().enter(json.path("code").asText());
    word.ifPresent(w -> exchange.getResponseHeaders().add("Set-Cookie", gate.cookie(w)));
    return word.isPresent()
        ? Answer.outcome(200, "in", "")
        : Answer.outcome(403, "wrong", "That is not the code. Read the console again.");
  }
}
