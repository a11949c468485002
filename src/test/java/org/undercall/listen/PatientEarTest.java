package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.decision.CutValue;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

@DisplayName("A value with a pause in it")
class PatientEarTest {
  private static final Set<IntentKind> TORQUE = Decider.heard(Phase.TORQUE);

  /** Phrases of sure words, each half a second long, with pauses in seconds between them. */
  private static final class Script implements Ear {
    private final Queue<Optional<Heard>> phrases = new ArrayDeque<>();
    private double at;
    private boolean begun;
    private Optional<RecognisedPhrase> together = Optional.empty();

    Script say(double pause, double confidence, String words) {
      at += pause;
      List<RecognisedPhrase.Word> said = new ArrayList<>();
      for (String word : words.split(" ", -1)) {
        said.add(new RecognisedPhrase.Word(word, confidence, at, at + 0.5));
        at += 0.5;
      }
      if (pause > 2) {
        phrases.add(Optional.empty());
      }
      phrases.add(Optional.of(new Heard(new RecognisedPhrase(said), Heard.How.SPOKEN)));
      return this;
    }

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patience) throws EndOfInput {
      if (phrases.isEmpty()) {
        throw new EndOfInput();
      }
      return phrases.poll();
    }

    @Override
    public Optional<RecognisedPhrase> together(Heard first, Heard rest, Set<IntentKind> allowed) {
      return together;
    }

    @Override
    public boolean isHearing() {
      return begun;
    }

    @Override
    public void close() {}
  }

  private static String heard(Script script) {
    List<Heard> all = new ArrayList<>();
    try (PatientEar ear =
        new PatientEar(
            script,
            said -> CutValue.mayGoOn(said, 3),
            (first, whole) -> CutValue.isOne(whole, 3))) {
      while (true) {
        ear.next(TORQUE, 60_000).ifPresent(all::add);
      }
    } catch (Ear.EndOfInput e) {
      return all.stream().map(PatientEarTest::meaning).collect(Collectors.joining(" / "));
    }
  }

  private static String meaning(Heard heard) {
    Intent intent = Interpreter.interpret(heard.phrase(), TORQUE, Interpreter.LEAST_CONFIDENCE);
    if (intent instanceof Intent.OfNumber value) {
      return value.number().value() + " " + value.number().style();
    }
    return intent instanceof Intent.Unclear unclear
        ? unclear.reason().name()
        : intent.kind().name();
  }

  @ParameterizedTest
  @CsvSource({
    "six seven, eight, 678 WITH_PAUSE",
    "six seven, eight newton meters, 678 WITH_PAUSE",
    "six, seven eight, 678 WITH_PAUSE",
    "six, two, 62 WITH_PAUSE",
    "torque reached one one, zero, 110 WITH_PAUSE",
    "one seventy, five, 175 WITH_PAUSE",
    "one hundred, ten, 110 WITH_PAUSE",
    "six seven, cancel that, 67 DIGIT_BY_DIGIT / CANCEL_THAT",
    "six seven newton meters, eight, 67 DIGIT_BY_DIGIT / LONE_NUMBER",
    "six seven eight, nine, 678 DIGIT_BY_DIGIT / LONE_NUMBER",
    "six seven, eight nine, 67 DIGIT_BY_DIGIT / 89 DIGIT_BY_DIGIT",
    "six seven, torque reached, 67 DIGIT_BY_DIGIT / TORQUE_COMPLETED",
    "torque reached, six seven, TORQUE_COMPLETED / 67 DIGIT_BY_DIGIT"
  })
  @DisplayName("is heard as one, and nothing else is")
  void whole(String first, String rest, String expected) {
    assertEquals(expected, heard(new Script().say(1, 1, first).say(1, 1, rest)));
  }

  @Test
  @DisplayName("is waited for longer once its rest has begun")
  void begun() {
    Script script = new Script().say(1, 1, "six").say(2.1, 1, "seven eight");
    script.begun = true;
    assertEquals("678 WITH_PAUSE", heard(script));
  }

  @Test
  @DisplayName("ends after two seconds")
  void late() {
    String two = heard(new Script().say(1, 1, "six seven").say(2.1, 1, "eight"));
    assertEquals("67 DIGIT_BY_DIGIT / LONE_NUMBER", two);
  }

  @Test
  @DisplayName("is not believed where its last digit is in doubt")
  void unsure() {
    assertEquals("LOW_CONFIDENCE", heard(new Script().say(1, 1, "six seven").say(1, 0.3, "eight")));
  }

  @Test
  @DisplayName("is read back even if the pause was short")
  void shortPause() {
    assertEquals("678 WITH_PAUSE", heard(new Script().say(1, 1, "six seven").say(0.1, 1, "eight")));
  }

  @ParameterizedTest
  @CsvSource({
    "six nine eight, 698 WITH_PAUSE",
    "torque reached six seven eight, LOW_CONFIDENCE",
    "torque reached, LOW_CONFIDENCE",
    "cancel that, LOW_CONFIDENCE"
  })
  @DisplayName("is what both parts are together, if that is one value, and not sure otherwise")
  void together(String both, String expected) {
    Script script = new Script().say(1, 1, "six seven").say(1, 1, "eight");
    script.together = Optional.of(RecognisedPhrase.typed(both));
    assertEquals(expected, heard(script));
  }

  @Test
  @DisplayName("waits for nothing that is dangerous")
  void danger() {
    assertEquals(
        "JACK_MOVED / 67 DIGIT_BY_DIGIT",
        heard(new Script().say(1, 1, "six seven").say(1, 1, "i moved the jack")));
  }

  @ParameterizedTest
  @CsvSource({"torque reached, ''", "cancel that, CANCEL_THAT", "wrench did not click, DENIED"})
  @DisplayName("lets nothing that closes be said before the reply that asks for it")
  void beforeTheReply(String rest, String expected) throws Exception {
    Script script = new Script().say(1, 1, "six seven").say(1, 1, rest);
    try (PatientEar ear =
        new PatientEar(
            script, said -> CutValue.mayGoOn(said, 3), (first, all) -> CutValue.isOne(all, 3))) {
      assertEquals("67 DIGIT_BY_DIGIT", meaning(ear.next(TORQUE, 1).orElseThrow()));
      ear.forget();
      String next;
      try {
        next = ear.next(TORQUE, 1).map(PatientEarTest::meaning).orElse("");
      } catch (Ear.EndOfInput e) {
        next = "";
      }
      assertEquals(expected, next);
    }
  }

  @Test
  @DisplayName("is not made of typed parts")
  void typed() {
    Script script = new Script();
    script.phrases.add(Optional.of(Heard.typed("six seven")));
    script.phrases.add(Optional.of(Heard.typed("eight")));
    assertEquals("67 DIGIT_BY_DIGIT / LONE_NUMBER", heard(script));
  }
}
