package org.undercall.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.undercall.adapter.board.BoardServer;
import org.undercall.core.board.Board;
import org.undercall.core.board.BoardStates;

/**
 * Makes the pictures of the board that the documents show, from invented sessions. The clock of the
 * page stands still, so that the same page with the same fonts gives the same pictures.
 */
final class BoardPictures {
  private static final List<Shot> SHOTS =
      List.of(
          new Shot("board-set", "set-third", 1280, 800, "light"),
          new Shot("board-gate", "gate", 1280, 800, "light"),
          new Shot("board-refused", "refused", 1280, 800, "light"),
          new Shot("board-dark", "angle", 1280, 800, "dark"),
          new Shot("board-phone", "torque", 390, 844, "light"));

  private BoardPictures() {}

  private record Shot(String file, String state, int across, int down, String scheme) {}

  /** Writes them into a folder, the only argument. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[0]);
    Map<String, Board> states = BoardStates.all();
    Path profile = Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath();
    try (Browser browser = Browser.start(profile)) {
      browser.before("Date.now = () => 1767600000000;");
      for (Shot shot : SHOTS) {
        try (BoardServer server =
            BoardServer.start(new BoardServer.Settings(0, false, line -> {}, () -> 0))) {
          server.show(states.get(shot.state()));
          byte[] small = take(browser, shot, server.port());
          Files.write(folder.resolve(shot.file() + ".png"), small);
          System.out.printf("%s.png %d bytes%n", shot.file(), small.length);
        }
      }
    }
  }

  private static byte[] take(Browser browser, Shot shot, int port) throws Exception {
    browser.size(shot.across(), shot.down());
    browser.prefers("prefers-color-scheme", shot.scheme());
    browser.open("http://localhost:" + port + "/");
    browser.until("document.body.dataset.shown === '1' && performance.now() > 1500");
    return SmallPicture.of(browser.picture());
  }
}
