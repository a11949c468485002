package org.undercall.adapter.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.adapter.board.Pieces.raw;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@DisplayName("The server of the board, asked for what is not its own")
@Timeout(120)
class BoardAttacksTest extends ServedBoard {
  /** Paths that would lead to another file, if a path were looked up as one. */
  private static final List<String> PATHS =
      List.of(
          "/../board.css",
          "/../../../../etc/passwd",
          "/./../etc/passwd",
          "/board.css/../../etc/passwd",
          "/board.css/..",
          "/..",
          "/.",
          "/..;/board.css",
          "/..;/..;/etc/passwd",
          "/%2e%2e/etc/passwd",
          "/%2e%2e%2fetc%2fpasswd",
          "/..%2f..%2fetc%2fpasswd",
          "/%252e%252e%252fetc%252fpasswd",
          "/..%c0%afetc%c0%afpasswd",
          "/%c0%ae%c0%ae/etc/passwd",
          "/..%5c..%5cwindows%5cwin.ini",
          "/..\\..\\windows\\win.ini",
          "/\\..\\board.css",
          "/....//....//etc/passwd",
          "/.../.../etc/passwd",
          "/%u002e%u002e/etc/passwd",
          "//etc/passwd",
          "///board.css",
          "/etc/passwd",
          "/C:/windows/win.ini",
          "/file:///etc/passwd",
          "/proc/self/environ",
          "/board.css%00",
          "/board.css%00.html",
          "/%00",
          "/board.css%20",
          "/board.css.",
          "/BOARD.CSS",
          "/board.css::$DATA",
          "/board%2ecss",
          "/board.css?x=/../..",
          "/board.css#/../..",
          "/.git/config",
          "/log.jsonl",
          "/sessions/last/log.jsonl",
          "/Pages.class",
          "/META-INF/MANIFEST.MF",
          "/board.html",
          "/code.html",
          "/events/..",
          "/x%0d%0aSet-Cookie:%20a=b",
          "/x%0aSet-Cookie:%20a=b",
          "/%E2%80%AE",
          "*",
          "board.css");

  /** Names that are not this board's; %d stands for its port. */
  private static final List<String> HOSTS =
      List.of(
          "",
          "localhost",
          "localhost:",
          "localhost:1",
          "localhost:0%d",
          "localhost:%d0",
          "localhost:%d:%d",
          "localhost:%d@invented.example",
          "invented.example@localhost:%d",
          "user:pass@localhost:%d",
          "localhost.:%d",
          "localhost.invented.example:%d",
          "invented.example:%d",
          "invented.example#localhost:%d",
          "invented.example/localhost:%d",
          "invented.example?localhost:%d",
          "invented.example\\localhost:%d",
          "localhost:%d, invented.example",
          "localhost:%d invented.example",
          "http://localhost:%d",
          "//localhost:%d",
          "127.0.0.1.invented.example:%d",
          "127.1:%d",
          "127.0.1:%d",
          "2130706433:%d",
          "0x7f000001:%d",
          "0177.0.0.1:%d",
          "127.0.0.2:%d",
          "0.0.0.0:%d",
          "[::]:%d",
          "[::1]invented.example:%d",
          "[invented.example]:%d",
          "::1:%d",
          "local\u00ADhost:%d",
          "l%6fcalhost:%d",
          "localhost%%00:%d");

  private String status(String start, String... headers) throws IOException {
    return raw(port, start + "\r\n" + String.join("\r\n", headers) + "\r\n\r\n");
  }

  private String own() {
    return "Host: localhost:" + port;
  }

  @Test
  @DisplayName("gives no other file and no other header for any path")
  void paths() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String path : PATHS) {
      String line = status("GET " + path + " HTTP/1.1", own());
      if (!line.startsWith("HTTP/1.1 404") && !line.startsWith("HTTP/1.1 400")) {
        wrong.add(path + " gave " + line);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(status("GET / HTTP/1.1", own()).startsWith("HTTP/1.1 200"));
    System.out.printf("%d paths, %d host names%n", PATHS.size(), HOSTS.size());
  }

  @Test
  @DisplayName("refuses every name that is not its own")
  void hosts() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String host : HOSTS) {
      String name = host.replace("%d", Integer.toString(port)).replace("%%", "%");
      String line = status("GET / HTTP/1.1", "Host: " + name);
      if (!line.startsWith("HTTP/1.1 421") && !line.startsWith("HTTP/1.1 400")) {
        wrong.add(name + " gave " + line);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  @DisplayName("believes no other header and no second one about its name")
  void otherHeaders() throws IOException {
    String other = "Host: invented.example:" + port;
    for (String header :
        List.of(
            "X-Forwarded-Host", "X-Host", "Forwarded", "X-Original-URL", "X-HTTP-Host-Override")) {
      String line = status("GET / HTTP/1.1", other, header + ": localhost:" + port);
      assertTrue(line.startsWith("HTTP/1.1 421"), header + " gave " + line);
    }
    assertTrue(status("GET / HTTP/1.1", own(), other).startsWith("HTTP/1.1 4"));
    assertTrue(status("GET / HTTP/1.1", other, own()).startsWith("HTTP/1.1 4"));
    assertTrue(status("GET / HTTP/1.1").startsWith("HTTP/1.1 4"));
    String line = status("GET http://invented.example:" + port + "/ HTTP/1.1", own());
    assertTrue(line.startsWith("HTTP/1.1 4"), line);
  }
}
