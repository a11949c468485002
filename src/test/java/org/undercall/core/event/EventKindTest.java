package org.undercall.core.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The dictionary of events")
class EventKindTest {
  private static final String HASH = "0123456789abcdef".repeat(4);

  @Test
  @DisplayName("has an entry for every event there is, and no other")
  void complete() {
    Set<Class<?>> events = Set.of(SessionEvent.class.getPermittedSubclasses());
    Set<Class<?>> entries =
        Arrays.stream(EventKind.values()).map(EventKind::type).collect(Collectors.toSet());
    assertEquals(events, entries);
    assertEquals(events.size(), EventKind.values().length);
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(EventKind.class)
  @DisplayName("finds an event by its permanent id, and says it in a sentence")
  void entry(EventKind kind) {
    assertEquals(Optional.of(kind), EventKind.withId(kind.id()));
    assertTrue(kind.id().matches("EV[0-9]{2,3}"), kind.id());
    assertTrue(kind.sentence().matches("[A-Z][^.]*\\."), kind.sentence());
  }

  @Test
  @DisplayName("knows no other id")
  void unknown() {
    assertEquals(Optional.empty(), EventKind.withId("EV00"));
    assertEquals(Optional.empty(), EventKind.withId("ev01"));
  }

  @ParameterizedTest(name = "''{0}''")
  @ValueSource(
      strings = {"../000001.wav", "000001.wav/..", "1.wav", "000001.mp3", "", "000001.WAV"})
  @DisplayName("names no clip that could lie outside its folder")
  void clipNames(String file) {
    assertThrows(IllegalArgumentException.class, () -> new Clip(file, HASH));
  }

  @ParameterizedTest(name = "''{0}''")
  @ValueSource(
      strings = {"", "abc", "0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF"})
  @DisplayName("names no clip without its hash")
  void clipHashes(String hash) {
    assertThrows(IllegalArgumentException.class, () -> new Clip("000001.wav", hash));
    assertEquals(HASH, new Clip("000001.wav", HASH).sha256());
  }
}
