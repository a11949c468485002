package org.undercall.session;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.undercall.adapter.board.BoardServer;
import org.undercall.core.board.Board;
import org.undercall.core.board.BoardStates;

/**
 * Makes the pictures of the board that the documents show, from invented sessions. The clock of the
 * page stands still, so that the same page with the same fonts gives the same pictures.
 */
final class BoardPictures {
  /** A picture has at most so many colours. */
  private static final int COLOURS = 256;

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
    return small(ImageIO.read(new ByteArrayInputStream(browser.picture())));
  }

  /** The same picture with few colours: of each part only its highest bits. */
  private static byte[] small(BufferedImage image) throws Exception {
    int bits = 8;
    while (colours(image, bits).size() > COLOURS) {
      bits--;
    }
    List<Integer> palette = colours(image, bits);
    byte[][] parts = new byte[3][palette.size()];
    Map<Integer, Integer> places = new LinkedHashMap<>();
    for (int i = 0; i < palette.size(); i++) {
      places.put(palette.get(i), i);
      for (int part = 0; part < 3; part++) {
        parts[part][i] = (byte) (palette.get(i) >> (16 - 8 * part));
      }
    }
    IndexColorModel model = new IndexColorModel(8, palette.size(), parts[0], parts[1], parts[2]);
    BufferedImage small =
        new BufferedImage(
            image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int place = places.get(rounded(image.getRGB(x, y), bits));
        small.getRaster().setSample(x, y, 0, place);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(small, "png", out);
    return out.toByteArray();
  }

  private static List<Integer> colours(BufferedImage image, int bits) {
    Map<Integer, Integer> found = new LinkedHashMap<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        found.put(rounded(image.getRGB(x, y), bits), 0);
      }
    }
    return new ArrayList<>(found.keySet());
  }

  private static int rounded(int colour, int bits) {
    int mask = (0xff << (8 - bits)) & 0xff;
    int spread = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int part = (colour >> shift) & mask;
      spread |= (part | (part >> bits)) << shift;
    }
    return spread;
  }
}
