package org.undercall.adapter.clips;

import java.io.IOException;
import java.util.Locale;
import org.undercall.sound.Frames;
import org.undercall.sound.WavFile;

/** How a clip is stored. Both hold the very samples that were heard. */
public enum ClipFormat {
  /** Free Lossless Audio Codec, RFC 9639. */
  FLAC {
    @Override
    byte[] encode(byte[] sound) throws IOException {
      return FlacSound.of(sound);
    }
  },
  /** RIFF WAVE, uncompressed. */
  WAV {
    @Override
    byte[] encode(byte[] sound) {
      return WavFile.of(Frames.RATE, sound);
    }
  };

  /**
   * The bytes of a file.
   *
   * @param sound the samples of {@link Frames}
   * @throws IOException if the encoder fails
   */
  abstract byte[] encode(byte[] sound) throws IOException;

  /** Loads what the first clip needs, so that its reply does not wait for it. */
  public void prepare() {
    try {
      encode(new byte[Frames.RATE]);
    } catch (IOException e) {
      // The first clip will tell.
    }
  }

  /** The ending of the file's name, without the dot. */
  String ending() {
    return name().toLowerCase(Locale.ROOT);
  }
}
