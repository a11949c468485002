package org.undercall.web;

import com.sun.net.httpserver.HttpExchange;
import java.net.URI;
import java.util.Arrays;
import java.util.Optional;

/**
 * Decides whether a request may come in.
 *
 * @param hosts the names this page is called by
 * @param page the name of the page, of small letters, for its cookie
 */
public record Gate(Hosts hosts, String page) {

  /** The path, if nothing but a path was asked for: no other host, no query, no fragment. */
  public static String path(HttpExchange exchange) {
    URI uri = exchange.getRequestURI();
    boolean plain = uri.toString().equals(uri.getRawPath());
    return plain ? uri.getRawPath() : "";
  }

  /** The refusal of a request that calls this page by a name that is not its own. */
  public Optional<Answer> wrongHost(HttpExchange exchange) {
    return header(exchange, "Host").filter(hosts::known).isPresent()
        ? Optional.empty()
        : Optional.of(Answer.text(421, "This page is not called by that name."));
  }

  /** The refusal of a request that a page from elsewhere could have made. */
  public Optional<Answer> notFromPage(HttpExchange exchange) {
    String host = header(exchange, "Host").orElse("");
    boolean origin = header(exchange, "Origin").filter(o -> Hosts.same(o, host)).isPresent();
    boolean site = header(exchange, "Sec-Fetch-Site").map("same-origin"::equals).orElse(true);
    if (!origin || !site) {
      return Optional.of(Answer.text(403, "Only the page itself may do this."));
    }
    boolean json = header(exchange, "Content-Type").filter("application/json"::equals).isPresent();
    return json ? Optional.empty() : Optional.of(Answer.text(415, "Expected application/json."));
  }

  /** The cookie that lets a browser in; ports share cookies, so it names its port. */
  public String cookie(String word) {
    return cookieName() + "=" + word + "; HttpOnly; SameSite=Strict; Path=/";
  }

  /** The word of the cookie that a request carries; empty if it has none. */
  public Optional<String> cookie(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", java.util.List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(";", -1)))
        .map(String::strip)
        .filter(pair -> pair.startsWith(cookieName() + "="))
        .map(pair -> pair.substring(cookieName().length() + 1))
        .findFirst();
  }

  private String cookieName() {
    return "undercall-" + page + "-" + hosts.port();
  }

  /** A header that must stand once; twice is as good as not at all. */
  private static Optional<String> header(HttpExchange exchange, String name) {
    return Optional.ofNullable(exchange.getRequestHeaders().get(name))
        .filter(values -> values.size() == 1)
        .map(values -> values.get(0));
  }
}
