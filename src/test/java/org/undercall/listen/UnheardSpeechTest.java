package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.recogniser.FreeHearing;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.RecognisedPhrase.Word;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

@DisplayName("Speech that the words of a phrase do not explain")
class UnheardSpeechTest {
  private static final Set<IntentKind> STAGE = Set.of(IntentKind.TORQUE_COMPLETED);

  /** Speech as a tone at these seconds, in a faint noise, three seconds in all. */
  private static List<Frame> sound(double... spoken) {
    List<Frame> frames = new ArrayList<>();
    for (int first = 0; first < 3 * Frames.RATE; first += Frames.FRAME_SAMPLES) {
      byte[] bytes = new byte[Frames.FRAME_BYTES];
      for (int i = 0; i < Frames.FRAME_SAMPLES; i++) {
        double at = (double) (first + i) / Frames.RATE;
        int sample = (int) ((isSpoken(at, spoken) ? 8_000 : 20) * Math.sin(1_500 * at));
        bytes[2 * i] = (byte) sample;
        bytes[2 * i + 1] = (byte) (sample >> 8);
      }
      frames.add(Frame.of(first, bytes));
    }
    return frames;
  }

  private static boolean isSpoken(double at, double... spoken) {
    for (int i = 0; i < spoken.length; i += 2) {
      if (at >= spoken[i] && at < spoken[i + 1]) {
        return true;
      }
    }
    return false;
  }

  private static RecognisedPhrase phrase(double gap) {
    return new RecognisedPhrase(
        List.of(new Word("torque", 1, 1, 1.4), new Word("reached", 1, 1.4 + gap, 1.8 + gap)));
  }

  @Test
  @DisplayName("is not there if they fill it, nor in a pause within them")
  void none() {
    assertFalse(UnheardSpeech.around(sound(1, 1.8), phrase(0), false));
    assertFalse(UnheardSpeech.around(sound(1, 1.4, 1.7, 2.1), phrase(0.3), false));
  }

  @Test
  @DisplayName("lies between two of them, also in noise")
  void between() {
    assertTrue(UnheardSpeech.around(sound(1, 2.1), phrase(0.3), false));
    assertTrue(UnheardSpeech.around(sound(1, 2.1), phrase(0.3), true));
  }

  @Test
  @DisplayName("lies right before or after them, which noise hides")
  void around() {
    assertTrue(UnheardSpeech.around(sound(0.5, 1.8), phrase(0), false));
    assertTrue(UnheardSpeech.around(sound(1, 2.4), phrase(0), false));
    assertFalse(UnheardSpeech.around(sound(1, 2.4), phrase(0), true));
  }

  @Test
  @DisplayName("is no click")
  void click() {
    assertFalse(UnheardSpeech.around(sound(0.8, 0.83, 1, 1.8, 1.9, 1.92), phrase(0), false));
  }

  /** Hears the phrase and nothing beside it, but nothing at first. */
  private static final class Sure implements RecogniserMaker {
    private int deaf;

    Sure(int deaf) {
      this.deaf = deaf;
    }

    @Override
    public Recogniser withWordList(List<String> phrases, double startSeconds) {
      throw new UnsupportedOperationException("not asked for");
    }

    @Override
    public Recogniser free(double startSeconds) {
      throw new UnsupportedOperationException("not asked for");
    }

    @Override
    public FreeHearing freely() {
      return (sound, startSeconds) -> phrase(0);
    }

    @Override
    public List<Alternative> alternatives(List<String> phrases, byte[] sound, double startSeconds) {
      return deaf-- > 0 ? List.of() : List.of(new Alternative(phrase(0).words(), 100));
    }
  }

  private static boolean closes(SecondHearing hearing, List<Frame> sound) {
    sound.forEach(hearing::keep);
    RecognisedPhrase heard = hearing.of(phrase(0), STAGE);
    return Interpreter.interpret(heard, STAGE, Interpreter.LEAST_CONFIDENCE).kind().closes();
  }

  @Test
  @DisplayName("makes a phrase that closes be said again")
  void saidAgain() {
    assertTrue(closes(new SecondHearing(new Sure(0)), sound(1, 1.8)));
    assertFalse(closes(new SecondHearing(new Sure(0)), sound(0.5, 1.8)));
  }

  @Test
  @DisplayName("may lie in words that were not understood just before")
  void cut() {
    SecondHearing hearing = new SecondHearing(new Sure(1));
    sound(1, 1.8).forEach(hearing::keep);
    RecognisedPhrase rest =
        new RecognisedPhrase(List.of(new Word("that", 1, 0.5, 0.7), new Word("is", 1, 0.7, 0.9)));
    assertEquals(rest, hearing.of(rest, STAGE));
    assertFalse(closes(hearing, sound(1, 1.8)));
  }
}
