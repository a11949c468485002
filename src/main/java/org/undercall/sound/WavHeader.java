package org.undercall.sound;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.undercall.port.Fault;

/**
 * What the header of a WAV file says, checked against the file's true length.
 *
 * @param format how the samples are coded
 * @param dataBytes how many bytes of samples follow
 */
record WavHeader(SampleFormat format, long dataBytes) {
  private static final int RIFF_BYTES = 12;
  private static final int CHUNK_BYTES = 8;
  private static final int EXTENSIBLE = 0xfffe;

  /** What a program writes that does not know the length: the data go on to the end of the file. */
  private static final long UNKNOWN_LENGTH = 0xffff_ffffL;

  /** Reads from the start of the file to the first sample. */
  static WavHeader read(DataInputStream in, String name, long fileBytes) throws IOException, Fault {
    requireWav(in, name, fileBytes);
    SampleFormat format = null;
    long at = RIFF_BYTES;
    while (fileBytes - at >= CHUNK_BYTES) {
      ByteBuffer chunk = block(in, CHUNK_BYTES);
      String id = text(chunk);
      long length = chunk.getInt() & 0xffff_ffffL;
      at += CHUNK_BYTES;
      if (id.equals("data")) {
        return data(name, format, length, fileBytes - at);
      }
      if (length > fileBytes - at) {
        throw truncated(name, "chunk " + shown(id), length, fileBytes - at);
      }
      if (id.equals("fmt ")) {
        format = format(in, name, length);
      } else {
        in.skipNBytes(length);
      }
      at += length;
      if (length % 2 == 1 && at < fileBytes) {
        in.skipNBytes(1);
        at++;
      }
    }
    throw new Fault(SoundCode.NO_DATA, name, "no data chunk", "one with the sound");
  }

  private static void requireWav(DataInputStream in, String name, long fileBytes)
      throws IOException, Fault {
    if (fileBytes >= RIFF_BYTES) {
      ByteBuffer start = block(in, RIFF_BYTES);
      String riff = text(start);
      start.getInt();
      if (riff.equals("RIFF") && text(start).equals("WAVE")) {
        return;
      }
    }
    throw new Fault(
        SoundCode.NOT_WAV, name, "is no WAV file, expected it to begin with RIFF and WAVE");
  }

  private static WavHeader data(String name, SampleFormat format, long length, long left)
      throws Fault {
    if (format == null) {
      throw new Fault(SoundCode.NO_FORMAT, name, "found the data before a format chunk");
    }
    if (length != UNKNOWN_LENGTH && length > left) {
      throw truncated(name, "sound", length, left);
    }
    long bytes = length == UNKNOWN_LENGTH ? left - left % format.blockBytes() : length;
    if (bytes == 0) {
      throw new Fault(SoundCode.NO_DATA, name, "0 bytes of sound", "some");
    }
    if (bytes % format.blockBytes() != 0) {
      throw new Fault(
          SoundCode.CONTRADICTION,
          name,
          bytes + " bytes of sound",
          "whole blocks of " + format.blockBytes());
    }
    return new WavHeader(format, bytes);
  }

  private static Fault truncated(String name, String what, long stated, long there) {
    return new Fault(
        SoundCode.TRUNCATED,
        name,
        there + " bytes",
        stated + " bytes of " + what + " as its header says; record or copy the file again");
  }

  private static SampleFormat format(DataInputStream in, String name, long length)
      throws IOException, Fault {
    if (length < 16 || length > 4096) {
      throw new Fault(
          SoundCode.NO_FORMAT, name, "a format chunk of " + length + " bytes", "16 to 40");
    }
    ByteBuffer chunk = block(in, (int) length);
    int tag = chunk.getShort() & 0xffff;
    int channels = chunk.getShort() & 0xffff;
    int rate = chunk.getInt();
    chunk.getInt();
    int blockBytes = chunk.getShort() & 0xffff;
    int bits = chunk.getShort() & 0xffff;
    if (tag == EXTENSIBLE && length >= 26) {
      tag = chunk.getShort(24) & 0xffff;
    }
    SampleFormat format = SampleFormat.checked(name, tag, bits, channels, rate);
    if (blockBytes != format.blockBytes()) {
      throw new Fault(
          SoundCode.CONTRADICTION,
          name,
          "blocks of " + blockBytes + " bytes",
          format.blockBytes() + " for " + channels + " channels of " + bits + " bits");
    }
    return format;
  }

  private static ByteBuffer block(DataInputStream in, int length) throws IOException {
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new EOFException("found " + bytes.length + " bytes, expected " + length);
    }
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** The name of a chunk, which may be any four bytes, fit to be printed. */
  private static String shown(String id) {
    return id.replaceAll("[^ -~]", "?");
  }

  private static String text(ByteBuffer from) {
    byte[] id = new byte[4];
    from.get(id);
    return new String(id, StandardCharsets.ISO_8859_1);
  }
}
