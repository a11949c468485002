package org.undercall.adapter.clips;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.jflac.FLACDecoder;
import org.jflac.PCMProcessor;
import org.jflac.metadata.StreamInfo;
import org.jflac.util.ByteData;

/** A FLAC file read by a decoder that has nothing to do with the encoder. */
public final class Decoded implements PCMProcessor {
  private final ByteArrayOutputStream sound = new ByteArrayOutputStream();
  private StreamInfo info;

  private Decoded() {}

  /** The sound of a file: 16 bit, little-endian. */
  public static byte[] sound(byte[] flac) throws IOException {
    return of(flac).sound.toByteArray();
  }

  static Decoded of(byte[] flac) throws IOException {
    Decoded decoded = new Decoded();
    FLACDecoder decoder = new FLACDecoder(new ByteArrayInputStream(flac));
    decoder.addPCMProcessor(decoded);
    decoder.decode();
    if (decoder.getBadFrames() > 0) {
      throw new IOException(decoder.getBadFrames() + " bad frames");
    }
    return decoded;
  }

  byte[] sound() {
    return sound.toByteArray();
  }

  StreamInfo info() {
    return info;
  }

  @Override
  public void processStreamInfo(StreamInfo head) {
    info = head;
  }

  @Override
  public void processPCM(ByteData piece) {
    sound.write(piece.getData(), 0, piece.getLen());
  }
}
