package org.undercall.sound;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;

/**
 * WAV files of one channel, 16 bit, PCM. What it writes ends with a chunk {@code crc3} of four
 * bytes, the CRC-32 of the samples, which other programs skip; it is checked on reading if present.
 */
public final class WavFile {
  public static final int HEADER = 44;
  private static final int CHECK_BYTES = 12;
  private static final byte[] CHECK = ascii("crc3");

  private WavFile() {}

  /** Writes sound to a file, over what was there. */
  public static void write(Path file, Pcm sound) throws IOException {
    byte[] data = sound.bytes();
    Files.write(file, joined(header(sound.rate(), data.length, CHECK_BYTES), data, check(data)));
  }

  /** A whole file of samples, without the chunk {@code crc3}. */
  public static byte[] of(int rate, byte[] data) {
    return joined(header(rate, data.length, 0), data);
  }

  /**
   * Reads sound from a file.
   *
   * @throws IOException if it cannot be read
   * @throws UncheckedFault SPK-007 if it is empty, SPK-008 if it is damaged or has another format
   */
  public static Pcm read(Path file) throws IOException {
    try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
      WavHeader header = WavHeader.read(in, file.toString(), Files.size(file));
      SampleFormat format = header.format();
      if (!format.equals(SampleFormat.pcm(1, format.rate()))) {
        throw new UncheckedFault(
            new Fault(
                SpeakerCode.BAD_WAV,
                file.toString(),
                format.toString(),
                "PCM of 1 channel and 16 bits"));
      }
      byte[] data = in.readNBytes(Math.toIntExact(header.dataBytes()));
      byte[] after = in.readNBytes(CHECK_BYTES);
      if (Arrays.equals(CHECK, Arrays.copyOf(after, CHECK.length))
          && !Arrays.equals(after, check(data))) {
        throw new UncheckedFault(
            SpeakerCode.BAD_WAV, file + ": the samples do not match their checksum");
      }
      return Pcm.ofBytes(format.rate(), data, 0, data.length);
    } catch (Fault e) {
      boolean empty = e.code() == SoundCode.NO_DATA;
      throw new UncheckedFault(
          empty ? SpeakerCode.NO_SOUND : SpeakerCode.BAD_WAV, e.getMessage(), e);
    }
  }

  /** The 44 bytes before the samples. */
  static byte[] header(int rate, int dataBytes, int bytesAfter) {
    ByteBuffer out = little(HEADER);
    out.put(ascii("RIFF")).putInt(HEADER - 8 + dataBytes + bytesAfter).put(ascii("WAVEfmt "));
    out.putInt(16).putShort((short) 1).putShort((short) 1).putInt(rate).putInt(rate * 2);
    out.putShort((short) 2).putShort((short) 16).put(ascii("data")).putInt(dataBytes);
    return out.array();
  }

  private static byte[] check(byte[] data) {
    CRC32 crc = new CRC32();
    crc.update(data);
    return little(CHECK_BYTES).put(CHECK).putInt(4).putInt((int) crc.getValue()).array();
  }

  private static byte[] joined(byte[]... parts) {
    ByteBuffer all = little(Arrays.stream(parts).mapToInt(part -> part.length).sum());
    for (byte[] part : parts) {
      all.put(part);
    }
    return all.array();
  }

  private static ByteBuffer little(int bytes) {
    return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
