package org.undercall.adapter.board;

import com.sun.net.httpserver.HttpExchange;
import java.util.Arrays;
import java.util.Optional;

/**
 * Decides whether a request may come in.
 *
 * @param hosts the names this board is called by
 * @param access which browsers are let in
 */
record Gate(Hosts hosts, Access access) {

  /** The refusal of a request that calls this board by a name that is not its own. */
  Optional<Answer> wrongHost(HttpExchange exchange) {
    return header(exchange, "Host").filter(hosts::known).isPresent()
        ? Optional.empty()
        : Optional.of(Answer.text(421, "This board is not called by that name."));
  }

  /** The refusal of a request that a page from elsewhere could have made. */
  Optional<Answer> notFromPage(HttpExchange exchange) {
    String host = header(exchange, "Host").orElse("");
    boolean origin = header(exchange, "Origin").filter(o -> Hosts.same(o, host)).isPresent();
    boolean site = header(exchange, "Sec-Fetch-Site").map("same-origin"::equals).orElse(true);
    if (!origin || !site) {
      return Optional.of(Answer.text(403, "Only the board's own page may do this."));
    }
    boolean json = header(exchange, "Content-Type").filter("application/json"::equals).isPresent();
    return json ? Optional.empty() : Optional.of(Answer.text(415, "Expected application/json."));
  }

  /** Whether the browser has been let in. */
  boolean open(HttpExchange exchange) {
    return access.knows(cookie(exchange));
  }

  /** The cookie that lets a browser in; ports share cookies, so it names its port. */
  String cookie(String word) {
    return cookieName() + "=" + word + "; HttpOnly; SameSite=Strict; Path=/";
  }

  private Optional<String> cookie(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", java.util.List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(";", -1)))
        .map(String::strip)
        .filter(pair -> pair.startsWith(cookieName() + "="))
        .map(pair -> pair.substring(cookieName().length() + 1))
        .findFirst();
  }

  private String cookieName() {
    return "undercall-board-" + hosts.port();
  }

  /** A header that must stand once; twice is as good as not at all. */
  private static Optional<String> header(HttpExchange exchange, String name) {
    return Optional.ofNullable(exchange.getRequestHeaders().get(name))
        .filter(values -> values.size() == 1)
        .map(values -> values.get(0));
  }
}
