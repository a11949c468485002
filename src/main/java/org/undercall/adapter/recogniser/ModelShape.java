package org.undercall.adapter.recogniser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.undercall.port.Fault;

/** What every model that can be held to a word list has: files and how they begin. */
final class ModelShape {
  /** How an OpenFst file begins, in hex: the number 2125659606, little-endian. */
  private static final String FST = "d6fdb27e";

  /** How a binary Kaldi file begins, in hex. */
  private static final String KALDI = "0042";

  private record Needed(String name, String start) {}

  private static final List<Needed> NEEDED =
      List.of(
          new Needed("am/final.mdl", KALDI),
          new Needed("conf/mfcc.conf", ""),
          new Needed("conf/model.conf", ""),
          new Needed("graph/HCLr.fst", FST),
          new Needed("graph/Gr.fst", FST),
          new Needed("graph/phones/word_boundary.int", ""));

  private ModelShape() {}

  static void check(Path folder, Set<String> names) throws Fault, IOException {
    if (names.contains("graph/HCLG.fst") && !names.contains("graph/HCLr.fst")) {
      throw new Fault(
          ModelCode.NO_WORD_LISTS,
          folder.resolve("graph/HCLG.fst").toString(),
          "one fixed graph",
          "graph/HCLr.fst and graph/Gr.fst; such a model cannot be held to a word"
              + " list, use a small or an lgraph model");
    }
    for (Needed needed : NEEDED) {
      if (!names.contains(needed.name())) {
        throw notAModel(folder, needed, "is missing; every model with word lists has it");
      }
      if (Files.size(folder.resolve(needed.name())) == 0) {
        throw notAModel(folder, needed, "is empty");
      }
      String found = start(folder.resolve(needed.name()), needed.start().length() / 2);
      if (!found.equals(needed.start())) {
        throw notAModel(folder, needed, "begins with " + found + ", expected " + needed.start());
      }
    }
  }

  private static Fault notAModel(Path folder, Needed needed, String what) {
    return new Fault(ModelCode.NOT_A_MODEL, folder.resolve(needed.name()).toString(), what);
  }

  private static String start(Path file, int length) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return HexFormat.of().formatHex(in.readNBytes(length));
    }
  }
}
