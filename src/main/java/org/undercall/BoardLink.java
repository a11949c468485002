package org.undercall;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import org.undercall.adapter.board.BoardFault;
import org.undercall.adapter.board.BoardServer;
import org.undercall.core.board.Board;
import org.undercall.core.board.Happened;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;

/**
 * Joins the board in the bay to a session: what the loop does is shown, and what is pressed comes
 * out of the ear. The thread of the loop uses it.
 */
public final class BoardLink implements Display, AutoCloseable {
  private final BoardServer server;
  private Session session;
  private Happened happened = Happened.NOTHING;
  private String said = "";

  private BoardLink(BoardServer server) {
    this.server = server;
  }

  /**
   * Opens a board and prints where it is and who can see it.
   *
   * @param port to be found at; 0 for any that is free
   * @param network whether other machines may see it, with a code
   */
  public static BoardLink open(int port, boolean network, PrintWriter out) throws BoardFault {
    BoardServer.Settings settings =
        new BoardServer.Settings(
            port, network, new Dialogue(out)::print, () -> System.nanoTime() / 1_000_000);
    return new BoardLink(BoardServer.start(settings));
  }

  /** The ear, which also takes what is pressed or typed on the board. */
  public Ear of(Ear ear) {
    return new BoardEar(ear, server.presses(), () -> happened.state());
  }

  /** The port the board is found at. */
  public int port() {
    return server.port();
  }

  @Override
  public void earlier(Session session, List<Recorded> decisions) {
    this.session = session;
    happened = Happened.before(decisions);
  }

  @Override
  public void recorded(Session now, Recorded decision) {
    happened = happened.after(decision, session, now);
    session = now;
    if (!decision.said().isEmpty()) {
      said = decision.said();
    }
    show(decision.at());
  }

  @Override
  public void said(String words, Moment at) {
    if (!words.equals(said)) {
      said = words;
      show(at);
    }
  }

  private void show(Moment at) {
    Instant now = at.wall().toInstant();
    server.show(Board.of(session, happened, said, now));
  }

  @Override
  public void close() {
    server.close();
  }
}
