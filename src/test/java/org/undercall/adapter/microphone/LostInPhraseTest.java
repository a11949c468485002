package org.undercall.adapter.microphone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.listen.SoundEar;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.session.Voiced;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.SoundCode;

/** A clock by hand; the sound is that of an invented speaker. */
@DisplayName("A microphone that is lost in the middle of a phrase")
class LostInPhraseTest {
  private static final Set<IntentKind> ALLOWED = Decider.heard(Phase.TORQUE);
  private static final String WHOLE = "torque reached six two";
  private static final String AFTER = "what is left";

  private static double[] said;
  private static double[] after;

  private final Deque<Device> devices = new ArrayDeque<>();
  private final List<String> told = new ArrayList<>();
  private long now;

  @BeforeAll
  static void speak() {
    said = Voiced.said(WHOLE);
    after = Voiced.said(AFTER);
  }

  /** Gives some sound; then it is gone, or, when it is the last one, at its end. */
  private final class Device implements Frames {
    private final double[] sound;
    private int at;

    Device(double[] sound) {
      this.sound = sound;
    }

    @Override
    public Optional<Frame> next() throws Fault {
      if (at + FRAME_SAMPLES > sound.length) {
        if (devices.isEmpty()) {
          return Optional.empty();
        }
        throw new Fault(SoundCode.MICROPHONE_LOST, "microphone", "is gone");
      }
      byte[] bytes = new byte[FRAME_BYTES];
      for (int i = 0; i < FRAME_SAMPLES; i++) {
        int sample = (int) (32_767 * sound[at + i]);
        bytes[2 * i] = (byte) sample;
        bytes[2 * i + 1] = (byte) (sample >> 8);
      }
      Frame frame = Frame.of(at, bytes);
      at += FRAME_SAMPLES;
      now += 30;
      return Optional.of(frame);
    }

    @Override
    public void close() {}
  }

  private final class HandPace implements Pace {
    @Override
    public long nowMillis() {
      return now;
    }

    @Override
    public void rest(long millis) {
      now += millis;
    }

    @Override
    public void aside(Runnable work) {
      work.run();
    }
  }

  private final MicrophoneWatch watch =
      new MicrophoneWatch() {
        @Override
        public void lost(String why) {
          told.add(why.substring(0, 7));
        }

        @Override
        public void back() {
          told.add("back");
        }

        @Override
        public void dropped(long millis) {}
      };

  private static double[] joined(double[]... parts) {
    return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
  }

  @ParameterizedTest(name = "after {0} hundredths of it")
  @ValueSource(ints = {15, 30, 45, 60, 75, 90})
  @DisplayName("leaves nothing of it that closes or was not said; the next phrase is heard whole")
  void half(int hundredths) throws Exception {
    double[] quiet = new double[2 * Frames.RATE];
    int cut = said.length * hundredths / 100;
    devices.add(new Device(joined(quiet, Arrays.copyOf(said, cut))));
    double[] rest = Arrays.copyOfRange(said, cut, said.length);
    devices.add(new Device(joined(rest, quiet, after, quiet)));
    List<RecognisedPhrase> believed = new ArrayList<>();
    SteadyFrames frames = new SteadyFrames(devices::poll, watch, new HandPace());
    try (SoundEar ear = SoundEar.standard(frames, TestModel.shared())) {
      while (true) {
        Optional<RecognisedPhrase> phrase = ear.next(ALLOWED, 60_000).map(Heard::phrase);
        phrase.filter(p -> meant(p) != IntentKind.UNCLEAR).ifPresent(believed::add);
      }
    } catch (Ear.EndOfInput e) {
      assertEquals(List.of("SND-023", "back"), told);
    }
    assertEquals(AFTER, believed.remove(believed.size() - 1).text());
    for (RecognisedPhrase part : believed) {
      assertTrue(WHOLE.endsWith(part.text()) && !meant(part).closes(), part.text());
    }
    assertTrue(now > 1_000, "it was gone for a while");
  }

  private static IntentKind meant(RecognisedPhrase phrase) {
    return Interpreter.interpret(phrase, ALLOWED, Interpreter.LEAST_CONFIDENCE).kind();
  }
}
