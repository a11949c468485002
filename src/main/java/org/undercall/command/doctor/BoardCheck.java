package org.undercall.command.doctor;

import org.undercall.adapter.board.BoardServer;
import org.undercall.port.Fault;

/**
 * The board's port on this machine.
 *
 * @param port what it is; 0 for any
 * @param board opens the board there and closes it
 */
record BoardCheck(int port, Port board) implements Check {

  /** Opens a port. */
  interface Port {
    /** Opens and closes; gives the port. */
    int open(int port) throws Fault;
  }

  static BoardCheck ofMachine(int port) {
    return new BoardCheck(port, BoardCheck::open);
  }

  private static int open(int port) throws Fault {
    BoardServer.Settings settings =
        new BoardServer.Settings(port, false, line -> {}, () -> System.nanoTime() / 1_000_000);
    try (BoardServer server = BoardServer.start(settings)) {
      return server.port();
    }
  }

  @Override
  public String name() {
    return "board";
  }

  @Override
  public Found look() {
    try {
      return Found.well("port " + board.open(port) + " is free on this machine");
    } catch (Fault e) {
      return Found.note(
          e.getMessage(),
          "the work goes on without; for a board, close what uses the port (is another work open?)"
              + " or name another: --board-port 0");
    }
  }
}
