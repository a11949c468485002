package org.undercall.adapter.board;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpContext;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpPrincipal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.URI;

/** A request made of text, and the answer it gets. */
final class FakeExchange extends HttpExchange {
  private final String method;
  private final URI path;
  private final Headers headers = new Headers();
  private final Headers answered = new Headers();
  private final InputStream body;
  private final ByteArrayOutputStream sent = new ByteArrayOutputStream();
  private int status = -1;

  /** A request; {@code rest} has headers, an empty line and the body. */
  FakeExchange(String method, URI path, String rest) {
    this.method = method;
    this.path = path;
    int end = rest.startsWith("\n") ? 0 : rest.indexOf("\n\n");
    String head = end < 0 ? rest : rest.substring(0, end);
    for (String line : head.split("\n", -1)) {
      int colon = line.indexOf(':');
      if (colon > 0 && line.indexOf('\r') < 0) {
        headers.add(line.substring(0, colon), line.substring(colon + 1).strip());
      }
    }
    String text = end < 0 ? "" : rest.substring(Math.min(rest.length(), end + (end == 0 ? 1 : 2)));
    this.body = new ByteArrayInputStream(text.getBytes(ISO_8859_1));
  }

  @Override
  public Headers getRequestHeaders() {
    return headers;
  }

  @Override
  public Headers getResponseHeaders() {
    return answered;
  }

  @Override
  public URI getRequestURI() {
    return path;
  }

  @Override
  public String getRequestMethod() {
    return method;
  }

  @Override
  public HttpContext getHttpContext() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {}

  @Override
  public InputStream getRequestBody() {
    return body;
  }

  @Override
  public OutputStream getResponseBody() {
    return sent;
  }

  @Override
  public void sendResponseHeaders(int code, long length) {
    if (status >= 0) {
      throw new AssertionError("answered twice");
    }
    status = code;
  }

  @Override
  public InetSocketAddress getRemoteAddress() {
    return new InetSocketAddress(java.net.InetAddress.getLoopbackAddress(), 1);
  }

  @Override
  public int getResponseCode() {
    return status;
  }

  @Override
  public InetSocketAddress getLocalAddress() {
    return getRemoteAddress();
  }

  @Override
  public String getProtocol() {
    return "HTTP/1.1";
  }

  @Override
  public Object getAttribute(String name) {
    return null;
  }

  @Override
  public void setAttribute(String name, Object value) {}

  @Override
  public void setStreams(InputStream in, OutputStream out) {}

  @Override
  public HttpPrincipal getPrincipal() {
    return null;
  }
}
