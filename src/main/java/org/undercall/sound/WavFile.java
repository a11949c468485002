package org.undercall.sound;

import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;

/**
 * WAV files of one channel, 16 bit, PCM. What it writes ends with a chunk {@code crc3} of four
 * bytes, the CRC-32 of the samples, which other programs skip; it is checked on reading if present.
 */
public final class WavFile {
  public static final int HEADER = 44;
  private static final int FORMAT_CHUNK = 0x20746d66;
  private static final int DATA_CHUNK = 0x61746164;
  private static final int CHECK_CHUNK = 0x33637263;

  private WavFile() {}

  /** Writes sound to a file, over what was there. */
  public static void write(Path file, Pcm sound) throws IOException {
    byte[] data = sound.bytes();
    ByteBuffer out = ByteBuffer.allocate(HEADER + data.length + 12).order(ByteOrder.LITTLE_ENDIAN);
    out.put(header(sound.rate(), data.length, 12)).put(data);
    out.putInt(CHECK_CHUNK).putInt(4).putInt(crc(data, 0, data.length));
    Files.write(file, out.array());
  }

  /**
   * Reads sound from a file.
   *
   * @throws IOException if it cannot be read
   * @throws UncheckedFault SPK-008 if it is damaged or has another format
   */
  public static Pcm read(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    try {
      return parse(bytes, file);
    } catch (BufferUnderflowException | IllegalArgumentException e) {
      throw bad(file, "the file ends too early", e);
    }
  }

  /** The 44 bytes before the samples. */
  static byte[] header(int rate, int dataBytes, int bytesAfter) {
    ByteBuffer out = ByteBuffer.allocate(HEADER).order(ByteOrder.LITTLE_ENDIAN);
    out.put(ascii("RIFF")).putInt(HEADER - 8 + dataBytes + bytesAfter).put(ascii("WAVEfmt "));
    out.putInt(16).putShort((short) 1).putShort((short) 1).putInt(rate).putInt(rate * 2);
    out.putShort((short) 2).putShort((short) 16).put(ascii("data")).putInt(dataBytes);
    return out.array();
  }

  private static Pcm parse(byte[] bytes, Path file) {
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    byte[] start = new byte[12];
    in.get(start);
    String magic = new String(start, StandardCharsets.ISO_8859_1);
    if (!magic.startsWith("RIFF") || !magic.endsWith("WAVE")) {
      throw bad(file, "it is no WAV file", null);
    }
    int rate = 0;
    int dataAt = -1;
    int dataBytes = 0;
    while (in.remaining() >= 8) {
      int chunk = in.getInt();
      int size = in.getInt();
      int at = in.position();
      if (size < 0 || size > in.remaining()) {
        throw bad(file, "a part of " + size + " bytes ends after the end of the file", null);
      }
      if (chunk == FORMAT_CHUNK) {
        rate = rate(in, file);
      } else if (chunk == DATA_CHUNK) {
        dataAt = at;
        dataBytes = size;
      } else if (chunk == CHECK_CHUNK && dataAt >= 0) {
        requireSame(in.getInt(), crc(bytes, dataAt, dataBytes), file);
      }
      in.position(Math.min(bytes.length, at + size + size % 2));
    }
    if (rate <= 0 || dataAt < 0) {
      throw bad(file, "it has no format or no samples", null);
    }
    return Pcm.ofBytes(rate, bytes, dataAt, dataBytes);
  }

  private static int rate(ByteBuffer in, Path file) {
    int coding = in.getShort();
    int channels = in.getShort();
    int rate = in.getInt();
    in.getInt();
    in.getShort();
    int bits = in.getShort();
    if ((coding != 1 && coding != -2) || channels != 1 || bits != 16) {
      String found = channels + " channels of " + bits + " bits, coding " + coding;
      throw new UncheckedFault(
          new Fault(SpeakerCode.BAD_WAV, file.toString(), found, "PCM of 1 channel and 16 bits"));
    }
    return rate;
  }

  private static void requireSame(int expected, int found, Path file) {
    if (expected != found) {
      throw bad(file, "the samples do not match their checksum", null);
    }
  }

  private static int crc(byte[] bytes, int from, int length) {
    CRC32 crc = new CRC32();
    crc.update(bytes, from, length);
    return (int) crc.getValue();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static UncheckedFault bad(Path file, String why, Throwable cause) {
    return new UncheckedFault(SpeakerCode.BAD_WAV, file + ": " + why, cause);
  }
}
