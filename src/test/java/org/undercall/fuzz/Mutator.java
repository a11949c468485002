package org.undercall.fuzz;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Changes kept inputs a little, the same way for the same seed. */
final class Mutator {
  private static final byte[] TELLING =
      "\"{}[]:,.-+0123456789eE\n\r\t \\/&<>\0".getBytes(java.nio.charset.StandardCharsets.UTF_8);
  private static final int MOST_CHANGES = 4;

  private final Random random;
  private final List<byte[]> kept;

  Mutator(long seed, List<byte[]> kept) {
    this.random = new Random(seed);
    this.kept = List.copyOf(kept);
  }

  /** One of the kept inputs with one to four changes. */
  byte[] next() {
    byte[] bytes = any();
    for (int i = random.nextInt(MOST_CHANGES); i >= 0; i--) {
      bytes = changed(bytes);
    }
    return bytes;
  }

  private byte[] any() {
    return kept.get(random.nextInt(kept.size()));
  }

  private byte[] changed(byte[] from) {
    if (from.length == 0) {
      return new byte[] {telling()};
    }
    byte[] bytes = from.clone();
    int at = random.nextInt(bytes.length);
    int end = Math.min(bytes.length, at + 1 + random.nextInt(32));
    switch (random.nextInt(6)) {
      case 0 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
      case 1 -> bytes[at] = telling();
      case 2 -> Arrays.fill(bytes, at, end, bytes[at]);
      case 3 -> bytes = joined(bytes, at, new byte[0], end);
      case 4 -> bytes = joined(bytes, at, Arrays.copyOfRange(bytes, at, end), at);
      default -> bytes = spliced(bytes, at);
    }
    return bytes;
  }

  private byte telling() {
    return TELLING[random.nextInt(TELLING.length)];
  }

  /** The beginning of one input and the end of another. */
  private byte[] spliced(byte[] bytes, int at) {
    byte[] other = any();
    int from = other.length == 0 ? 0 : random.nextInt(other.length);
    return joined(bytes, at, Arrays.copyOfRange(other, from, other.length), bytes.length);
  }

  private static byte[] joined(byte[] bytes, int at, byte[] middle, int from) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, at);
    out.writeBytes(middle);
    out.write(bytes, from, bytes.length - from);
    return out.toByteArray();
  }
}
