package org.undercall.adapter.board;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.undercall.core.board.Board;
import org.undercall.core.board.BoardPlay;

/**
 * Prints how long the session's thread takes to show a new state, with no page and with 20 pages,
 * and how long until all of them have it. It asserts nothing.
 */
public final class BoardSpeed {
  private static final int PAGES = 20;

  private BoardSpeed() {}

  /** Takes the number of states to show, 2000 without one. */
  public static void main(String[] args) throws Exception {
    int count = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
    Board board =
        BoardPlay.of(Path.of("shared", "procedures", "light-van-rear-axle.json"))
            .says("cautions understood")
            .board();
    BoardServer.Settings settings =
        new BoardServer.Settings(0, false, line -> {}, () -> System.nanoTime() / 1_000_000);
    try (BoardServer server = BoardServer.start(settings)) {
      print("no page", show(server, board, count));
      long last = 2L * count;
      CountDownLatch open = new CountDownLatch(PAGES);
      CountDownLatch done = new CountDownLatch(PAGES);
      for (int i = 0; i < PAGES; i++) {
        Thread page = new Thread(() -> follow(server.port(), last, open, done));
        page.setDaemon(true);
        page.start();
      }
      open.await();
      print(PAGES + " pages", show(server, board, count));
      long began = System.nanoTime();
      done.await();
      System.out.printf(
          "until all %d pages have the last state: %.1f ms%n",
          PAGES, (System.nanoTime() - began) / 1e6);
    }
  }

  private static List<Long> show(BoardServer server, Board board, int count)
      throws InterruptedException {
    List<Long> times = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      long began = System.nanoTime();
      server.show(board);
      times.add(System.nanoTime() - began);
      Thread.sleep(1);
    }
    return times;
  }

  private static void follow(int port, long last, CountDownLatch open, CountDownLatch done) {
    try (BufferedReader events = Pieces.events(port)) {
      String id = Pieces.next(events, "id: ");
      open.countDown();
      while (Long.parseLong(id) < last) {
        id = Pieces.next(events, "id: ");
      }
      done.countDown();
    } catch (java.io.IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void print(String what, List<Long> nanos) {
    Collections.sort(nanos);
    System.out.printf(
        "%s: median %.3f ms, 95th percentile %.3f ms, largest %.3f ms%n",
        what,
        nanos.get(nanos.size() / 2) / 1e6,
        nanos.get(nanos.size() * 95 / 100) / 1e6,
        nanos.get(nanos.size() - 1) / 1e6);
  }
}
