package org.undercall.adapter.board;

import java.io.IOException;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.undercall.core.board.Board;
import org.undercall.port.Fault;
import org.undercall.web.Hosts;
import org.undercall.web.PageServer;

/**
 * Serves the board: on the loopback interface, or with a code on every interface.
 *
 * <p>Every request has a thread of its own from a pool. The session's thread only leaves the newest
 * state in the hub and takes presses out of the slot.
 */
public final class BoardServer implements AutoCloseable {
  private final PageServer http;
  private final BoardHub hub;
  private final PressSlot presses = new PressSlot();

  private BoardServer(PageServer http, BoardHub hub) {
    this.http = http;
    this.hub = hub;
  }

  /**
   * How to serve.
   *
   * @param port 0 for any that is free
   * @param network whether other machines may see it
   * @param console where addresses and codes are printed
   * @param clock milliseconds of a clock that is never set; read by many threads
   */
  public record Settings(int port, boolean network, Consumer<String> console, LongSupplier clock) {}

  /** Starts to serve, and prints where and to whom. */
  public static BoardServer start(Settings settings) throws Fault {
    try {
      PageServer http = PageServer.at(settings.port(), settings.network(), "board");
      BoardServer server = new BoardServer(http, new BoardHub(settings.clock()));
      server.serve(settings);
      return server;
    } catch (IOException e) {
      throw new Fault(
          BoardCode.PORT,
          "port " + settings.port(),
          "cannot be used (" + e.getMessage() + "); expected a free one, or 0 for any");
    }
  }

  private void serve(Settings settings) throws IOException {
    Hosts hosts = settings.network() ? Hosts.ofMachine(port()) : Hosts.loopback(port());
    Access access = new Access(settings.network(), settings.console(), settings.clock());
    Presses pressing = new Presses(hub, presses, settings.clock());
    Streams streams = new Streams(hub, settings.clock());
    http.start(new Router(hosts, access, pressing, streams));
    announce(settings, hosts);
    if (settings.network()) {
      access.newCode();
    }
  }

  private static void announce(Settings settings, Hosts hosts) {
    if (!settings.network()) {
      settings
          .console()
          .accept("Board: http://localhost:" + hosts.port() + "/ (this machine only)");
      return;
    }
    hosts.addresses().forEach(address -> settings.console().accept("Board: " + address));
    settings
        .console()
        .accept(
            "The board is open to the network. Whoever has a code sees the whole session, with what"
                + " was heard and the notes, and can press buttons that act on it. It is not"
                + " encrypted: who can listen on this network can read it.");
  }

  /** The port it is found at. */
  public int port() {
    return http.port();
  }

  /** Shows a new state to everyone; takes no longer for many than for none. */
  public void show(Board board) {
    hub.publish(board);
  }

  /** Where presses wait for the session. */
  public PressSlot presses() {
    return presses;
  }

  /** Stops serving; every page is told. */
  @Override
  public void close() {
    presses.close();
    hub.close();
    http.close();
  }
}
