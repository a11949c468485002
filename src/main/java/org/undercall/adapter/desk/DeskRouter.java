package org.undercall.adapter.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.undercall.port.Fault;
import org.undercall.web.Answer;
import org.undercall.web.Body;
import org.undercall.web.Gate;
import org.undercall.web.Hosts;
import org.undercall.web.Pages;
import org.undercall.web.Secrets;

/** Answers the few paths there are, to the browser that was opened with the printed address. */
final class DeskRouter implements HttpHandler {
  /** The largest body, in bytes: a procedure of 2 MB, and some words around it. */
  static final int MOST_BYTES = 3 * 1024 * 1024;

  /** What the printed address has before its secret. */
  static final String OPEN = "/open/";

  private static final Map<String, String> FILES =
      Map.ofEntries(
          Map.entry("/", "desk.html"),
          Map.entry("/desk.css", "desk.css"),
          Map.entry("/colours.css", "/org/undercall/web/colours.css"),
          Map.entry("/theme.js", "/org/undercall/web/theme.js"),
          Map.entry("/desk.js", "desk.js"),
          Map.entry("/ask.js", "ask.js"),
          Map.entry("/draft.js", "draft.js"),
          Map.entry("/tree.js", "tree.js"),
          Map.entry("/schema.js", "schema.js"),
          Map.entry("/form.js", "form.js"),
          Map.entry("/fields.js", "fields.js"),
          Map.entry("/steps.js", "steps.js"),
          Map.entry("/blocks.js", "blocks.js"),
          Map.entry("/findings.js", "findings.js"),
          Map.entry("/saving.js", "saving.js"),
          Map.entry("/practice.js", "practice.js"),
          Map.entry("/schema.json", "/org/undercall/schema/whole-procedure.schema.json"),
          Map.entry("/desk.svg", "/org/undercall/adapter/desk/desk.svg"));

  private final Gate gate;
  private final String secret;
  private final DeskActs acts;
  private final Pages pages = new Pages(DeskRouter.class, FILES);

  DeskRouter(Hosts hosts, String secret, DeskActs acts) {
    this.gate = new Gate(hosts, "desk");
    this.secret = secret;
    this.acts = acts;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    answer(exchange, Gate.path(exchange)).send(exchange);
  }

  private Answer answer(HttpExchange exchange, String path) throws IOException {
    Optional<Answer> refused = gate.wrongHost(exchange);
    if (refused.isPresent()) {
      return refused.get();
    }
    return switch (exchange.getRequestMethod()) {
      case "GET", "HEAD" -> get(exchange, path);
      case "POST" -> post(exchange, path);
      default -> Answer.text(405, "Expected GET or POST.");
    };
  }

  private Answer get(HttpExchange exchange, String path) {
    if (path.startsWith(OPEN) && Secrets.same(path.substring(OPEN.length()), secret)) {
      exchange.getResponseHeaders().add("Set-Cookie", gate.cookie(secret));
      exchange.getResponseHeaders().add("Location", "/");
      return Answer.text(303, "Here.");
    }
    if (!isIn(exchange)) {
      return Answer.text(401, "Open the address that the program printed when it was started.");
    }
    return pages.at(path).orElseGet(() -> Answer.text(404, "There is no such page."));
  }

  private boolean isIn(HttpExchange exchange) {
    return gate.cookie(exchange).filter(word -> Secrets.same(word, secret)).isPresent();
  }

  private Answer post(HttpExchange exchange, String path) throws IOException {
    Optional<Answer> refused = gate.notFromPage(exchange);
    if (refused.isPresent()) {
      return refused.get();
    }
    if (!isIn(exchange)) {
      return Answer.text(401, "This browser was not opened with the printed address.");
    }
    DeskActs.Act act = acts.byPath().get(path);
    if (act == null) {
      return Answer.text(404, "There is no such act.");
    }
    Body body = Body.of(exchange, MOST_BYTES);
    return body.refusal().orElseGet(() -> done(act, body.json()));
  }

  private static Answer done(DeskActs.Act act, JsonNode asked) {
    try {
      return new Answer(200, "application/json", act.answer(asked).toString());
    } catch (Fault e) {
      ObjectNode refused = JsonNodeFactory.instance.objectNode();
      ArrayNode faults = refused.putArray("faults");
      e.findings()
          .forEach(
              found ->
                  faults
                      .addObject()
                      .put("code", found.code().id())
                      .put("meaning", found.code().meaning())
                      .put("place", found.place().toString())
                      .put("told", found.told()));
      return new Answer(409, "application/json", refused.toString());
    }
  }
}
