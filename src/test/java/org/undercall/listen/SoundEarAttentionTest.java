package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.listen.EarFakes.HOLD;
import static org.undercall.listen.EarFakes.MILLIS_PER_FRAME;
import static org.undercall.listen.EarFakes.heard;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.sound.Frames;

class SoundEarAttentionTest {
  private final EarFakes fakes = new EarFakes();

  @Nested
  class EarlyEnds {
    @Test
    void areFollowedByANewRecogniser() throws EndOfInput {
      SoundEar ear = fakes.ear("ab--c ", new Attention(fakes.letters(), new EarFakes.AtB(true)));
      assertEquals("a b", heard(ear, HOLD));
      assertEquals(0, fakes.open);
      assertEquals("c", heard(ear, HOLD));
      assertEquals(2 * 0.03 - 0.4, fakes.latest.startSeconds, 1e-9);
    }

    @Test
    void areTakenBackIfTheFinalWordsCouldGoOn() throws EndOfInput {
      SoundEar ear = fakes.watching("--abc ", new EarFakes.AtB(false));
      assertEquals("a b c", heard(ear, HOLD));
      assertEquals(2, fakes.made.size());
      assertEquals(-0.4, fakes.latest.startSeconds, 1e-9);
      assertEquals(1, fakes.open);
    }

    @Test
    void areNotTriedTwiceInAPhrase() throws EndOfInput {
      SoundEar ear = fakes.watching("abcb b ", new EarFakes.AtB(false));
      assertEquals("a b c b", heard(ear, HOLD));
      assertEquals(2, fakes.made.size());
      assertEquals("b", heard(ear, HOLD));
      assertEquals(3, fakes.made.size());
    }
  }

  @Nested
  class Silence {
    @Test
    void needsNoRecogniser() throws EndOfInput {
      SoundEar ear = fakes.watching("-".repeat(1000), EndOfSpeech.byRecogniser());
      assertEquals(Optional.empty(), ear.next(HOLD, 900 * MILLIS_PER_FRAME));
      assertEquals(List.of(), fakes.made);
      assertThrows(EndOfInput.class, () -> ear.next(HOLD, 10_000));
    }

    @Test
    void isHeardForHalfASecondBeforeSpeech() throws EndOfInput {
      SoundEar ear = fakes.watching("-".repeat(100) + "ab ", EndOfSpeech.byRecogniser());
      assertEquals("a b", heard(ear, HOLD));
      assertEquals((100 - 17) * 0.03 - 0.4, fakes.latest.startSeconds, 1e-9);
      assertEquals(0.4 * 32_000 + 20 * Frames.FRAME_BYTES, fakes.latest.bytes, 1e-9);
    }

    @Test
    void ofASecondWithoutWordsLetsTheRecogniserRest() throws EndOfInput {
      SoundEar ear = fakes.watching("a " + "-".repeat(40) + "b ", EndOfSpeech.byRecogniser());
      assertEquals("a", heard(ear, HOLD));
      assertEquals(1, fakes.open);
      assertEquals(0, fakes.givenBack);
      assertEquals(Optional.empty(), ear.next(HOLD, 34 * MILLIS_PER_FRAME));
      assertEquals(0, fakes.open);
      assertEquals(1, fakes.givenBack, "memory given back");
      assertEquals("b", heard(ear, HOLD));
      assertEquals(2, fakes.made.size());
    }

    @Test
    void thatNeverComesLetsMemoryBeGivenBackEveryHalfMinute() throws EndOfInput {
      SoundEar ear = fakes.watching("a ".repeat(1100), EndOfSpeech.byRecogniser());
      for (int frames = 0; frames < 998; frames += 2) {
        assertEquals("a", heard(ear, HOLD));
      }
      assertEquals(0, fakes.givenBack);
      for (int frames = 998; frames < 2002; frames += 2) {
        assertEquals("a", heard(ear, HOLD));
      }
      assertEquals(2, fakes.givenBack);
    }

    @Test
    void afterWordsIsTheRecognisersToEnd() throws EndOfInput {
      SoundEar ear = fakes.watching("a" + "-".repeat(39) + "b ", EndOfSpeech.byRecogniser());
      assertEquals("a b", heard(ear, HOLD));
      assertEquals(1, fakes.made.size());
    }

    @Test
    void thatIsLongEndsWordsThatTheRecogniserDoesNotEnd() throws EndOfInput {
      SoundEar ear = fakes.watching("a" + "-".repeat(40) + "b ", EndOfSpeech.byRecogniser());
      assertEquals("a", heard(ear, HOLD));
      assertEquals("b", heard(ear, HOLD));
    }

    @Test
    void beforeAGapIsNotHeardAfterIt() throws EndOfInput {
      SoundEar ear = fakes.watching("----.--a ", EndOfSpeech.byRecogniser());
      assertEquals("a", heard(ear, HOLD));
      assertEquals(5 * 0.03 - 0.4, fakes.latest.startSeconds, 1e-9);
    }

    @Test
    void ofTheDetectorIsClosedWithTheEar() {
      fakes.watching("", EndOfSpeech.byRecogniser()).close();
      assertTrue(fakes.detectorClosed);
    }
  }
}
