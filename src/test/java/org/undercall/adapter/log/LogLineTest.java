package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.Clip;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("A line of the log")
class LogLineTest {

  private static Recorded readBack(Recorded decision) throws Fault {
    LogLine.Sealed line = LogLine.write(decision, LogLine.FIRST);
    byte[] bytes = line.bytes();
    String text = LogLine.whole(Arrays.copyOf(bytes, bytes.length - 1)).orElseThrow().text();
    return LogLine.read(text, LogLine.FIRST, "line 1");
  }

  private static Fault faultOf(String open) {
    String sum = Sha256.hex(open.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    String line = open + ",\"sum\":\"" + sum + "\"}\n";
    return assertThrows(
        Fault.class,
        () -> LogContent.of(line.getBytes(java.nio.charset.StandardCharsets.UTF_8), "log.jsonl"));
  }

  private static String lineWith(String events) {
    return "{\"seq\":1,\"at\":\"2026-11-25T09:12:03+01:00\",\"mono\":5,\"later\":{\"a\":[1]},"
        + "\"events\":["
        + events
        + "],\"said\":\"\",\"prev\":\""
        + LogLine.FIRST
        + "\"";
  }

  @Nested
  @DisplayName("gives back what was written")
  class RoundTrip {

    @ParameterizedTest
    @EnumSource(EventKind.class)
    @DisplayName("for every kind of event and every form of field")
    void everyKind(EventKind kind) throws Fault {
      List<SessionEvent> events = Samples.of(kind);
      Recorded decision = Samples.decision(1, events.toArray(SessionEvent[]::new));
      assertEquals(decision, readBack(decision));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "2026-11-25T09:12:00+01:00",
          "2026-11-25T09:12:03.412Z",
          "2026-11-25T09:12:03.000000001-03:30"
        })
    @DisplayName("for any time and offset")
    void anyTime(String at) throws Fault {
      Moment moment = new Moment(OffsetDateTime.parse(at), -9_223_372_036_854L);
      Recorded decision = new Recorded(1, moment, Optional.empty(), List.of(), "");
      assertEquals(decision, readBack(decision));
    }

    @Test
    @DisplayName("with the name and the hash of a clip")
    void clip() throws Fault {
      Recorded.Heard heard =
          new Recorded.Heard("six two", "value-called", 1, "spoken")
              .with(Optional.of(new Clip("000123.flac", "0a".repeat(32))));
      Recorded decision =
          new Recorded(1, Samples.decision(1).at(), Optional.of(heard), List.of(), "");
      assertEquals(decision, readBack(decision));
      String text = LogLine.write(decision, LogLine.FIRST).text();
      assertTrue(
          text.contains("\"how\":\"spoken\",\"clip\":{\"file\":\"000123.flac\",\"sha256\":\"0a0a"),
          text);
    }

    @Test
    @DisplayName("whatever the words are, and on one line for every reader")
    void oddTexts() throws Fault {
      Recorded.Heard heard = new Recorded.Heard(Samples.ODD_TEXT, "note-text", 1, "typed");
      Recorded decision =
          new Recorded(
              1, Samples.decision(1).at(), Optional.of(heard), List.of(), Samples.ODD_TEXT);
      assertEquals(decision, readBack(decision));
      String text = LogLine.write(decision, LogLine.FIRST).text();
      assertEquals(1, text.lines().count());
      assertFalse(
          text.chars().anyMatch(c -> Character.isISOControl(c) || c == 0x2028 || c == 0x2029));
      assertTrue(text.contains("90° N·m"), text);
    }
  }

  @Test
  @DisplayName("is plain JSON that reads like this")
  void readsLikeThis() {
    String line =
        LogLine.write(
                Samples.decision(1, Samples.of(EventKind.LOAD_CONFIRMED).get(1)), LogLine.FIRST)
            .text();
    assertEquals(
        "{\"seq\":1,\"at\":\"2026-11-25T09:12:01+01:00\",\"mono\":1000,"
            + "\"heard\":{\"text\":\"step completed\",\"intent\":\"step-completed\","
            + "\"confidence\":0.97,\"how\":\"spoken\"},"
            + "\"events\":[{\"id\":\"EV22\",\"event\":\"load-confirmed\",\"side\":\"right\","
            + "\"condition\":\"ride-height\",\"proof\":\"knuckle-jacked-body-lifting\","
            + "\"height\":\"382.5 mm\"}],\"said\":\"Recorded.\",\"prev\":\""
            + "0".repeat(64)
            + "\"",
        line.substring(0, line.indexOf(",\"sum\"")));
  }

