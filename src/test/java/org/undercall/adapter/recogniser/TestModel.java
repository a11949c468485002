package org.undercall.adapter.recogniser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.undercall.port.Fault;

/** Gives tests the model that the build unpacked, loaded, and copies of its folder to spoil. */
public final class TestModel {
  private static final byte[] FST = {(byte) 0xd6, (byte) 0xfd, (byte) 0xb2, 0x7e, 9, 9};
  private static final Map<String, byte[]> FILES =
      Map.of(
          "am/final.mdl", new byte[] {0, 'B', 9, 9},
          "conf/mfcc.conf", new byte[] {9},
          "conf/model.conf", new byte[] {9},
          "graph/HCLr.fst", FST,
          "graph/Gr.fst", FST,
          "graph/phones/word_boundary.int", new byte[] {9});

  private static SpeechModel loaded;

  private TestModel() {}

  /** The model, loaded once for all tests and never closed. */
  public static synchronized SpeechModel shared() throws Fault {
    if (loaded == null) {
      loaded = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    }
    return loaded;
  }

  /** A folder shaped like a model, of a few bytes, with its checksum list beside it. */
  static Path tiny(Path parent) throws IOException {
    Path folder = parent.resolve("model");
    var list = new StringBuilder();
    for (Map.Entry<String, byte[]> file : FILES.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
      list.append(ChecksumList.sha256(path)).append("  ").append(file.getKey()).append('\n');
    }
    Files.writeString(parent.resolve("model.sha256"), list);
    return folder;
  }

  /** A copy of the true model, with its checksum list beside it. */
  static Path copied(Path parent) throws IOException {
    Path from = ModelFolder.standard().toAbsolutePath();
    Path to = parent.resolve("copy");
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
        Path target = to.resolve(from.relativize(file));
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
    Files.copy(
        from.resolveSibling(ModelFolder.STANDARD + ".sha256"), parent.resolve("copy.sha256"));
    return to;
  }
}
