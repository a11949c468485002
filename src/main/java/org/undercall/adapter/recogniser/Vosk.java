package org.undercall.adapter.recogniser;

import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Platform;
import com.sun.jna.Pointer;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.undercall.port.Fault;

/**
 * The functions of the Vosk 0.3.45 library that are used here.
 *
 * <p>This takes the place of the Java class in the library's jar, for two reasons. That class binds
 * every function when it is loaded, and the macOS library of 0.3.45 lacks one of them
 * (vosk_recognizer_set_grm), so it fails there; an interface binds a function at its first call,
 * and the one that is missing is not needed. And it has no vosk_model_find_word, without which a
 * word that the model does not know can never be heard and nobody is told.
 *
 * <p>The symbols were checked in the Linux, Windows and macOS libraries; it was run on Linux only.
 */
interface Vosk extends Library {

  /** From 0 (errors and information) down: -10 is silence. */
  void vosk_set_log_level(int level);

  Pointer vosk_model_new(String path);

  void vosk_model_free(Pointer model);

  /** The number of the word, or -1. */
  int vosk_model_find_word(Pointer model, String word);

  Pointer vosk_recognizer_new(Pointer model, float rate);

  Pointer vosk_recognizer_new_grm(Pointer model, float rate, String grammar);

  void vosk_recognizer_set_words(Pointer recogniser, int words);

  void vosk_recognizer_set_max_alternatives(Pointer recogniser, int alternatives);

  int vosk_recognizer_accept_waveform(Pointer recogniser, byte[] sound, int length);

  String vosk_recognizer_result(Pointer recogniser);

  String vosk_recognizer_partial_result(Pointer recogniser);

  String vosk_recognizer_final_result(Pointer recogniser);

  void vosk_recognizer_free(Pointer recogniser);

  /**
   * The library from the classpath, silenced. It is loaded once and kept to the end: JNA unloads a
   * library that nothing holds any more, and to unload this one can kill the process.
   *
   * @throws Fault MOD-009 if there is none for this system
   */
  static Vosk load() throws Fault {
    return Kept.library();
  }

  /** Keeps the library. */
  final class Kept {
    private static Vosk library;

    private Kept() {}

    private static synchronized Vosk library() throws Fault {
      if (library == null) {
        library = loaded();
      }
      return library;
    }
  }

  private static Vosk loaded() throws Fault {
    try {
      String name = Platform.isWindows() ? windowsLibrary() : "vosk";
      Vosk vosk = Native.load(name, Vosk.class, Map.of(Library.OPTION_STRING_ENCODING, "UTF-8"));
      vosk.vosk_set_log_level(-10);
      return vosk;
    } catch (LinkageError | IOException e) {
      throw new Fault(
          ModelCode.NO_LIBRARY,
          Platform.RESOURCE_PREFIX,
          "the recogniser library cannot be loaded, expected one of linux-x86-64, win32-x86-64,"
              + " darwin ("
              + String.valueOf(e.getMessage()).lines().findFirst().orElse("")
              + ")");
    }
  }

  /** Unpacks the library with the three that it needs, since Windows looks for them beside it. */
  private static String windowsLibrary() throws IOException {
    Path folder = Files.createTempDirectory("undercall");
    folder.toFile().deleteOnExit();
    for (String name : List.of("libwinpthread-1", "libgcc_s_seh-1", "libstdc++-6", "libvosk")) {
      String file = name + ".dll";
      try (InputStream in = Vosk.class.getResourceAsStream("/win32-x86-64/" + file)) {
        if (in == null) {
          throw new IOException(file + " is not on the classpath");
        }
        Files.copy(in, folder.resolve(file));
        folder.resolve(file).toFile().deleteOnExit();
      }
    }
    NativeLibrary.addSearchPath("libvosk", folder.toString());
    return "libvosk";
  }
}