  @Nested
  @DisplayName("of another version")
  class OtherVersion {

    @Test
    @DisplayName("loads with members that are not known here")
    void extraMembers() throws Fault {
      String text =
          lineWith("{\"id\":\"EV24\",\"event\":\"renamed\",\"change\":\"car-raised\",\"why\":1}");
      Recorded read = LogLine.read(text + "}", LogLine.FIRST, "line 1");
      assertEquals(EventKind.LOAD_CHANGED, EventKind.of(read.events().get(0)));
    }

    @Test
    @DisplayName("is refused with its line when it holds an unknown event, even at the end")
    void unknownEvent() {
      Fault fault = faultOf(lineWith("{\"id\":\"EV999\",\"event\":\"car-painted\"}"));
      assertEquals(LogCode.UNKNOWN_EVENT, fault.code());
      assertEquals(
          "LOG-007 log.jsonl line 1: found event EV999 car-painted,"
              + " expected an event this version knows",
          fault.getMessage());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "{\"id\":\"EV05\"}; step",
        "{\"id\":\"EV05\",\"step\":7}; step",
        "{\"id\":\"EV18\",\"step\":\"a\",\"marking\":\"hard\"}; marking",
        "{\"id\":\"EV24\",\"change\":\"car-sold\"}; change",
        "{\"id\":\"EV16\",\"side\":\"left\",\"value\":\"382 ft\"}; value",
        "{\"id\":\"EV16\",\"side\":\"left\",\"value\":\"1E9 mm\"}; value",
        "{\"id\":\"EV40\",\"complete\":\"yes\",\"open\":0}; complete",
        "{\"id\":\"EV40\",\"complete\":true,\"open\":99999999999}; open",
        "{\"id\":\"EV35\",\"step\":\"a\",\"seconds\":1,\"due\":\"noon\"}; due",
        "{\"id\":\"EV08\",\"step\":\"a\",\"stage\":1,\"value\":1E+999999999}; value",
        "{\"id\":\"EV08\",\"step\":\"a\",\"stage\":1,\"value\":1E-999999999}; value",
        "{\"id\":\"EV08\",\"step\":\"a\",\"stage\":1,\"value\":1E-2147483648}; (line)",
        "{\"id\":\"EV08\",\"step\":\"a\",\"stage\":1,\"value\":1E+25555555555555}; (line)",
        "{\"event\":\"step-closed\"}; id",
        "7; id"
      })
  @DisplayName("is refused with the member that does not have its form")
  void badMembers(String event, String member) {
    Fault fault = faultOf(lineWith(event));
    assertEquals(LogCode.BAD_MEMBER, fault.code());
    assertTrue(
        fault.getMessage().startsWith("LOG-008 log.jsonl line 1 member " + member + ": found "),
        fault.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "../../notes.flac, file",
    "/000123.flac, file",
    "000123.exe, file",
    "12.flac, file",
    "000123.flac, sha256"
  })
  @DisplayName("is refused when it names no clip of its folder, or no hash")
  void badClips(String file, String member) {
    String heard =
        "{\"heard\":{\"text\":\"x\",\"intent\":\"x\",\"confidence\":1,\"how\":\"spoken\","
            + "\"clip\":{\"file\":\""
            + file
            + "\",\"sha256\":\"12\"}},";
    Fault fault = faultOf(lineWith("").replaceFirst("\\{", heard));
    assertEquals(LogCode.BAD_MEMBER, fault.code());
    assertTrue(fault.getMessage().contains("member " + member + ": "), fault.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{\"seq\":1,\"seq\":1", "7", "{\"seq\":1}{", "null", "\"x\""})
  @DisplayName("is refused when it is no such JSON, though its sum is right")
  void noJson(String open) {
    assertEquals(LogCode.BAD_MEMBER, faultOf(open).code());
  }
}
