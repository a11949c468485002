package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.IntentKind;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Voice;

@DisplayName("An ear that must be called")
class CalledEarTest {
  private static final Set<IntentKind> WORK = Set.of(IntentKind.TORQUE_COMPLETED, IntentKind.NOTE);
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private final List<Set<IntentKind>> listenedFor = new ArrayList<>();
  private final List<Long> patience = new ArrayList<>();
  private final List<String> said = new ArrayList<>();
  private final List<String> phrases = new ArrayList<>();
  private int forgot;
  private long millis = 1_000_000;

  private final Ear inner =
      new Ear() {
        @Override
        public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis)
            throws EndOfInput {
          listenedFor.add(allowed);
          patience.add(patienceMillis);
          if (phrases.isEmpty()) {
            throw new EndOfInput();
          }
          return Optional.of(Heard.typed(phrases.remove(0)))
              .filter(h -> !h.phrase().words().isEmpty());
        }

        @Override
        public void forget() {
          forgot++;
        }

        @Override
        public void close() {}
      };

  private final Voice voice =
      new Voice() {
        @Override
        public void say(String words) {
          said.add(words);
        }

        @Override
        public void close() {}
      };

  private final CalledEar ear =
      new CalledEar(
          inner,
          voice,
          () -> new Moment(START.plusNanos(millis * 1_000_000), millis),
          Duration.ofSeconds(30));

  private String hears(String phrase) throws Ear.EndOfInput {
    phrases.add(phrase);
    return ear.next(WORK, 60_000).map(Heard::text).orElse("");
  }

  @Test
  @DisplayName("passes nothing on before the call, and listens for nothing else")
  void closed() throws Ear.EndOfInput {
    assertEquals("", hears("torque reached"));
    assertEquals("", hears("attention please [unk]"));
    assertEquals("", hears("attention please"));
    assertEquals(List.of(), said);
    assertEquals(3, ear.ignored());
    assertEquals(
        Set.of(
            EnumSet.of(
                IntentKind.ATTENTION,
                IntentKind.CAR_RAISED,
                IntentKind.CAR_LOWERED,
                IntentKind.JACK_MOVED,
                IntentKind.DANGER)),
        Set.copyOf(listenedFor));
  }

  @Test
  @DisplayName("passes on what cancels a load though nobody called it")
  void danger() throws Ear.EndOfInput {
    assertEquals("jack slipped", hears("jack slipped"));
    assertEquals("i moved the jack", hears("i moved the jack"));
    assertEquals(0, ear.ignored());
  }

  @Test
  @DisplayName("answers the call, which is not passed on, and then passes everything on")
  void open() throws Ear.EndOfInput {
    assertEquals("", hears("attention please listen"));
    assertEquals(List.of("Listening."), said);
    assertEquals(1, forgot);
    assertEquals("torque reached", hears("torque reached"));
    assertEquals("rubbish", hears("rubbish"));
    assertEquals(
        Set.of(IntentKind.TORQUE_COMPLETED, IntentKind.NOTE, IntentKind.ATTENTION),
        listenedFor.get(1));
    assertEquals(0, ear.ignored());
  }

  @Test
  @DisplayName("closes after its time, which a reply begins anew")
  void closes() throws Ear.EndOfInput {
    hears("attention please listen");
    millis += 29_999;
    assertEquals("torque reached", hears("torque reached"));
    assertEquals(1, patience.get(1));
    ear.forget();
    millis += 29_999;
    assertEquals("torque reached", hears("torque reached"));
    millis += 1;
    assertEquals("", hears("torque reached"));
    assertEquals(1, ear.ignored());
  }

  @Test
  @DisplayName("is not opened by a reply alone, such as that of a timer")
  void replyWhileClosed() throws Ear.EndOfInput {
    ear.forget();
    assertEquals("", hears("torque reached"));
  }

  @Test
  @DisplayName("called again while open answers and stays open")
  void calledAgain() throws Ear.EndOfInput {
    hears("attention please listen");
    millis += 20_000;
    assertEquals("", hears("attention please listen"));
    millis += 20_000;
    assertEquals("torque reached", hears("torque reached"));
  }

  @Test
  @DisplayName("stays open for a note")
  void note() throws Ear.EndOfInput {
    phrases.add("rust on the left arm");
    assertEquals(
        "rust on the left arm",
        ear.next(Set.of(IntentKind.NOTE_TEXT), 60_000).orElseThrow().text());
  }

  @Test
  @DisplayName("ends with its input")
  void end() {
    assertThrows(Ear.EndOfInput.class, () -> ear.next(WORK, 60_000));
  }
}
