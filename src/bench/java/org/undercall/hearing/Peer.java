package org.undercall.hearing;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;

/**
 * Another recogniser on the same clips: pocketsphinx with its stock English model and a grammar.
 */
final class Peer {
  private static final Path MODEL = Path.of("/usr/share/pocketsphinx/model/en-us");
  private static final String PROGRAM = "pocketsphinx_batch";

  private Peer() {}

  /** Whether it is installed; says so if not. */
  static boolean isHere() {
    try {
      Process process =
          new ProcessBuilder(PROGRAM)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      process.waitFor();
      return Files.isDirectory(MODEL);
    } catch (IOException | InterruptedException e) {
      System.out.println("hearing: pocketsphinx is not installed, the comparison is left out");
      return false;
    }
  }

  /** What it heard in each clip, read by the program's interpreter; at most one intent a clip. */
  static List<List<Intent>> hear(List<Sound> clips, Set<IntentKind> allowed) {
    try {
      Path folder = Files.createTempDirectory("hearing-peer");
      try {
        return run(folder, clips, allowed);
      } finally {
        try (Stream<Path> files = Files.list(folder)) {
          for (Path file : files.toList()) {
            Files.delete(file);
          }
        }
        Files.delete(folder);
      }
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<List<Intent>> run(Path folder, List<Sound> clips, Set<IntentKind> allowed)
      throws IOException, InterruptedException {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < clips.size(); i++) {
      String name = String.format("%05d", i);
      names.add(name);
      Files.write(folder.resolve(name + ".raw"), bytes(clips.get(i)));
    }
    Path grammar = Files.writeString(folder.resolve("g.gram"), PeerGrammar.of(allowed));
    Path list = Files.write(folder.resolve("list"), names);
    Path answers = folder.resolve("answers");
    Process process =
        new ProcessBuilder(
                List.of(
                    PROGRAM,
                    "-hmm",
                    MODEL.resolve("en-us").toString(),
                    "-dict",
                    MODEL.resolve("cmudict-en-us.dict").toString(),
                    "-jsgf",
                    grammar.toString(),
                    "-adcin",
                    "yes",
                    "-cepdir",
                    folder.toString(),
                    "-cepext",
                    ".raw",
                    "-ctl",
                    list.toString(),
                    "-hyp",
                    answers.toString()))
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    if (process.waitFor() != 0 || !Files.isRegularFile(answers)) {
      List<String> log = Files.readAllLines(folder.resolve("log"));
      throw new IOException(
          "pocketsphinx failed: " + log.subList(Math.max(0, log.size() - 3), log.size()));
    }
    return Files.readAllLines(answers).stream().map(line -> intents(line, allowed)).toList();
  }

  private static List<Intent> intents(String line, Set<IntentKind> allowed) {
    int end = line.lastIndexOf('(');
    String words = line.substring(0, Math.max(0, end)).strip();
    return words.isEmpty()
        ? List.of()
        : List.of(
            Interpreter.interpret(
                RecognisedPhrase.typed(words), allowed, Interpreter.LEAST_CONFIDENCE));
  }

  private static byte[] bytes(Sound sound) {
    ByteBuffer bytes = ByteBuffer.allocate(2 * sound.length()).order(ByteOrder.LITTLE_ENDIAN);
    bytes.asShortBuffer().put(sound.samples());
    return bytes.array();
  }
}
