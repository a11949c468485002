package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;

@DisplayName("The event dictionary")
class EventDictionaryTest {
  private static final Path PAGE = Path.of("docs/reference/events.md");

  @Test
  @DisplayName("has every event of the code, once")
  void complete() {
    Set<Class<?>> known =
        Arrays.stream(EventKind.values()).map(EventKind::type).collect(Collectors.toSet());
    assertEquals(new HashSet<>(Arrays.asList(SessionEvent.class.getPermittedSubclasses())), known);
    assertEquals(
        EventKind.values().length,
        Arrays.stream(EventKind.values()).map(EventKind::id).distinct().count());
  }

  @Test
  @DisplayName("uses no field name that the log needs for itself")
  void noClash() {
    for (EventKind kind : EventKind.values()) {
      for (RecordComponent field : kind.type().getRecordComponents()) {
        assertTrue(!Set.of("id", "event").contains(field.getName()), kind + " " + field);
      }
    }
  }

  @Test
  @DisplayName(
      "in docs/reference/events.md is as the code has it (-Dundercall.regenerate=true rewrites it)")
  void pageIsFresh() throws Exception {
    String page = EventDictionaryPage.text();
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, page);
    }
    assertEquals(page, Files.readString(PAGE));
  }
}
