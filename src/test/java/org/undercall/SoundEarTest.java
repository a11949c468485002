package org.undercall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.Ear.EndOfInput;
import org.undercall.adapter.microphone.Frame;
import org.undercall.adapter.microphone.Frames;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;

class SoundEarTest {
  private static final Set<IntentKind> HOLD = Set.of(IntentKind.HOLD);
  private static final Set<IntentKind> RESUME = Set.of(IntentKind.RESUME);
  private static final int MILLIS_PER_FRAME = 30;

  /** Frames whose first byte says what they mean to the fake recogniser. */
  private static final class FakeFrames implements Frames {
    private final ArrayDeque<Frame> frames = new ArrayDeque<>();
    private long place;
    private boolean closed;

    FakeFrames(String marks) {
      marks.chars().forEach(this::add);
    }

    /** A point is a gap of one frame. */
    private void add(int mark) {
      if (mark != '.') {
        byte[] sound = new byte[FRAME_BYTES];
        sound[0] = (byte) mark;
        frames.add(Frame.of(place, sound));
      }
      place += FRAME_SAMPLES;
    }

    @Override
    public Optional<Frame> next() {
      return Optional.ofNullable(frames.poll());
    }

    @Override
    public void discardWaiting() {
      frames.clear();
    }

    @Override
    public void close() {
      closed = true;
    }
  }

  /** Hears a word in each letter, and the end of a phrase in a blank. */
  private final class FakeRecogniser implements Recogniser {
    private final double startSeconds;
    private String heard = "";
    private int bytes;

    FakeRecogniser(double startSeconds) {
      this.startSeconds = startSeconds;
      open++;
    }

    @Override
    public boolean accept(byte[] sound, int length) {
      bytes += length;
      if (sound[0] > ' ') {
        heard += (char) sound[0];
      }
      return sound[0] == ' ';
    }

    @Override
    public RecognisedPhrase result() {
      RecognisedPhrase phrase = RecognisedPhrase.typed(String.join(" ", heard.split("", -1)));
      heard = "";
      return phrase;
    }

    @Override
    public RecognisedPhrase finalResult() {
      return result();
    }

    @Override
    public String partial() {
      return heard;
    }

    @Override
    public void close() {
      open--;
    }
  }

  private final List<String> made = new ArrayList<>();
  private FakeRecogniser latest;
  private int open;

  private final RecogniserMaker maker =
      new RecogniserMaker() {
        @Override
        public Recogniser withWordList(List<String> phrases, double startSeconds) {
          made.add(String.join(",", phrases));
          latest = new FakeRecogniser(startSeconds);
          return latest;
        }

        @Override
        public Recogniser free(double startSeconds) {
          made.add("free");
          latest = new FakeRecogniser(startSeconds);
          return latest;
        }
      };

  private SoundEar ear(String marks) {
    return new SoundEar(
        new FakeFrames(marks),
        maker,
        kinds -> List.of(kinds.toString()),
        EndOfSpeech.byRecogniser());
  }

  private static String heard(SoundEar ear, Set<IntentKind> allowed) throws EndOfInput {
    return ear.next(allowed, 10_000).map(RecognisedPhrase::text).orElse("nothing");
  }

  @Nested
  class WordLists {
    @Test
    void theListIsThatOfWhatMayBeSaidWithForeignSpeechAdded() throws EndOfInput {
      heard(ear("a "), HOLD);
      assertEquals(List.of("[HOLD],[unk]"), made);
    }

    @Test
    void notesAreHeardFreely() throws EndOfInput {
      heard(ear("a "), Set.of(IntentKind.NOTE_TEXT));
      assertEquals(List.of("free"), made);
    }

    @Test
    void theSameListKeepsItsRecogniser() throws EndOfInput {
      SoundEar ear = ear("a b ");
      assertEquals("a", heard(ear, HOLD));
      assertEquals("b", heard(ear, HOLD));
      assertEquals(1, made.size());
    }

    @Test
    void anotherListGetsANewRecogniserAndWhatWasBegunIsDropped() throws EndOfInput {
      SoundEar ear = ear("ab ");
      assertEquals(Optional.empty(), ear.next(HOLD, MILLIS_PER_FRAME));
      assertEquals("b", heard(ear, RESUME));
      assertEquals(List.of("[HOLD],[unk]", "[RESUME],[unk]"), made);
      assertEquals(1, open);
    }
  }

  @Nested
  class Time {
    @Test
    void patienceIsCountedInSoundNotInRealTime() throws EndOfInput {
      SoundEar ear = ear("-".repeat(100));
      assertEquals(Optional.empty(), ear.next(HOLD, 10 * MILLIS_PER_FRAME));
      assertEquals(0.3, ear.seconds(), 1e-9);
    }

    @Test
    void aRecogniserStartsWithSilenceThatItsTimesDoNotCount() throws EndOfInput {
      SoundEar ear = ear("a b ");
      heard(ear, HOLD);
      heard(ear, RESUME);
      assertEquals(2 * 0.03 - 0.4, latest.startSeconds, 1e-9);
      assertEquals(0.4 * 32_000 + 2 * Frames.FRAME_BYTES, latest.bytes, 1e-9);
    }
  }

  @Nested
  class Ends {
    @Test
    void noiseWithoutWordsIsNoPhrase() throws EndOfInput {
      assertEquals("a", heard(ear("   a "), HOLD));
    }

    @Test
    void theLastWordsComeThoughNothingFollows() throws EndOfInput {
      SoundEar ear = ear("a bc");
      assertEquals("a", heard(ear, HOLD));
      assertEquals("b c", heard(ear, HOLD));
      assertThrows(EndOfInput.class, () -> ear.next(HOLD, 1000));
      assertThrows(EndOfInput.class, () -> ear.next(RESUME, 1000));
      assertEquals(0, open);
    }

    @Test
    void anEarlierEndIsTaken() throws EndOfInput {
      EndOfSpeech atB =
          new EndOfSpeech() {
            @Override
            public void begin() {}

            @Override
            public boolean ended(Frame frame, Recogniser recogniser) {
              return recogniser.partial().endsWith("b");
            }
          };
      SoundEar ear = new SoundEar(new FakeFrames("abc "), maker, kinds -> List.of("x"), atB);
      assertEquals("a b", heard(ear, HOLD));
      assertEquals("c", heard(ear, HOLD));
    }

    @Test
    void aPhraseWithAGapInItIsDropped() throws EndOfInput {
      assertEquals("b", heard(ear("a.b "), HOLD));
    }

    @Test
    void forgettingDropsThePhraseBegun() throws EndOfInput {
      SoundEar ear = ear("ab ");
      ear.next(HOLD, MILLIS_PER_FRAME);
      ear.forget();
      assertThrows(EndOfInput.class, () -> ear.next(HOLD, 1000));
    }

    @Test
    void closingClosesTheSoundAndTheRecogniser() throws EndOfInput {
      FakeFrames frames = new FakeFrames("a");
      SoundEar ear = new SoundEar(frames, maker, k -> List.of("x"), EndOfSpeech.byRecogniser());
      ear.next(HOLD, MILLIS_PER_FRAME);
      ear.close();
      assertTrue(frames.closed);
      assertEquals(0, open);
    }
  }
}
