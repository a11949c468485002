package org.undercall.adapter.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.adapter.board.Pieces.MILLIS;
import static org.undercall.adapter.board.Pieces.get;
import static org.undercall.adapter.board.Pieces.next;
import static org.undercall.adapter.board.Pieces.post;
import static org.undercall.adapter.board.Pieces.raw;

import java.io.BufferedReader;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

@DisplayName("The server of the board")
@Timeout(60)
class BoardServerTest extends ServedBoard {
  @Nested
  @DisplayName("on this machine")
  class Loopback {
    @Test
    @DisplayName("sends its page with a policy that lets nothing else in")
    void page() throws Exception {
      HttpResponse<String> page = get(port, "/");
      assertEquals(200, page.statusCode());
      assertTrue(page.body().contains("<title>Undercall board</title>"));
      String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none'; script-src 'self'"), policy);
      assertTrue(policy.contains("frame-ancestors 'none'"), policy);
      assertFalse(policy.contains("unsafe"), policy);
      assertEquals("nosniff", page.headers().firstValue("X-Content-Type-Options").orElse(""));
      assertEquals("no-referrer", page.headers().firstValue("Referrer-Policy").orElse(""));
      assertTrue(page.headers().firstValue("Access-Control-Allow-Origin").isEmpty());
      assertEquals(List.of("Board: http://localhost:" + port + "/ (this machine only)"), console);
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example:%d", "localhost", "localhost:1", "127.0.0.1.evil:%d", ""})
    @DisplayName("refuses a request that calls it by another name")
    void host(String host) throws Exception {
      String named = host.replace("%d", Integer.toString(port));
      String status = raw(port, "GET / HTTP/1.1\r\nHost: " + named + "\r\n\r\n");
      assertTrue(status.startsWith("HTTP/1.1 421"), status);
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]", "LOCALHOST"})
    @DisplayName("answers to its own names")
    void ownNames(String name) throws Exception {
      String status = raw(port, "GET / HTTP/1.1\r\nHost: " + name + ":" + port + "\r\n\r\n");
      assertTrue(status.startsWith("HTTP/1.1 200"), status);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "/../board.css",
          "/..%2fboard.css",
          "/%2e%2e/Pages.class",
          "//board.css",
          "/board.html",
          "/Pages.class",
          "/code",
          "/board.css/",
          "/?a=b",
          "/etc/passwd"
        })
    @DisplayName("has no other pages than its own")
    void traversal(String path) throws Exception {
      String status =
          raw(port, "GET " + path + " HTTP/1.1\r\nHost: localhost:" + port + "\r\n\r\n");
      assertTrue(status.startsWith("HTTP/1.1 404") || status.startsWith("HTTP/1.1 400"), status);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"http://evil.example", "null", "https://localhost:%d", "http://localhost:1"})
    @DisplayName("takes no press from another page")
    void origin(String origin) throws Exception {
      String body = press("say again", "");
      String status =
          raw(
              port,
              "POST /press HTTP/1.1\r\nHost: localhost:"
                  + port
                  + "\r\nOrigin: "
                  + origin.replace("%d", Integer.toString(port))
                  + "\r\nContent-Type: application/json\r\nContent-Length: "
                  + body.length()
                  + "\r\n\r\n"
                  + body);
      assertTrue(status.startsWith("HTTP/1.1 403"), status);
    }

    @Test
    @DisplayName("takes no form, no other method and no large or broken body")
    void bodies() throws Exception {
      assertEquals(404, post(port, "/", "{}").statusCode());
      assertEquals(403, post(port, "/press", "{}", "Sec-Fetch-Site", "cross-site").statusCode());
      assertEquals(413, post(port, "/press", "{\"a\":\"" + "x".repeat(3000) + "\"}").statusCode());
      assertEquals(400, post(port, "/press", "{\"a\":").statusCode());
      assertEquals(400, post(port, "/press", "[1]").statusCode());
      assertEquals(400, post(port, "/press", "{}").statusCode());
      String delete = raw(port, "DELETE / HTTP/1.1\r\nHost: localhost:" + port + "\r\n\r\n");
      assertTrue(delete.startsWith("HTTP/1.1 405"), delete);
      String form =
          raw(
              port,
              "POST /press HTTP/1.1\r\nHost: localhost:"
                  + port
                  + "\r\nOrigin: http://localhost:"
                  + port
                  + "\r\nContent-Type: text/plain\r\nContent-Length: 2\r\n\r\n{}");
      assertTrue(form.startsWith("HTTP/1.1 415"), form);
    }

