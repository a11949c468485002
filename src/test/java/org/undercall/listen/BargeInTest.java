package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Voice;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/** A microphone in which each frame adds the next word of a script; a voice that speaks on. */
class BargeInTest {
  private final List<String> log = new ArrayList<>();
  private List<String> listed = List.of();
  private int closed;

  /** Open once the voice speaks: nothing is called before. */
  private final CountDownLatch speaking = new CountDownLatch(1);

  /** Speaks until it is stopped or, if nothing is called, until all frames are taken. */
  private final class FakeVoice implements Voice {
    private final CountDownLatch silent;

    FakeVoice(CountDownLatch silent) {
      this.silent = silent;
    }

    @Override
    public void say(String words) {
      log.add("say " + words);
      speaking.countDown();
      try {
        assertTrue(silent.await(20, TimeUnit.SECONDS), "neither stopped nor at the end");
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    @Override
    public void stop() {
      log.add("stop");
      silent.countDown();
    }

    @Override
    public void close() {}
  }

  private static final class Sound implements Frames {
    private final int frames;
    private final CountDownLatch end;
    private int given;

    Sound(int frames, CountDownLatch end) {
      this.frames = frames;
      this.end = end;
    }

    @Override
    public Optional<Frame> next() {
      if (given == frames) {
        end.countDown();
        return Optional.empty();
      }
      return Optional.of(Frame.of((long) FRAME_SAMPLES * given++, new byte[FRAME_BYTES]));
    }

    @Override
    public void close() {}
  }

  /** Hears the words of the script, one more with each frame after the first; then no more. */
  private final class Script implements Recogniser {
    private final List<String> words;
    private final double confidence;
    private int heard = -1;

    Script(List<String> words, double confidence) {
      this.words = words;
      this.confidence = confidence;
    }

    @Override
    public boolean accept(byte[] sound, int length) {
      try {
        assertTrue(speaking.await(20, TimeUnit.SECONDS), "the voice never spoke");
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      heard = Math.min(words.size(), heard + 1);
      return false;
    }

    @Override
    public RecognisedPhrase result() {
      return finalResult();
    }

    @Override
    public RecognisedPhrase finalResult() {
      return new RecognisedPhrase(
          words.subList(0, heard).stream()
              .map(word -> new RecognisedPhrase.Word(word, confidence, 0, 1))
              .toList());
    }

    @Override
    public String partial() {
      return String.join(" ", words.subList(0, heard));
    }

    @Override
    public void close() {
      closed++;
    }
  }

  private Ear ear;

  private void say(String words, List<String> called, double confidence) {
    CountDownLatch silent = new CountDownLatch(1);
    RecogniserMaker maker =
        new RecogniserMaker() {
          @Override
          public Recogniser withWordList(List<String> phrases, double startSeconds) {
            listed = phrases;
            return new Script(called, confidence);
          }

          @Override
          public List<Alternative> alternatives(
              List<String> phrases, byte[] sound, double startSeconds) {
            throw new AssertionError("only a word list is wanted");
          }

          @Override
          public Recogniser free(double startSeconds) {
            throw new AssertionError("only a word list is wanted");
          }
        };
    BargeIn bargeIn =
        new BargeIn(new Sound(20, silent), () -> Optional.of(maker), call -> log.add("by " + call));
    try (Voice voice = bargeIn.of(new FakeVoice(silent))) {
      voice.say(words);
    }
    ear = bargeIn.of(new Deaf());
  }

  /** An ear that never hears anything. */
  private static final class Deaf implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
      return Optional.empty();
    }

    @Override
    public void forget() {}

    @Override
    public void close() {}
  }

  @Test
  void whatCancelsALoadStopsTheVoiceAndComesOutOfTheEarOnce() throws Ear.EndOfInput {
    say("Step one.", List.of("[unk]", "jack", "slipped"), 1);
    assertTrue(log.contains("stop"));
    ear.forget();
    assertEquals(
        Optional.of("jack slipped"), ear.next(Set.of(), 1).map(heard -> heard.phrase().text()));
    assertEquals(Optional.empty(), ear.next(Set.of(), 1));
  }

  @Test
  void aStopPhraseDoesNotComeOutOfTheEar() throws Ear.EndOfInput {
    say("Step one.", List.of("stop", "talking"), 1);
    assertEquals(Optional.empty(), ear.next(Set.of(), 1));
  }

  @Test
  void aStopPhraseStopsTheVoice() {
    say("Step one.", List.of("stop", "talking"), 1);
    assertEquals(List.of("say Step one.", "stop", "by stop talking"), log);
    assertEquals(1, closed);
  }

  @Test
  void itIsFoundInTheMiddleOfTheProgramsOwnVoice() {
    say("Step one.", List.of("[unk]", "stop", "talking", "[unk]"), 1);
    assertTrue(log.contains("stop"));
  }

  @Test
  void aPhraseThatWentAwayAtOnceWasNone() {
    say("Step one.", List.of("be", "quiet", "[unk]", "now"), 1);
    assertFalse(log.contains("stop"));
  }

  @Test
  void anUnsurePhraseStopsNothing() {
    say("Step one.", List.of("stop", "talking"), 0.5);
    assertEquals(List.of("say Step one."), log);
  }

  @Test
  void nothingElseIsListenedForThanStopPhrasesAndOtherWords() {
    say("Say: stop talking.", List.of(), 1);
    assertTrue(listed.contains(RecognisedPhrase.UNKNOWN));
    assertTrue(listed.contains("be quiet now"));
    assertFalse(listed.contains("stop talking"));
  }

  @Test
  void withoutARecogniserTheVoiceSpeaksAndTheSoundIsLeftAlone() {
    CountDownLatch silent = new CountDownLatch(0);
    Sound sound = new Sound(5, silent);
    BargeIn bargeIn = new BargeIn(sound, Optional::empty, log::add);
    try (Voice voice = bargeIn.of(new FakeVoice(silent))) {
      voice.say("Step one.");
    }
    assertEquals(0, sound.given);
  }
}
