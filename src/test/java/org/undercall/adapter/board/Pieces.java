package org.undercall.adapter.board;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;

/** A browser that asks what the test wants, and a clock that the test moves. */
final class Pieces {
  static final AtomicLong MILLIS = new AtomicLong();

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private Pieces() {}

  /** Asks for a path with more headers, given as name and value in turn. */
  static HttpResponse<String> get(int port, String path, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request = HttpRequest.newBuilder(uri(port, path));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Posts as the page of this board would, with more headers. */
  static HttpResponse<String> post(int port, String path, String json, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(uri(port, path))
            .header("Origin", "http://localhost:" + port)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(json));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Sends a request as it stands, for what a client would not send; gives the status line. */
  static String raw(int port, String request) throws IOException {
    try (java.net.Socket socket = new java.net.Socket("localhost", port)) {
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      BufferedReader in =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
      return String.valueOf(in.readLine());
    }
  }

  /** The lines of the event stream, read as they come. */
  static BufferedReader events(int port, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request = HttpRequest.newBuilder(uri(port, "/events"));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return new BufferedReader(
        new InputStreamReader(
            CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofInputStream()).body(),
            StandardCharsets.UTF_8));
  }

  /** The next line that begins so, without that beginning. */
  static String next(BufferedReader events, String beginning) throws IOException {
    String line = events.readLine();
    while (line != null && !line.startsWith(beginning)) {
      line = events.readLine();
    }
    return line == null ? "the stream ended" : line.substring(beginning.length());
  }

  private static URI uri(int port, String path) {
    return URI.create("http://localhost:" + port + path);
  }
}
