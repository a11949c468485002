package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.nio.file.Path;
import org.undercall.core.event.EventKind;
import org.undercall.port.Fault;

/**
 * What a damaged log seems to be about; nothing of it is sure.
 *
 * @param title of the procedure; blank if it is not said
 * @param revision of the procedure
 * @param sha256 of the procedure's file
 * @param events how many the lines have that are JSON
 */
public record LogGlance(String title, String revision, String sha256, long events) {
  /** Looks at every line of a log that is JSON, whatever its sum. */
  public static LogGlance of(Path log) throws Fault {
    LogGlance glance = new LogGlance("", "", "", 0);
    for (String line : new String(SessionLogFile.bytes(log), UTF_8).lines().toList()) {
      glance = glance.with(events(line));
    }
    return glance;
  }

  /** The events of a line; none if it is no JSON. */
  private static JsonNode events(String line) {
    try {
      return LogJson.read(line).path("events");
    } catch (Fault e) {
      return MissingNode.getInstance();
    }
  }

  private LogGlance with(JsonNode found) {
    LogGlance glance = this;
    for (JsonNode event : found) {
      boolean start = event.path("id").asText("").equals(EventKind.SESSION_STARTED.id());
      glance =
          new LogGlance(
              start ? event.path("title").asText("") : glance.title,
              start ? event.path("revision").asText("") : glance.revision,
              start ? event.path("sha256").asText("") : glance.sha256,
              glance.events + 1);
    }
    return glance;
  }
}
