package org.undercall.adapter.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;

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
   * @param sha256 of its file
   * @param walk its steps; empty if this version cannot use it
   * @param vehicle what it is for; blank if that cannot be read
   */
  public record Kept(String sha256, Optional<Walk> walk, String vehicle) {}

  /** The procedure kept with a session; empty if its file cannot be read. */
  Optional<Kept> of(SessionFolder folder) {
    Path file = folder.procedure();
    try {
      byte[] bytes = Files.readAllBytes(file);
      String sha256 = LogLine.sha256(bytes);
      if (known.size() >= MOST) {
        known.clear();
      }
      return Optional.of(
          known.computeIfAbsent(
              sha256 + " " + file.getFileName(), any -> read(file, bytes, sha256)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Kept read(Path file, byte[] bytes, String sha256) {
    try {
      Procedure procedure = ProcedureFile.of(file, bytes).procedure();
      return new Kept(sha256, Optional.of(Walk.of(procedure)), procedure.about().vehicle());
    } catch (ProcedureFaults e) {
      String vehicle = vehicle(new String(bytes, StandardCharsets.UTF_8));
      return new Kept(sha256, Optional.empty(), vehicle); // Whether it is of use is not asked.
    }
  }

  private static String vehicle(String text) {
    try {
      JsonNode vehicle = LogJson.read(text).path("vehicle");
      return vehicle.isTextual() ? vehicle.textValue() : "";
    } catch (BadMember e) {
      return "";
    }
  }
}
