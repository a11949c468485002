package org.undercall.command.ear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

@DisplayName("The check of the ear")
class EarCheckTest {
  private static final SoundLevels FINE = new SoundLevels(-22, -60, 0);

  private final Queue<String> spoken = new ArrayDeque<>();
  private final List<String> asked = new ArrayList<>();
  private Optional<SoundLevels> levels = Optional.of(FINE);

  private final Ear ear =
      new Ear() {
        @Override
        public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis)
            throws EndOfInput {
          if (spoken.isEmpty()) {
            throw new EndOfInput();
          }
          return Optional.of(RecognisedPhrase.typed(spoken.remove()))
              .filter(p -> !p.words().isEmpty())
              .map(p -> new Heard(p, Heard.How.SPOKEN, levels, Optional.empty()));
        }

        @Override
        public void close() {}
      };

  /** Every phrase right, but one said in another way, by its place. */
  private void speak(int place, String... instead) {
    for (int i = 0; i < CheckPhrase.ALL.size(); i++) {
      if (i == place) {
        spoken.addAll(List.of(instead));
      } else {
        spoken.add(CheckPhrase.ALL.get(i).words());
      }
    }
  }

  private EarVerdict run() {
    return new EarVerdict(new EarCheck(ear, asked::add, 2).run());
  }

  private static CheckedPhrase.Result result(EarVerdict verdict, int place) {
    return verdict.phrases().get(place).result();
  }

  @Test
  @DisplayName("that goes well is usable and has nothing to advise")
  void well() {
    speak(-1);
    EarVerdict verdict = run();
    assertEquals(10, verdict.count(CheckedPhrase.Result.RIGHT));
    assertTrue(verdict.usable());
    assertEquals(List.of(), verdict.advice());
    assertEquals(10, asked.size());
    assertEquals("Say: one seven five newton meters.", asked.get(0));
  }

  @Test
  @DisplayName("asks once more, and not a third time")
  void again() {
    speak(1, "reached torque", "torque reached");
    EarVerdict verdict = run();
    assertEquals("Once more: torque reached.", asked.get(2));
    assertEquals(CheckedPhrase.Result.RIGHT, result(verdict, 1));
    assertEquals(2, verdict.phrases().get(1).tries());

    asked.clear();
    speak(1, "reached torque", "[unk]");
    EarVerdict second = run();
    assertEquals(CheckedPhrase.Result.ASKED_AGAIN, result(second, 1));
    assertEquals("[unk]", second.phrases().get(1).heard());
    assertEquals(11, asked.size());
  }

  @Test
  @DisplayName("tells another value from the right one, and silence from both")
  void other() {
    speak(0, "one seven nine newton meters", "one seven newton meters");
    assertEquals(CheckedPhrase.Result.OTHER, result(run(), 0));
    speak(0, "", "");
    assertEquals(CheckedPhrase.Result.NOT_HEARD, result(run(), 0));
  }

  @Test
  @DisplayName("advises digit by digit when number words were misheard")
  void numberWords() {
    speak(3, "fifty newton meters", "fifty newton meters");
    EarVerdict verdict = run();
    assertEquals(List.of("Say numbers digit by digit."), verdict.advice());
    assertTrue(verdict.usable());
  }

  @Test
  @DisplayName("names noise, a quiet voice and an overdriven microphone")
  void levels() {
    levels = Optional.of(new SoundLevels(-30, -42, 0));
    speak(-1);
    assertEquals(
        List.of(
            "Noise 12 dB below your voice, 20 wanted: expect repeats."
                + " Wear a headset, its microphone two fingers from the corner of the mouth.",
            "Turning the microphone up does not help: the noise grows with the voice."),
        run().advice());
    levels = Optional.of(new SoundLevels(-30, -45, 0));
    speak(-1);
    assertEquals(
        "Noise 15 dB below your voice, 20 wanted: expect repeats."
            + " Halve the way to the microphone, that gives about 6 dB.",
        run().advice().get(0));
    levels = Optional.of(new SoundLevels(-55, -90, 0));
    speak(-1);
    assertTrue(run().advice().get(0).startsWith("Your voice is too quiet"));
    levels = Optional.of(new SoundLevels(-3, -60, 0.02));
    speak(-1);
    assertTrue(run().advice().get(0).startsWith("The microphone is overdriven"));
  }

  @Test
  @DisplayName("is not usable with two phrases taken for something else, or nothing heard")
  void notUsable() {
    for (CheckPhrase phrase : CheckPhrase.ALL) {
      boolean number = phrase.words().contains("it reads");
      spoken.add(number ? "it reads seven seven" : phrase.words());
      spoken.addAll(number ? List.of("it reads seven seven") : List.of());
    }
    EarVerdict two = run();
    assertEquals(8, two.count(CheckedPhrase.Result.RIGHT));
    assertFalse(two.usable());

    levels = Optional.empty();
    EarVerdict nothing = run();
    assertEquals(10, nothing.count(CheckedPhrase.Result.NOT_HEARD));
    assertFalse(nothing.usable());
    assertTrue(nothing.advice().get(0).startsWith("Nothing was heard"));
    assertTrue(
        EarReport.text(nothing).contains("Verdict: not usable as it is. Do not rely on it."));
  }
}
