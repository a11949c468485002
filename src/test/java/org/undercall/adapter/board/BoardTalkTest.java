package org.undercall.adapter.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.adapter.board.Pieces.MILLIS;
import static org.undercall.adapter.board.Pieces.next;
import static org.undercall.adapter.board.Pieces.post;

import java.io.BufferedReader;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.undercall.port.Heard;

@DisplayName("The server of the board")
@Timeout(60)
class BoardTalkTest extends ServedBoard {
  @Nested
  @DisplayName("sends events")
  class Events {
    @Test
    @DisplayName("whole on every connection, numbered, and newer ones as they come")
    void whole() throws Exception {
      try (BufferedReader first = Pieces.events(port)) {
        assertEquals("2000", next(first, "retry: "));
        assertEquals("1", next(first, "id: "));
        assertTrue(next(first, "data: ").contains("\"phase\":\"briefing\""));
        play.says("cautions understood");
        server.show(play.board());
        assertEquals("2", next(first, "id: "));
        try (BufferedReader reloaded = Pieces.events(port, "Last-Event-ID", "2")) {
          assertEquals("2", next(reloaded, "id: "));
          assertTrue(next(reloaded, "data: ").contains("\"phase\":\"measure\""));
        }
      }
    }

    @Test
    @DisplayName("with the session's clock, moved on to the moment of sending")
    void clock() throws Exception {
      long now = play.board().times().now().toEpochMilli();
      MILLIS.addAndGet(5000);
      try (BufferedReader events = Pieces.events(port)) {
        String data = next(events, "data: ");
        assertTrue(data.startsWith("{\"now\":" + (now + 5000) + ","), data);
      }
    }

    @Test
    @DisplayName("on one line, whatever a text holds")
    void oneLine() throws Exception {
      play.says("cautions understood", "take a note", "a\nid: 99\n\ndata: </script> \u2028 <b>");
      server.show(play.board());
      try (BufferedReader events = Pieces.events(port)) {
        assertEquals("2", next(events, "id: "));
        assertTrue(events.readLine().startsWith("data: "));
        assertEquals("", events.readLine());
      }
    }

    @Test
    @DisplayName("to others while one page reads nothing, and never waits for it")
    void deadPage() throws Exception {
      try (Socket dead = new Socket("localhost", port);
          BufferedReader events = Pieces.events(port)) {
        dead.setReceiveBufferSize(1024);
        dead.getOutputStream()
            .write(
                ("GET /events HTTP/1.1\r\nHost: localhost:" + port + "\r\n\r\n")
                    .getBytes(StandardCharsets.UTF_8));
        for (int i = 0; i < 2000; i++) {
          server.show(play.board());
        }
        String id = next(events, "id: ");
        while (!id.equals("2001")) {
          id = next(events, "id: ");
        }
      }
    }

    @Test
    @DisplayName("and a farewell when the program ends")
    void farewell() throws Exception {
      try (BufferedReader events = Pieces.events(port)) {
        assertEquals("1", next(events, "id: "));
        server.close();
        assertEquals("bye", next(events, "event: "));
      }
    }
  }

  @Nested
  @DisplayName("takes a press")
  class Taking {
    private CompletableFuture<HttpResponse<String>> posted(String body) {
      return CompletableFuture.supplyAsync(
          () -> {
            try {
              return post(port, "/press", body);
            } catch (java.io.IOException | InterruptedException e) {
              throw new IllegalStateException(e);
            }
          });
    }

    private Press taken() {
      long state = play.board().times().state();
      Optional<Press> press = server.presses().take(state);
      while (press.isEmpty() && !Thread.currentThread().isInterrupted()) {
        Thread.onSpinWait();
        press = server.presses().take(state);
      }
      return press.orElseThrow();
    }

    private String again(String phrase, String id) throws Exception {
      HttpResponse<String> answer =
          post(port, "/press", press(phrase, ",\"again\":\"" + id + "\""));
      assertTrue(answer.body().contains("\"outcome\":\"again\""), answer.body());
      return answer.body().replaceFirst(".*\"again\":\"([^\"]+)\".*", "$1");
    }

    @Test
    @DisplayName("of a question at once")
    void question() throws Exception {
      CompletableFuture<HttpResponse<String>> answer = posted(press("say again", ""));
      assertEquals(new Press(0, "say again", Heard.How.PRESSED), taken());
      assertTrue(answer.get().body().contains("\"outcome\":\"taken\""));
    }

    @Test
    @DisplayName("that closes only when it comes a second time, neither too soon nor too late")
    void second() throws Exception {
      String id = again("cautions understood", "");
      MILLIS.addAndGet(399);
      assertEquals(id, again("cautions understood", id));
      MILLIS.addAndGet(5000);
      String later = again("cautions understood", id);
      assertFalse(later.equals(id));
      MILLIS.addAndGet(400);
      CompletableFuture<HttpResponse<String>> answer =
          posted(press("cautions understood", ",\"again\":\"" + later + "\""));
      assertEquals("cautions understood", taken().words());
      assertEquals(200, answer.get().statusCode());
      again("cautions understood", later);
    }

    @Test
    @DisplayName("only for the state it was made for, and only of a button that is there")
    void stale() throws Exception {
      String old = press("say again", "");
      play.says("cautions understood");
      server.show(play.board());
      HttpResponse<String> answer = post(port, "/press", old);
      assertEquals(409, answer.statusCode());
      assertTrue(answer.body().contains("\"outcome\":\"stale\""), answer.body());
      assertEquals(409, post(port, "/press", press("torque reached", "")).statusCode());
      assertEquals(Optional.empty(), server.presses().take(2));
    }

    @Test
    @DisplayName("not twice at once: the other is told that one waits")
    void busy() throws Exception {
      CompletableFuture<HttpResponse<String>> first = posted(press("say again", ""));
      CompletableFuture<HttpResponse<String>> second = posted(press("say again", ""));
      Object one = CompletableFuture.anyOf(first, second).get();
      assertTrue(((HttpResponse<?>) one).body().toString().contains("\"outcome\":\"busy\""));
      assertEquals("say again", taken().words());
      assertEquals(
          List.of(200, 409),
          Stream.of(first.get(), second.get()).map(HttpResponse::statusCode).sorted().toList());
    }

    @Test
    @DisplayName("typed in the field as typed, and not more than so many a second")
    void typed() throws Exception {
      CompletableFuture<HttpResponse<String>> answer =
          posted("{\"state\":0,\"phrase\":\"torque reached 62\"}");
      assertEquals(new Press(0, "torque reached 62", Heard.How.TYPED), taken());
      assertEquals(200, answer.get().statusCode());
      for (int i = 0; i < 9; i++) {
        assertEquals(400, post(port, "/press", "{}").statusCode());
      }
      assertEquals(429, post(port, "/press", "{}").statusCode());
      MILLIS.addAndGet(250);
      assertEquals(400, post(port, "/press", "{}").statusCode());
    }

    @Test
    @DisplayName("no more once the program ends")
    void ends() throws Exception {
      CompletableFuture<HttpResponse<String>> answer = posted(press("say again", ""));
      server.presses().close();
      assertTrue(answer.get().body().contains("\"outcome\":\"closed\""), answer.get().body());
    }
  }
}
