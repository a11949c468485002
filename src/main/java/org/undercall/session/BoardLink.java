package org.undercall.session;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.board.BoardServer;
import org.undercall.core.board.Board;
import org.undercall.core.board.DeviceNews;
import org.undercall.core.board.Devices;
import org.undercall.core.board.Happened;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Time;

/**
 * Joins the board in the bay to a session: what the loop does is shown, and what is pressed comes
 * out of the ear. The thread of the loop uses it; any thread may tell news of the devices.
 */
public final class BoardLink implements Display, AutoCloseable {
  private final BoardServer server;
  private final Time time;
  private Optional<Session> session = Optional.empty();
  private Devices devices = Devices.WELL;
  private Happened happened = Happened.NOTHING;
  private String said = "";
  private boolean begun;

  private BoardLink(BoardServer server, Time time) {
    this.server = server;
    this.time = time;
  }

  /**
   * Opens a board and prints where it is and who can see it.
   *
   * @param port to be found at; 0 for any that is free
   * @param network whether other machines may see it, with a code
   */
  public static BoardLink open(int port, boolean network, PrintWriter out) throws Fault {
    BoardServer.Settings settings =
        new BoardServer.Settings(
            port, network, new Dialogue(out)::print, () -> System.nanoTime() / 1_000_000);
    return new BoardLink(BoardServer.start(settings), Time.ofMachine());
  }

  /** The ear, which also takes what is pressed or typed on the board. */
  public Ear of(Ear ear) {
    return new BoardEar(ear, server.presses(), this::state);
  }

  private synchronized long state() {
    return happened.state();
  }

  /** Shows news of the devices at once. */
  public synchronized void told(DeviceNews news) {
    devices = devices.after(news);
    show(time.now());
  }

  /** The port the board is found at. */
  public int port() {
    return server.port();
  }

  @Override
  public synchronized void earlier(Session earlier, List<Recorded> decisions) {
    session = Optional.of(earlier);
    happened = Happened.before(decisions);
  }

  @Override
  public synchronized void recorded(Session now, Recorded decision) {
    happened = happened.after(decision, session.orElse(now), now);
    session = Optional.of(now);
    begun = true;
    if (!decision.said().isEmpty()) {
      said = decision.said();
    }
    if (decision.heard().isPresent()) {
      devices = devices.seen();
    }
    show(decision.at());
  }

  @Override
  public synchronized void said(String words, Moment at) {
    if (!words.equals(said)) {
      said = words;
      show(at);
    }
  }

  /** Before the first decision there is nothing to show. */
  private void show(Moment at) {
    session
        .filter(s -> begun)
        .ifPresent(s -> server.show(Board.of(s, happened, devices, said, at)));
  }

  @Override
  public void close() {
    server.close();
  }
}
