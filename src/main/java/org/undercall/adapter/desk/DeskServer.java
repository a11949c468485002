package org.undercall.adapter.desk;

import java.io.IOException;
import org.undercall.port.Fault;
import org.undercall.web.Hosts;
import org.undercall.web.PageServer;
import org.undercall.web.Secrets;

/** Serves the desk on the loopback interface, to whoever has the address with its secret. */
public final class DeskServer implements AutoCloseable {
  private final PageServer http;
  private final String secret;

  private DeskServer(PageServer http, String secret) {
    this.http = http;
    this.secret = secret;
  }

  /**
   * Starts to serve.
   *
   * @param port 0 for any that is free
   * @throws Fault DSK-001 if the port cannot be had
   */
  public static DeskServer start(int port, DeskActs acts) throws Fault {
    try {
      PageServer http = PageServer.at(port, false, "desk");
      String secret = Secrets.word();
      http.start(new DeskRouter(Hosts.loopback(http.port()), secret, acts));
      return new DeskServer(http, secret);
    } catch (IOException e) {
      throw new Fault(
          DeskCode.PORT,
          "port " + port,
          "cannot be used (" + e.getMessage() + "); expected a free one, or 0 for any");
    }
  }

  /** The port it is found at. */
  public int port() {
    return http.port();
  }

  /** The address to open: it has a secret that is new each time. */
  public String address() {
    return "http://localhost:" + port() + DeskRouter.OPEN + secret;
  }

  @Override
  public void close() {
    http.close();
  }
}
