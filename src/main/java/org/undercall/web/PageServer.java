package org.undercall.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Takes requests at a port, each on a thread of its own from a pool. */
public final class PageServer implements AutoCloseable {
  private static final int MOST_THREADS = 64;
  private static final int BACKLOG = 32;
  private static final long FAREWELL_MILLIS = 500;

  private final HttpServer http;
  private final ThreadPoolExecutor threads;
  private int running;

  private PageServer(HttpServer http, ThreadPoolExecutor threads) {
    this.http = http;
    this.threads = threads;
  }

  /**
   * Takes the port; nothing is answered yet.
   *
   * @param port 0 for any that is free
   * @param network whether other machines may reach it; else the loopback interface alone
   * @param name of its threads
   * @throws IOException if the port is in use or may not be used
   */
  public static PageServer at(int port, boolean network, String name) throws IOException {
    Limits.set();
    InetSocketAddress address =
        network
            ? new InetSocketAddress(port)
            : new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
    HttpServer http = HttpServer.create(address, BACKLOG);
    ThreadPoolExecutor threads =
        new ThreadPoolExecutor(
            0,
            MOST_THREADS,
            30,
            TimeUnit.SECONDS,
            new SynchronousQueue<>(),
            work -> thread(work, name));
    http.setExecutor(threads);
    return new PageServer(http, threads);
  }

  private static Thread thread(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  /** Begins to answer. */
  public void start(HttpHandler handler) {
    http.createContext("/", exchange -> handle(exchange, handler));
    http.start();
  }

  private void handle(HttpExchange exchange, HttpHandler handler) throws IOException {
    count(1);
    try {
      handler.handle(exchange);
    } finally {
      exchange.close();
      count(-1);
    }
  }

  private synchronized void count(int more) {
    running += more;
    notifyAll();
  }

  /** The port it is found at. */
  public int port() {
    return http.getAddress().getPort();
  }

  /** Waits a moment until every answer has been sent. */
  private synchronized void finish() throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(FAREWELL_MILLIS);
    for (long left = FAREWELL_MILLIS; running > 0 && left > 0; ) {
      wait(left);
      left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
    }
  }

  /** Stops answering, after a moment for what is being answered. */
  @Override
  public void close() {
    try {
      finish();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    http.stop(0);
    threads.shutdownNow();
  }
}
