package org.undercall.adapter.activity;

import io.github.givimad.libfvadjni.VoiceActivityDetector;
import io.github.givimad.libfvadjni.VoiceActivityDetector.Mode;
import io.github.givimad.libfvadjni.VoiceActivityDetector.SampleRate;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * The native detector (Gaussian mixtures over six bands). In its second mode of strictness it
 * missed no phrase in measurements, and a word counts as over about 60 ms after its end.
 *
 * <p>Natives are inside for Linux (x64, ARM), macOS and Windows x64. They keep all detectors in one
 * table without a guard, so only one thread at a time may enter.
 */
final class FvadActivity implements Activity {
  private static final Object GUARD = new Object();
  private static final boolean THERE = load();

  private final VoiceActivityDetector detector;
  private boolean closed;

  FvadActivity() {
    synchronized (GUARD) {
      try {
        detector = VoiceActivityDetector.newInstance();
        detector.setMode(Mode.AGGRESSIVE);
        detector.setSampleRate(SampleRate.fromValue(16_000));
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  /** Whether the native library could be loaded. */
  static boolean isThere() {
    return THERE;
  }

  @Override
  public boolean isSpeech(byte[] frame) {
    short[] samples = new short[FRAME_SAMPLES];
    int length = Math.min(frame.length, 2 * FRAME_SAMPLES);
    ByteBuffer.wrap(frame, 0, length)
        .order(ByteOrder.LITTLE_ENDIAN)
        .asShortBuffer()
        .get(samples, 0, length / 2);
    synchronized (GUARD) {
      try {
        return detector.process(samples);
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  @Override
  public void close() {
    synchronized (GUARD) {
      if (!closed) {
        detector.close();
        closed = true;
      }
    }
  }

  private static boolean load() {
    try {
      VoiceActivityDetector.loadLibrary();
      return true;
    } catch (IOException | LinkageError e) {
      return false; // The detector by loudness takes its place.
    }
  }
}
