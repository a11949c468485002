package org.undercall.adapter.board;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.undercall.web.Answer;

/**
 * Sends each page the newest state, whole, as server-sent events. A page that does not read holds
 * up its own thread only, and makes room when another page wants in.
 */
final class Streams {
  private static final int MOST = 32;

  /** The page takes the program for gone if it hears nothing for 5 s. */
  private static final long BEAT_MILLIS = 2000;

  private static final long STUCK_MILLIS = 10_000;

  private final BoardHub hub;
  private final LongSupplier clock;
  private final List<Stream> open = new ArrayList<>();

  Streams(BoardHub hub, LongSupplier clock) {
    this.hub = hub;
    this.clock = clock;
  }

  /** One page that is being sent to; {@code writing} is when the write at hand began, or -1. */
  private static final class Stream {
    private final Thread thread = Thread.currentThread();
    private volatile long writing = -1;
  }

  /** Sends states until the page goes away or the board is closed. */
  void serve(HttpExchange exchange) throws IOException {
    Stream stream = new Stream();
    if (exchange.getRequestMethod().equals("HEAD") || !enter(stream)) {
      Answer.text(503, "Too many pages show this board.").send(exchange);
      return;
    }
    try {
      Answer.safe(exchange.getResponseHeaders())
          .set("Content-Type", "text/event-stream; charset=utf-8");
      exchange.sendResponseHeaders(200, 0);
      send(stream, exchange.getResponseBody());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      leave(stream);
    }
  }

  private void send(Stream stream, OutputStream out) throws IOException, InterruptedException {
    long seen = 0;
    write(stream, out, "retry: 2000\n\n");
    while (!hub.closed()) {
      Optional<BoardHub.Shown> shown = hub.after(seen, BEAT_MILLIS);
      seen = shown.map(BoardHub.Shown::number).orElse(seen);
      if (shown.isPresent() || !hub.closed()) {
        write(stream, out, shown.map(this::state).orElse("event: beat\ndata: {}\n\n"));
      }
    }
    write(stream, out, "event: bye\ndata: {}\n\n");
  }

  private String state(BoardHub.Shown shown) {
    return "event: state\nid: "
        + shown.number()
        + "\ndata: {\"now\":"
        + shown.now(clock)
        + ",\"board\":"
        + shown.json()
        + "}\n\n";
  }

  private void write(Stream stream, OutputStream out, String text) throws IOException {
    stream.writing = clock.getAsLong();
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.flush();
    stream.writing = -1;
  }

  private synchronized boolean enter(Stream stream) {
    if (open.size() >= MOST) {
      stuck().ifPresent(this::drop);
    }
    return open.size() < MOST && open.add(stream);
  }

  private synchronized void leave(Stream stream) {
    open.remove(stream);
    Thread.interrupted();
  }

  private Optional<Stream> stuck() {
    long now = clock.getAsLong();
    return open.stream()
        .filter(s -> s.writing >= 0 && now - s.writing > STUCK_MILLIS)
        .min(Comparator.comparingLong(s -> s.writing));
  }

  /** An interrupted write closes its connection. */
  private void drop(Stream stream) {
    open.remove(stream);
    stream.thread.interrupt();
  }
}
