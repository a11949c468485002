package org.undercall.adapter.procedure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.undercall.adapter.log.Coded;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;

/**
 * Any bytes as a procedure file, and as a block that one includes, as JSON and as YAML: read,
 * walked and checked, or refused with coded faults. Whatever is included, nothing outside the
 * folder of the procedure is read.
 */
public final class ProcedureTarget {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 5);

  /** Stands in every file that must not be read; another one each time, so no input can hold it. */
  private static final String OUTSIDE = UUID.randomUUID().toString();

  private static final Path FOLDER = folder();

  private ProcedureTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    for (String ending : List.of(".json", ".yaml")) {
      Files.write(FOLDER.resolve("any" + ending), data);
      Files.write(FOLDER.resolve("blocks/any" + ending), data);
      read(FOLDER.resolve("any" + ending));
      read(FOLDER.resolve("holder" + ending));
    }
  }

  private static void read(Path path) throws IOException {
    try {
      LoadedProcedure loaded = ProcedureFile.load(path);
      if (Walk.of(loaded.procedure()).places().isEmpty()) {
        throw new AssertionError("a procedure without a step was read");
      }
      ProcedureCheck.of(loaded.procedure(), DAY)
          .forEach(finding -> loaded.places().of(finding.pointer()));
      requireInside(loaded.procedure().toString());
      requireWhole(loaded);
    } catch (Fault e) {
      for (Fault.Finding fault : e.findings()) {
        Coded.requireCode("PRO", fault.toString());
        requireInside(fault.toString());
      }
    }
  }

  private static void requireInside(String text) {
    for (int i = 0; i + OUTSIDE.length() <= text.length(); i++) {
      if (isOutside(text, i)) {
        throw new AssertionError("something from outside the folder was read: " + text);
      }
    }
  }

  /** Compares by hand: the fuzzer looks on when texts are compared, and writes what is sought. */
  private static boolean isOutside(String text, int from) {
    int same = 0;
    while (same < OUTSIDE.length() && text.charAt(from + same) == OUTSIDE.charAt(same)) {
      same++;
    }
    return same == OUTSIDE.length();
  }

  /** What a session keeps gives the same procedure without any other file. */
  private static void requireWhole(LoadedProcedure loaded) throws IOException, Fault {
    Path alone = FOLDER.resolveSibling("alone").resolve(loaded.wholeName());
    Files.write(alone, loaded.wholeBytes());
    LoadedProcedure again = ProcedureFile.load(alone);
    if (!again.procedure().equals(loaded.procedure()) || !again.sha256().equals(loaded.sha256())) {
      throw new AssertionError("the whole procedure is another one: " + loaded.file());
    }
  }

  private static Path folder() {
    try {
      Path above = Files.createTempDirectory("undercall-procedure");
      Files.createDirectory(above.resolve("alone"));
      Path folder = Files.createDirectory(above.resolve("inside"));
      Blocks.copy(Path.of("src/test/resources/procedures/blocks"), folder.resolve("blocks"));
      Path secret = above.resolve("secret.json");
      Files.writeString(secret, Blocks.block("", Blocks.step("secret").replace("Do it", OUTSIDE)));
      Files.createSymbolicLink(folder.resolve("blocks/link.json"), secret);
      Files.createSymbolicLink(folder.resolve("out"), above);
      String steps =
          "{\"include\": \"blocks/any%s\", \"with\": {\"stages\": [{\"torque\": 80,"
              + " \"unit\": \"N·m\", \"plusMinus\": 4}]}}";
      for (String ending : List.of(".json", ".yaml")) {
        Files.writeString(
            folder.resolve("holder" + ending),
            Blocks.procedure("", List.of(steps.formatted(ending))));
      }
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(above)));
      return folder;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
