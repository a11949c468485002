package org.undercall.adapter.activity;

import com.sun.jna.IntegerType;
import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Platform;
import com.sun.jna.Pointer;
import java.io.File;
import java.io.IOException;
import java.util.Optional;

/**
 * The functions of libfvad (fvad.h, version 1.0), out of the native library inside libfvad-jni.
 *
 * <p>That library's own Java class is not used: it never frees its copy of a frame, 117 MB an hour.
 */
interface Fvad extends Library {
  /** Makes a detector; null without memory. */
  Pointer fvad_new();

  void fvad_free(Pointer detector);

  /** How strict it is, 0 to 3; gives -1 for another mode. */
  int fvad_set_mode(Pointer detector, int mode);

  /** Samples a second; gives -1 for another rate than 8000, 16000, 32000 or 48000. */
  int fvad_set_sample_rate(Pointer detector, int rate);

  /** Gives 1 for speech, 0 for none, -1 if the frame is not of 10, 20 or 30 ms. */
  int fvad_process(Pointer detector, Pointer frame, SizeT samples);

  /** C's {@code size_t}. */
  final class SizeT extends IntegerType {
    private static final long serialVersionUID = 1;

    /** Zero. */
    public SizeT() {
      this(0);
    }

    SizeT(long value) {
      super(Native.SIZE_T_SIZE, value, true);
    }
  }

  /** The library for this system; empty if there is none, or it does not show these functions. */
  static Optional<Fvad> load() {
    try {
      File file = Native.extractFromResourcePath(resource(), Fvad.class.getClassLoader());
      NativeLibrary.getInstance(file.getPath()).getFunction("fvad_process");
      return Optional.of(Native.load(file.getPath(), Fvad.class));
    } catch (IOException | UnsatisfiedLinkError e) {
      return Optional.empty(); // The detector by loudness takes its place.
    }
  }

  private static String resource() {
    String processor = Platform.isARM() ? "arm64" : "amd64";
    if (Platform.isMac()) {
      return "/macos-" + processor + "/libfvadjni.dylib";
    }
    return Platform.isWindows()
        ? "/win-amd64/libfvadjni.dll"
        : "/debian-" + processor + "/libfvadjni.so";
  }
}
