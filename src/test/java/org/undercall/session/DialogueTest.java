package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Voice;

@DisplayName("The printed dialogue")
class DialogueTest {
  private final StringWriter printed = new StringWriter();
  private final Dialogue dialogue = new Dialogue(new PrintWriter(printed));
  private final List<String> calls = new ArrayList<>();

  private final Ear ear =
      new Ear() {
        @Override
        public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
          calls.add("next " + allowed + " " + patienceMillis);
          return calls.size() == 1
              ? Optional.of(
                  new Heard(RecognisedPhrase.typed("take a break now"), Heard.How.PRESSED))
              : Optional.empty();
        }

        @Override
        public void forget() {
          calls.add("forget");
        }

        @Override
        public void close() {
          calls.add("close");
        }
      };

  @Test
  @DisplayName("shows each phrase as it is heard, and passes everything on")
  void heard() throws Ear.EndOfInput {
    try (Ear shown = dialogue.of(ear)) {
      Heard heard = shown.next(Set.of(IntentKind.HOLD), 7).orElseThrow();
      assertEquals("take a break now", heard.text());
      assertEquals(Heard.How.PRESSED, heard.how());
      assertEquals(Optional.empty(), shown.next(Set.of(), 8));
      shown.forget();
    }
    assertEquals(List.of("next [HOLD] 7", "next [] 8", "forget", "close"), calls);
    assertEquals(List.of("  heard  take a break now"), printed.toString().lines().toList());
  }

  @Test
  @DisplayName("shows each reply before it is spoken")
  void said() {
    Voice voice =
        new Voice() {
          @Override
          public void say(String words) {
            calls.add(printed.toString().strip() + " | " + words);
          }

          @Override
          public void close() {
            calls.add("close");
          }
        };
    try (Voice shown = dialogue.of(voice)) {
      shown.say("Step closed.");
    }
    assertEquals(List.of("reply  Step closed. | Step closed.", "close"), calls);
  }

  @Test
  @DisplayName("shows lines of its own as they are")
  void lines() {
    dialogue.print("New session.");
    assertEquals(List.of("New session."), printed.toString().lines().toList());
  }
}