    @Test
    @DisplayName("says plainly that a port is in use")
    void portInUse() {
      Fault fault =
          assertThrows(
              Fault.class,
              () ->
                  BoardServer.start(
                      new BoardServer.Settings(port, false, console::add, MILLIS::get)));
      assertEquals(BoardCode.PORT, fault.code());
      assertTrue(fault.getMessage().startsWith("BRD-001 port " + port + ": "), fault.getMessage());
    }
  }

  @Nested
  @DisplayName("on the network")
  class Network {
    @BeforeEach
    void again() throws Fault {
      server.close();
      console.clear();
      serve(true);
    }

    private String code() {
      String line = console.get(console.size() - 1);
      return line.substring(line.indexOf(": ") + 2);
    }

    private HttpResponse<String> enter(String code) throws Exception {
      return post(port, "/code", "{\"code\":\"" + code + "\"}");
    }

    @Test
    @DisplayName("prints its addresses, what is exposed and a code")
    void prints() {
      assertTrue(console.contains("Board: http://127.0.0.1:" + port + "/"), console.toString());
      assertTrue(console.stream().anyMatch(line -> line.contains("press buttons that act on it")));
      assertTrue(code().matches("\\d{4} \\d{4}"), code());
    }

    @Test
    @DisplayName("shows nothing and takes nothing without the code")
    void closed() throws Exception {
      assertTrue(get(port, "/").body().contains("Code from the console"));
      assertEquals(401, get(port, "/events").statusCode());
      assertEquals(401, post(port, "/press", press("say again", "")).statusCode());
      String forged = "undercall-board-" + port + "=guessed";
      assertEquals(401, get(port, "/events", "Cookie", forged).statusCode());
    }

    @Test
    @DisplayName("lets one browser in for each code, by a cookie that scripts cannot read")
    void entered() throws Exception {
      String code = code();
      HttpResponse<String> in = enter(code);
      assertEquals(200, in.statusCode());
      String cookie = in.headers().firstValue("Set-Cookie").orElse("");
      assertTrue(cookie.endsWith("; HttpOnly; SameSite=Strict; Path=/"), cookie);
      String pair = cookie.substring(0, cookie.indexOf(';'));
      assertFalse(get(port, "/", "Cookie", pair).body().contains("Code from the console"));
      try (BufferedReader events = Pieces.events(port, "Cookie", pair)) {
        assertEquals("1", next(events, "id: "));
      }
      assertEquals(403, enter(code).statusCode());
      assertFalse(code().equals(code));
    }

    @Test
    @DisplayName("lets nobody try many codes")
    void rate() throws Exception {
      for (int i = 0; i < 5; i++) {
        assertEquals(403, enter("1").statusCode());
      }
      assertEquals(429, enter(code()).statusCode());
      MILLIS.addAndGet(20_000);
      assertEquals(200, enter(code()).statusCode());
    }

    @Test
    @DisplayName("makes a new code after ten wrong ones")
    void newCode() throws Exception {
      String code = code();
      for (int i = 0; i < 10; i++) {
        MILLIS.addAndGet(20_000);
        enter("1");
      }
      assertFalse(code().equals(code));
    }

    @Test
    @DisplayName("still refuses a name that is not its own")
    void host() throws Exception {
      String status = raw(port, "GET / HTTP/1.1\r\nHost: evil.example:" + port + "\r\n\r\n");
      assertTrue(status.startsWith("HTTP/1.1 421"), status);
    }
  }
}
