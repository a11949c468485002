package org.undercall.session;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** Makes pictures of pages small enough to be kept. */
public final class SmallPicture {
  /** A picture has at most so many colours. */
  private static final int COLOURS = 256;

  private SmallPicture() {}

  /** The same picture with few colours: of each part only its highest bits. */
  public static byte[] of(byte[] picture) throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
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
