package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.demo.DemoVoices;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.Pcm;

/** By invented speakers, through the recogniser; many more are measured by the benchmarks. */
@DisplayName("Spoken in quiet, what")
class NearPhrasesHeardTest {
  private static final int BEFORE = Frames.RATE / 2;
  private static final int AFTER = 3 * Frames.RATE / 2;

  /** Sound from memory. */
  private static final class Clip implements Frames {
    private final byte[] sound;
    private int at;

    Clip(byte[] sound) {
      this.sound = sound;
    }

    @Override
    public Optional<Frame> next() {
      if (at + FRAME_BYTES > sound.length) {
        return Optional.empty();
      }
      Frame frame = Frame.of(at / 2, Arrays.copyOfRange(sound, at, at + FRAME_BYTES));
      at += FRAME_BYTES;
      return Optional.of(frame);
    }

    @Override
    public void close() {}
  }

  private static byte[] said(String voice, String words) {
    try (SpokenCache speaker = DemoVoices.speaker(voice, Path.of("target", "speech-cache"))) {
      Pcm said = speaker.speak(words);
      byte[] sound = new byte[2 * (BEFORE + said.length() + AFTER)];
      for (int i = 0; i < said.length(); i++) {
        int sample = 16_000 * said.at(i) / said.peak();
        sound[2 * (BEFORE + i)] = (byte) sample;
        sound[2 * (BEFORE + i) + 1] = (byte) (sample >> 8);
      }
      return sound;
    }
  }

  private static List<IntentKind> heard(String voice, String words, Phase phase) throws Fault {
    Set<IntentKind> allowed = PhaseWords.heard(phase);
    List<IntentKind> kinds = new ArrayList<>();
    try (SoundEar ear = SoundEar.standard(new Clip(said(voice, words)), TestModel.shared())) {
      while (true) {
        Optional<Heard> heard = ear.next(allowed, 60_000);
        heard
            .map(h -> Interpreter.interpret(h.phrase(), allowed, Interpreter.LEAST_CONFIDENCE))
            .map(Intent::kind)
            .ifPresent(kinds::add);
      }
    } catch (EndOfInput e) {
      return kinds;
    }
  }

  private static List<IntentKind> closings(String voice, String words, Phase phase) throws Fault {
    return heard(voice, words, phase).stream().filter(IntentKind::closes).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "tenor, torque not reached, TORQUE",
    "high, wrench has not clicked, TORQUE",
    "low, not tightened to torque, TORQUE",
    "alto, torque almost reached, TORQUE",
    "high, when torque is reached, TORQUE",
    "brisk, angle not turned, ANGLE",
    "low, torque not reached, ANGLE",
    "tenor, full angle half turned, ANGLE",
    "low, check not passed, CHECK",
    "high, this step is not finished, DO",
    "alto, that is not correct, READ_BACK",
    "tenor, that is incorrect, READ_BACK",
    "high, left side is not at ride height, GATE",
    "low, wheels do not carry the car, GATE",
    "tenor, used bolt fitted, HARDWARE",
    "high, new nut not fitted, HARDWARE"
  })
  @DisplayName("is denied closes nothing")
  void denied(String voice, String words, Phase phase) throws Fault {
    assertEquals(List.of(), closings(voice, words, phase));
  }

  @ParameterizedTest
  @CsvSource({
    "tenor, jack slipped, TORQUE",
    "high, the car is moving, READ_BACK",
    "low, stand slipped, ON_HOLD",
    "tenor, car is slipping, NOTING"
  })
  @DisplayName("calls danger cancels the load")
  void danger(String voice, String words, Phase phase) throws Fault {
    List<IntentKind> kinds = heard(voice, words, phase);
    assertTrue(kinds.stream().anyMatch(IntentKind::cancelsLoad), kinds.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "tenor, torque reached, TORQUE",
    "high, check passed, CHECK",
    "tenor, that is correct, READ_BACK",
    "alto, left side at ride height, GATE"
  })
  @DisplayName("is so still closes")
  void affirmed(String voice, String words, Phase phase) throws Fault {
    assertEquals(1, closings(voice, words, phase).size());
  }
}
