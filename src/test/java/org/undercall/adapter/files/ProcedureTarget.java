package org.undercall.adapter.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.procedure.Walk;

/** Any bytes as a procedure file: read, walked and checked, or refused with coded faults. */
public final class ProcedureTarget {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 5);
  private static final Path FILE = file();

  private ProcedureTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    Files.write(FILE, data);
    try {
      LoadedProcedure loaded = ProcedureFile.load(FILE);
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

  private static Path file() {
    try {
      Path file = Files.createTempFile("undercall-procedure", ".json");
      file.toFile().deleteOnExit();
      return file;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
