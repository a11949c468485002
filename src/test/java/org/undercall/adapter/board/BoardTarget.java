package org.undercall.adapter.board;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.undercall.core.board.BoardPlay;
import org.undercall.port.Fault;
import org.undercall.web.Hosts;

/**
 * Any bytes as a request: method, path, headers, an empty line and a body. It is answered with a
 * known status, and a browser without a code never gets in.
 */
public final class BoardTarget {
  private static final int PORT = 8000;
  private static final Set<Integer> STATUSES =
      Set.of(200, 400, 401, 403, 404, 405, 409, 413, 415, 421, 429, 503);
  private static final AtomicLong CLOCK = new AtomicLong();
  private static final Router LOCAL = router(false);
  private static final Router NETWORK = router(true);

  private BoardTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    String text = new String(data, ISO_8859_1);
    String[] parts = text.split("\n", 3);
    URI path;
    try {
      path = URI.create(parts.length > 1 ? parts[1] : "/");
    } catch (IllegalArgumentException e) {
      return; // The Java library's server answers 400 before the board sees it.
    }
    CLOCK.addAndGet(30_000);
    String rest = parts.length > 2 ? parts[2] : "";
    require(new FakeExchange(parts[0], path, rest), LOCAL);
    FakeExchange outside = new FakeExchange(parts[0], path, rest);
    require(outside, NETWORK);
    if (outside.getResponseHeaders().containsKey("Set-Cookie")) {
      throw new AssertionError("let in by a guess");
    }
  }

  private static void require(FakeExchange exchange, Router router) throws IOException {
    router.handle(exchange);
    if (!STATUSES.contains(exchange.getResponseCode())) {
      throw new AssertionError("answered with " + exchange.getResponseCode());
    }
    String policy =
        String.valueOf(exchange.getResponseHeaders().getFirst("Content-Security-Policy"));
    if (!policy.startsWith("default-src 'none'")) {
      throw new AssertionError("answered without its policy: " + policy);
    }
  }

  private static Router router(boolean network) {
    try {
      BoardHub hub = new BoardHub(CLOCK::get);
      hub.publish(BoardPlay.of(Path.of("shared/procedures/demo-lateral-link.json")).board());
      hub.close();
      PressSlot slot = new PressSlot();
      slot.close();
      Access access = new Access(network, line -> {}, CLOCK::get);
      if (network) {
        access.newCode();
      }
      Presses presses = new Presses(hub, slot, CLOCK::get);
      return new Router(Hosts.loopback(PORT), access, presses, new Streams(hub, CLOCK::get));
    } catch (Fault e) {
      throw new IllegalStateException(e);
    }
  }
}
