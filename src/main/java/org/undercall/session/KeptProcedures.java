package org.undercall.session;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;

/**
 * The procedures that sessions were begun with. One that several sessions have is read once; they
 * are told apart by their hash. Several threads may use it.
 */
public final class KeptProcedures {
  private static final int MOST = 64;

  private final Map<String, Kept> known = new ConcurrentHashMap<>();

  /**
   * A procedure kept with a session.
   *
   * @param walk its steps; empty if this version cannot use it
   * @param vehicle what it is for; blank if that cannot be read
   */
  public record Kept(Optional<Walk> walk, String vehicle) {}

  /**
   * The procedure kept with a session.
   *
   * @param sha256 the hash that its bytes were found to have
   * @param file where they were read; its name tells their language
   * @param bytes those that were verified; nothing is read again
   */
  Kept of(String sha256, Path file, byte[] bytes) {
    if (known.size() >= MOST) {
      known.clear();
    }
    return known.computeIfAbsent(sha256 + " " + file.getFileName(), any -> read(file, bytes));
  }

  /** The procedure that lies in the folder of a session, whether it began with it or not. */
  static Kept read(SessionFolder folder) {
    Path file = folder.procedure();
    try {
      return read(file, Files.readAllBytes(file));
    } catch (IOException e) {
      return new Kept(Optional.empty(), "");
    }
  }

  /** One that needs other files was kept by no session, so it has no steps here. */
  private static Kept read(Path file, byte[] bytes) {
    try {
      LoadedProcedure loaded = ProcedureFile.of(file, bytes);
      Optional<Walk> walk =
          loaded.assembled().made() ? Optional.empty() : Optional.of(Walk.of(loaded.procedure()));
      return new Kept(walk, loaded.procedure().about().vehicle());
    } catch (Fault e) {
      return new Kept(Optional.empty(), vehicle(bytes)); // Whether it is of use is not asked.
    }
  }

  private static String vehicle(byte[] bytes) {
    try {
      JsonNode vehicle = new ObjectMapper().readTree(bytes).path("vehicle");
      return vehicle.isTextual() ? vehicle.textValue() : "";
    } catch (IOException e) {
      return "";
    }
  }
}
