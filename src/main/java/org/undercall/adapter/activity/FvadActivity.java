package org.undercall.adapter.activity;

import com.sun.jna.Memory;
import com.sun.jna.Pointer;
import java.util.Optional;
import org.undercall.sound.Frames;

/**
 * The native detector (Gaussian mixtures over six bands). In its second mode of strictness it
 * missed no phrase in measurements, and a word counts as over about 60 ms after its end.
 */
final class FvadActivity implements Activity {
  private static final Optional<Fvad> FVAD = Fvad.load();
  private static final int AGGRESSIVE = 2;

  private final Fvad fvad;
  private final Memory memory = new Memory(Frames.FRAME_BYTES);
  private Pointer detector;

  FvadActivity() {
    fvad = FVAD.orElseThrow(() -> new IllegalStateException("no native detector here"));
    detector = fvad.fvad_new();
    if (detector == null
        || fvad.fvad_set_mode(detector, AGGRESSIVE) < 0
        || fvad.fvad_set_sample_rate(detector, Frames.RATE) < 0) {
      throw new IllegalStateException("the library made no detector");
    }
  }

  /** Whether the native library could be loaded. */
  static boolean isThere() {
    return FVAD.isPresent();
  }

  @Override
  public synchronized boolean isSpeech(byte[] frame) {
    if (detector == null) {
      throw new IllegalStateException("the detector is closed");
    }
    int length = Math.min(frame.length, Frames.FRAME_BYTES);
    memory.clear();
    memory.write(0, frame, 0, length); // Little-endian, as is every system that has a library.
    return fvad.fvad_process(detector, memory, new Fvad.SizeT(Frames.FRAME_SAMPLES)) > 0;
  }

  @Override
  public synchronized void close() {
    if (detector != null) {
      fvad.fvad_free(detector);
      memory.close();
      detector = null;
    }
  }
}
