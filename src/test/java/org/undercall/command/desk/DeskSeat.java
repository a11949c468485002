package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.session.Browser;

/** A browser before a desk, and a folder for its file. */
abstract class DeskSeat {
  static final Path SHARED = Path.of("shared/procedures");

  static Browser browser;

  @TempDir Path folder;
  DeskHand hand;

  @BeforeAll
  static void start() throws Exception {
    assumeTrue(
        Browser.present(),
        "no " + Browser.CHROMIUM + " or no " + Browser.DRIVER + ": the page is not tried");
    Files.createDirectories(Path.of("target"));
    browser =
        Browser.start(Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath());
    browser.before(
        "window.wrong = []; addEventListener('error', e => wrong.push(e.message));"
            + "addEventListener('unhandledrejection', e => wrong.push(String(e.reason)));");
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void sit() throws Exception {
    hand = new DeskHand(browser);
    browser.size(1400, 1000);
    browser.prefers("prefers-color-scheme", "light");
  }

  /** A copy of an example, with the library beside it if it includes any of it. */
  final Path copy(String name) throws Exception {
    Path file = folder.resolve(name);
    if (Files.readString(SHARED.resolve(name)).contains("\"include\"")) {
      Files.createDirectory(folder.resolve("blocks"));
      try (var blocks = Files.list(SHARED.resolve("blocks"))) {
        for (Path block : blocks.toList()) {
          Files.copy(block, folder.resolve("blocks").resolve(block.getFileName()));
        }
      }
    }
    Files.copy(SHARED.resolve(name), file);
    return file;
  }

  static void nothingWrong() throws Exception {
    assertEquals("[]", browser.eval("window.wrong").toString());
  }

  /** Leaves a page that would ask before it is left. */
  static void leave() throws Exception {
    nothingWrong();
    browser.eval("(addEventListener('beforeunload', e => e.stopImmediatePropagation(), true), 1)");
  }
}
