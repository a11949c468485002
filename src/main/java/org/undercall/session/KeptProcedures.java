package org.undercall.session;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
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
   * @param sha256 the hash that its file was found to have
   */
  public Kept of(SessionFolder folder, String sha256) {
    if (known.size() >= MOST) {
      known.clear();
    }
    String name = String.valueOf(folder.procedure().getFileName());
    return known.computeIfAbsent(sha256 + " " + name, any -> read(folder));
  }

  /** The procedure kept with a session, whatever its hash. */
  static Kept read(SessionFolder folder) {
    try {
      Procedure procedure = ProcedureFile.load(folder.procedure()).procedure();
      return new Kept(Optional.of(Walk.of(procedure)), procedure.about().vehicle());
    } catch (Fault e) {
      return new Kept(Optional.empty(), vehicle(folder)); // Whether it is of use is not asked.
    }
  }

  private static String vehicle(SessionFolder folder) {
    try {
      JsonNode vehicle = new ObjectMapper().readTree(folder.procedure().toFile()).path("vehicle");
      return vehicle.isTextual() ? vehicle.textValue() : "";
    } catch (IOException e) {
      return "";
    }
  }
}
