package org.undercall.adapter.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.procedure.Walk;

/**
 * Any bytes as a procedure file, as JSON and as YAML: read, walked and checked, or refused with
 * coded faults.
 */
public final class ProcedureTarget {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 5);
  private static final Path JSON = file(".json");
  private static final Path YAML = file(".yaml");

  private ProcedureTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    read(JSON, data);
    read(YAML, data);
  }

  private static void read(Path path, byte[] data) throws IOException {
    Files.write(path, data);
    try {
      LoadedProcedure loaded = ProcedureFile.load(path);
      if (Walk.of(loaded.procedure()).places().isEmpty()) {
        throw new AssertionError("a procedure without a step was read");
      }
      ProcedureCheck.of(loaded.procedure(), DAY)
          .forEach(finding -> loaded.places().of(finding.pointer()));
    } catch (ProcedureFaults e) {
      for (ProcedureFault fault : e.faults()) {
        Coded.requireCode("PRO", fault.toString());
      }
    }
  }

  private static Path file(String ending) {
    try {
      Path file = Files.createTempFile("undercall-procedure", ending);
      file.toFile().deleteOnExit();
      return file;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
