package org.undercall.adapter.board;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.undercall.core.board.BoardPlay;
import org.undercall.port.Fault;

/** A board that is served, of a session that has just begun. */
abstract class ServedBoard {
  final List<String> console = new CopyOnWriteArrayList<>();
  BoardPlay play;
  BoardServer server;
  int port;

  @BeforeEach
  void start() throws Exception {
    play = BoardPlay.of(Path.of("shared", "procedures", "demo-lateral-link.json"));
    serve(false);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  /** Serves the state that the session is in. */
  final void serve(boolean network) throws Fault {
    server =
        BoardServer.start(new BoardServer.Settings(0, network, console::add, Pieces.MILLIS::get));
    port = server.port();
    server.show(play.board());
  }

  /** What the page sends for a button, with more fields. */
  final String press(String phrase, String more) {
    return "{\"state\":"
        + play.board().times().state()
        + ",\"pressed\":true,\"phrase\":\""
        + phrase
        + "\""
        + more
        + "}";
  }
}
