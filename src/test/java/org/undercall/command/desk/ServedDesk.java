package org.undercall.command.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.undercall.adapter.desk.DeskServer;
import org.undercall.port.Fault;

/** A desk that is served for a file, on a day that stands still. */
final class ServedDesk implements AutoCloseable {
  static final Clock DAY = Clock.fixed(Instant.parse("2026-03-31T08:00:00Z"), ZoneOffset.UTC);

  private final DeskServer server;

  private ServedDesk(DeskServer server) {
    this.server = server;
  }

  static ServedDesk of(Path file) throws Fault {
    return new ServedDesk(DeskServer.start(0, DeskCommand.acts(new DeskFile(file, DAY))));
  }

  int port() {
    return server.port();
  }

  String address() {
    return server.address();
  }

  /** The secret of the address. */
  String secret() {
    return address().substring(address().lastIndexOf('/') + 1);
  }

  @Override
  public void close() {
    server.close();
  }
}
