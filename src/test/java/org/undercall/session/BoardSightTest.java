package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.board.BoardServer;
import org.undercall.core.board.Board;
import org.undercall.core.board.BoardStates;
import org.undercall.core.decision.StepState;

/** Every state of {@link BoardStates} on screens of several sizes, in a real browser. */
@DisplayName("What is to be seen of the board")
@Timeout(900)
class BoardSightTest {
  private static final List<String> ONE_LOOK =
      List.of(
          "number", "side", "load", "load-holds", "headline", "lead", "digits", "unit", "verdict");

  private static Map<String, Board> states;
  private static Browser browser;
  private static BoardServer server;
  private static int shown;

  @BeforeAll
  static void start() throws Exception {
    assumeTrue(
        Browser.present(),
        "no " + Browser.CHROMIUM + " or no " + Browser.DRIVER + ": the page is not tried");
    states = BoardStates.all();
    browser =
        Browser.start(Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath());
    server = serve();
  }

  private static BoardServer serve() throws Exception {
    shown = 0;
    return BoardServer.start(new BoardServer.Settings(0, false, line -> {}, () -> 0));
  }

  @AfterAll
  static void stop() throws Exception {
    if (browser != null) {
      browser.close();
      server.close();
    }
  }

  private static void show(Board board) throws Exception {
    server.show(board);
    shown++;
    browser.until("document.body.dataset.shown === '" + shown + "'");
  }

