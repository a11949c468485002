package org.undercall.adapter.clips;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Sound as the bytes of a WAV file. */
final class WavSound {
  private static final int HEADER = 44;
  private static final int FORMAT_SIZE = 16;
  private static final short PCM = 1;
  private static final short MONO = 1;
  private static final short BITS = 16;
  private static final short BYTES = 2;

  private WavSound() {}

  static byte[] of(byte[] sound) {
    ByteBuffer file = ByteBuffer.allocate(HEADER + sound.length).order(ByteOrder.LITTLE_ENDIAN);
    file.put(ascii("RIFF")).putInt(HEADER - 8 + sound.length).put(ascii("WAVE"));
    file.put(ascii("fmt ")).putInt(FORMAT_SIZE).putShort(PCM).putShort(MONO);
    file.putInt(ClipFormat.RATE).putInt(BYTES * ClipFormat.RATE).putShort(BYTES).putShort(BITS);
    file.put(ascii("data")).putInt(sound.length).put(sound);
    return file.array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
