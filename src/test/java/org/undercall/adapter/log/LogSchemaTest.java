package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;

@DisplayName("The schema of a log line")
class LogSchemaTest {

  private static String line(SessionEvent event) {
    return LogLine.write(Samples.decision(1, event), LogLine.FIRST).text();
  }

  @Test
  @DisplayName("is made from the code and not stale")
  void fresh() throws Exception {
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.writeString(LogSchema.FILE, LogSchema.text());
    }
    assertEquals(LogSchema.text(), Files.readString(LogSchema.FILE));
  }

  @Test
  @DisplayName("takes every event with every sample of its fields")
  void everyEvent() throws Exception {
    LogSchema schema = new LogSchema();
    for (EventKind kind : EventKind.values()) {
      for (SessionEvent event : Samples.of(kind)) {
        assertEquals(List.of(), schema.faults(line(event)), () -> "" + event);
      }
    }
  }

  @Test
  @DisplayName("refuses a field of another type and a field left out, and so does the program")
  void changedTypes() throws Exception {
    LogSchema schema = new LogSchema();
    int changed = 0;
    for (EventKind kind : EventKind.values()) {
      String good = line(Samples.of(kind).get(1 % Samples.of(kind).size()));
      for (RecordComponent field : kind.type().getRecordComponents()) {
        ObjectNode other = (ObjectNode) LogSchema.tree(good);
        ObjectNode event = (ObjectNode) other.get("events").get(0);
        event.putObject(field.getName());
        refused(schema, other, kind + " " + field.getName());
        changed++;
        event.remove(field.getName());
        if (field.getType() == Optional.class) {
          assertEquals(List.of(), schema.faults(other.toString()));
        } else {
          refused(schema, other, kind + " without " + field.getName());
          changed++;
        }
      }
    }
    System.out.printf("%d changed or absent fields refused%n", changed);
  }

  private static void refused(LogSchema schema, ObjectNode line, String what) throws Exception {
    assertFalse(schema.faults(line.toString()).isEmpty(), what);
    assertThrows(Fault.class, () -> LogLine.read(line.toString(), LogLine.FIRST, "line 1"), what);
  }

  @Test
  @DisplayName("refuses members of the line that are absent or of another type")
  void members() throws Exception {
    LogSchema schema = new LogSchema();
    String good = line(new SessionEvent.WorkHeld());
    for (String member : List.of("seq", "at", "mono", "events", "said", "prev", "sum")) {
      ObjectNode line = (ObjectNode) LogSchema.tree(good);
      assertNotNull(line.remove(member));
      assertFalse(schema.faults(line.toString()).isEmpty(), member);
      line.put(member, true);
      assertFalse(schema.faults(line.toString()).isEmpty(), member);
    }
    ObjectNode unknown = (ObjectNode) LogSchema.tree(good);
    ((ObjectNode) unknown.get("events").get(0)).put("id", "EV99");
    assertFalse(schema.faults(unknown.toString()).isEmpty());
  }

  @Test
  @DisplayName("takes every line that version 1 wrote")
  void versionOne() throws Exception {
    LogSchema schema = new LogSchema();
    try (var in = getClass().getResourceAsStream("/logs/v1.jsonl")) {
      String log = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (String line : log.lines().toList()) {
        assertEquals(List.of(), schema.faults(line), line);
      }
    }
  }
}