  private static void open(int across, int down) throws Exception {
    browser.size(across, down);
    browser.open("http://localhost:" + server.port() + "/");
    show(states.get("do"));
    browser.eval("(() => {" + resource("/board/look.js") + "\n return true; })()");
    browser.eval("localStorage.clear()");
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = BoardSightTest.class.getResourceAsStream(name)) {
      return new String(
          Optional.ofNullable(in).orElseThrow().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static void none(String what, String look) throws Exception {
    JsonNode found = browser.eval("look." + look);
    assertEquals("[]", found.toString(), what + ": " + look);
  }

  private static void inEach(Look look) throws Exception {
    List<Executable> all = new ArrayList<>();
    for (Map.Entry<String, Board> state : states.entrySet()) {
      all.add(
          () -> {
            show(state.getValue());
            look.at(state.getKey(), state.getValue());
          });
    }
    assertAll(all);
  }

  private interface Look {
    void at(String name, Board board) throws Exception;
  }

  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({"1280, 800", "1024, 768", "1920, 1080", "390, 844", "844, 390", "768, 1024"})
  @DisplayName("no text is cut, covered or beyond the edge, and none lies on another")
  void whole(int across, int down) throws Exception {
    open(across, down);
    inEach(
        (name, board) -> {
          none(name, "cut()");
          none(name, "overlapping()");
        });
  }

  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({"1280, 800", "1024, 768", "1920, 1080", "390, 844"})
  @DisplayName("cautions and the origin of the values are there however far it is scrolled")
  void top(int across, int down) throws Exception {
    open(across, down);
    inEach((name, board) -> none(name, "top()"));
  }

  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({"1280, 800", "1024, 768", "1920, 1080"})
  @DisplayName("value, side, load, verdict and the step in the list need no hand on a screen")
  void atOnce(int across, int down) throws Exception {
    open(across, down);
    inEach(
        (name, board) -> {
          none(name, "first(" + quoted(ONE_LOOK) + ")");
          none(name, "list()");
          assertTrue(
              browser
                  .eval(
                      "(r => r.top >= 0 && r.bottom <= innerHeight)(document.querySelector("
                          + "'#steps [aria-current]').getBoundingClientRect())")
                  .asBoolean(),
              name);
        });
  }

  @Test
  @DisplayName("on a phone the list shows the step at hand by itself, and the next one")
  void listOnPhone() throws Exception {
    open(390, 844);
    inEach((name, board) -> none(name, "list()"));
  }

  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({"1280, 800", "1024, 768", "1920, 1080", "390, 844"})
  @DisplayName("the value or what to do now is the largest thing")
  void largest(int across, int down) throws Exception {
    open(across, down);
    inEach(
        (name, board) -> {
          JsonNode sizes = browser.eval("look.sizes()");
          boolean long_ = name.startsWith("long");
          assertTrue(
              long_ || sizes.get(0).asDouble() > sizes.get(1).asDouble(), name + " " + sizes);
        });
  }

  @Test
  @DisplayName("on a phone a glove hits what it means: 64 high, apart, closing far from cancelling")
  void gloves() throws Exception {
    open(390, 844);
    browser.eval("document.getElementById('more').open = true");
    inEach((name, board) -> none(name, "presses(64, 16, 48)"));
  }

  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({"1280, 800", "1920, 1080", "1024, 768"})
  @DisplayName("on a screen what closes stands apart from what cancels")
  void apart(int across, int down) throws Exception {
    open(across, down);
    browser.eval("document.getElementById('more').open = true");
    inEach((name, board) -> none(name, "presses(44, 8, 28)"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark"})
  @DisplayName("the colour of everything closed is there only if it is, and goes with the link")
  void green(String scheme) throws Exception {
    browser.prefers("prefers-color-scheme", scheme);
    open(1280, 800);
    assertEquals(scheme, browser.eval("document.documentElement.dataset.theme").asText());
    inEach(
        (name, board) -> {
          boolean open =
              board.walk().steps().stream().anyMatch(s -> s.status() != StepState.Status.CLOSED);
          assertEquals(!open, !browser.eval("look.done()").isEmpty(), name);
        });
    show(states.get("ended"));
    server.close();
    browser.until("document.body.dataset.link === 'lost'");
    none("lost", "done()");
    server = serve();
  }

  @Test
  @DisplayName("a program that ends is told at once, with the time, and presses do nothing")
  void ends() throws Exception {
    open(1280, 800);
    show(states.get("torque"));
    browser.eval("window.began = performance.now()");
    server.close();
    browser.until("!document.getElementById('lost').hidden");
    assertTrue(browser.eval("performance.now() - window.began").asDouble() < 1500);
    String words = browser.eval("document.getElementById('lost').innerText").asText();
    assertTrue(words.contains("Old: this is how it was at "), words);
    browser.eval("document.querySelector('[data-phrase]').click()");
    assertEquals(
        "No connection. Nothing was done.",
        browser.eval("document.getElementById('note').textContent").asText());
    server = serve();
  }

  @Test
  @DisplayName("a program that is silent, with the link standing, is told within six seconds")
  void silent() throws Exception {
    server.show(states.get("torque"));
    shown++;
    HttpServer mute =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 8);
    mute.setExecutor(Executors.newCachedThreadPool());
    mute.createContext("/", BoardSightTest::mute);
    mute.start();
    try {
      browser.size(1280, 800);
      browser.open("http://localhost:" + mute.getAddress().getPort() + "/");
      browser.until("document.body.dataset.link === 'open'");
      browser.eval("window.began = performance.now()");
      browser.until("document.body.dataset.link === 'lost'");
      assertTrue(browser.eval("performance.now() - window.began").asDouble() < 6000);
    } finally {
      mute.stop(0);
    }
  }

  /** The board's own page, with one state and then nothing. */
  private static void mute(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    if (path.equals("/events")) {
      exchange.getResponseHeaders().add("Content-Type", "text/event-stream");
      exchange.sendResponseHeaders(200, 0);
      exchange.getResponseBody().write(oneState().getBytes(StandardCharsets.UTF_8));
      exchange.getResponseBody().flush();
      return;
    }
    String file = path.equals("/") ? "board.html" : path.substring(1);
    String type =
        file.endsWith("js") ? "text/javascript" : file.endsWith("css") ? "text/css" : "text/html";
    exchange
        .getResponseHeaders()
        .add("Content-Type", file.endsWith("svg") ? "image/svg+xml" : type);
    boolean common = file.equals("theme.js") || file.equals("colours.css");
    String folder = common ? "/org/undercall/web/" : "/org/undercall/adapter/board/";
    byte[] body = resource(folder + file).getBytes(StandardCharsets.UTF_8);
    exchange.sendResponseHeaders(200, body.length);
    exchange.getResponseBody().write(body);
    exchange.close();
  }

  /** The newest state, as the board's own server sends it. */
  private static String oneState() throws IOException {
    URI events = URI.create("http://localhost:" + server.port() + "/events");
    try (InputStream in = events.toURL().openStream();
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      String line = lines.readLine();
      while (!line.startsWith("data: ")) {
        line = lines.readLine();
      }
      return "event: state\nid: 1\n" + line + "\n\n";
    }
  }

  @ParameterizedTest(name = "{0} by {1}, {2}")
  @CsvSource({"1280, 800, light", "1280, 800, dark", "390, 844, light", "390, 844, dark"})
  @DisplayName("axe-core finds nothing")
  void accessible(int across, int down, String scheme) throws Exception {
    browser.prefers("prefers-color-scheme", scheme);
    open(across, down);
    browser.eval("document.getElementById('more').open = true");
    browser.eval("(function () {" + resource("/axe.min.js") + "\n; return axe.version; })()");
    inEach(
        (name, board) -> {
          browser.eval(
              "(window.found = undefined, axe.run().then(r => { window.found = r; }), true)");
          browser.until("window.found !== undefined");
          assertTrue(browser.eval("window.found.passes.length").asInt() > 10, name);
          JsonNode wrong =
              browser.eval(
                  "window.found.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' '))");
          assertEquals("[]", wrong.toString(), name);
        });
  }

  @Test
  @DisplayName(
      "what is heard and said is told to a screen reader, and nothing runs if less motion is wanted")
  void told() throws Exception {
    browser.prefers("prefers-reduced-motion", "reduce");
    open(1280, 800);
    for (String id : List.of("said", "verdict")) {
      assertEquals(
          "polite",
          browser
              .eval("document.getElementById('" + id + "').closest('[aria-live]').ariaLive")
              .asText());
    }
    browser.eval("document.querySelector('[data-twice=true]').dataset.armed = 'true'");
    assertEquals("0", browser.eval("document.getAnimations().length").asText());
    browser.prefers("prefers-reduced-motion", "no-preference");
    assertEquals("1", browser.eval("document.getAnimations().length").asText());
  }

  private static String quoted(List<String> ids) {
    return "['" + String.join("','", ids) + "']";
  }
}
