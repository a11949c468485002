package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.listen.EarFakes.HOLD;
import static org.undercall.listen.EarFakes.MILLIS_PER_FRAME;
import static org.undercall.listen.EarFakes.RESUME;
import static org.undercall.listen.EarFakes.heard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.activity.Activity;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.sound.Frames;

class SoundEarTest {
  private final EarFakes fakes = new EarFakes();

  @Nested
  class WordLists {
    @Test
    void theListIsThatOfWhatMayBeSaidWithForeignSpeechAdded() throws EndOfInput {
      heard(fakes.ear("a "), HOLD);
      assertEquals(List.of("[HOLD],[unk]"), fakes.made);
    }

    @Test
    void notesAreHeardFreely() throws EndOfInput {
      heard(fakes.ear("a "), Set.of(IntentKind.NOTE_TEXT));
      assertEquals(List.of("free"), fakes.made);
    }

    @Test
    void theSameListKeepsItsRecogniser() throws EndOfInput {
      SoundEar ear = fakes.ear("a b ");
      assertEquals("a", heard(ear, HOLD));
      assertEquals("b", heard(ear, HOLD));
      assertEquals(1, fakes.made.size());
    }

    @Test
    void anotherListGetsANewRecogniserAndWhatWasBegunIsDropped() throws EndOfInput {
      SoundEar ear = fakes.ear("ab ");
      assertEquals(Optional.empty(), ear.next(HOLD, MILLIS_PER_FRAME));
      assertEquals("b", heard(ear, RESUME));
      assertEquals(List.of("[HOLD],[unk]", "[RESUME],[unk]"), fakes.made);
      assertEquals(1, fakes.open);
    }
  }

  @Nested
  class SecondHearings {
    private RecognisedPhrase hearing(Alternative... found) throws EndOfInput {
      fakes.alternatives = List.of(found);
      return fakes.ear("a ").next(HOLD, 1_000).orElseThrow().phrase();
    }

    private static Alternative heard(String words, double score) {
      return new Alternative(RecognisedPhrase.typed(words).words(), score);
    }

    @Test
    void whatWasNotUnderstoodIsReplacedByWhatIsSureTheSecondTime() throws EndOfInput {
      RecognisedPhrase phrase = hearing(heard("take a break now", 9), heard("take take", 1));
      assertEquals("take a break now", phrase.text());
      assertTrue(phrase.confidence() >= Interpreter.LEAST_CONFIDENCE);
    }

    @Test
    void whatIsNotSureTheSecondTimeDoesNotCount() throws EndOfInput {
      RecognisedPhrase phrase = hearing(heard("take a break now", 9), heard("take take", 14.9));
      assertEquals("take a break now", phrase.text());
      assertTrue(phrase.confidence() < Interpreter.LEAST_CONFIDENCE);
    }

    @Test
    void ifNothingIsFoundWhatWasNoPhraseStaysAsItWas() throws EndOfInput {
      assertEquals(RecognisedPhrase.typed("a"), hearing());
    }
  }

  @Nested
  class FreeHearings {
    private static final Set<IntentKind> TORQUE =
        Set.of(IntentKind.TORQUE_COMPLETED, IntentKind.DENIED, IntentKind.DANGER);

    private RecognisedPhrase hearing(String freely, Alternative... found) throws EndOfInput {
      fakes.alternatives = List.of(found);
      fakes.freely = freely;
      SoundEar ear = fakes.ear("a ");
      RecognisedPhrase phrase = ear.next(TORQUE, 1_000).orElseThrow().phrase();
      ear.close();
      return phrase;
    }

    private static Intent meaning(RecognisedPhrase phrase) {
      return Interpreter.interpret(phrase, TORQUE, Interpreter.LEAST_CONFIDENCE);
    }

    private static Alternative found(String words, double score) {
      return new Alternative(RecognisedPhrase.typed(words).words(), score);
    }

    @Test
    void whatLeadsByFarCounts() throws EndOfInput {
      RecognisedPhrase phrase = hearing("talk reached", found("torque reached", 20));
      assertEquals("torque reached", phrase.text());
      assertTrue(phrase.confidence() >= Interpreter.LEAST_CONFIDENCE);
    }

    @Test
    void whatIsDeniedInTheSameSoundIsTheDenial() throws EndOfInput {
      RecognisedPhrase phrase =
          hearing("sort not reached", found("torque reached", 20), found("torque [unk]", 16));
      assertEquals(new Intent.Denied(IntentKind.TORQUE_COMPLETED), meaning(phrase));
    }

    @Test
    void dangerIsHeardThoughItIsNotOnTheList() throws EndOfInput {
      assertEquals("jack slipped", hearing("jack slipped").text());
    }

    @Test
    void nothingIsHeardFreelyIfThePhraseIsBeyondDoubt() throws EndOfInput {
      RecognisedPhrase phrase =
          hearing("sort not reached", found("torque reached", 20), found("torque [unk]", 14));
      assertEquals(new Intent.Plain(IntentKind.TORQUE_COMPLETED), meaning(phrase));
    }
  }

  @Nested
  class Time {
    @Test
    void patienceIsCountedInSoundNotInRealTime() throws EndOfInput {
      SoundEar ear = fakes.ear("-".repeat(100));
      assertEquals(Optional.empty(), ear.next(HOLD, 10 * MILLIS_PER_FRAME));
      assertEquals(0.3, ear.seconds(), 1e-9);
    }

    @Test
    void aRecogniserStartsWithSilenceThatItsTimesDoNotCount() throws EndOfInput {
      SoundEar ear = fakes.ear("a b ");
      heard(ear, HOLD);
      heard(ear, RESUME);
      assertEquals(2 * 0.03 - 0.4, fakes.latest.startSeconds, 1e-9);
      assertEquals(0.4 * 32_000 + 2 * Frames.FRAME_BYTES, fakes.latest.bytes, 1e-9);
    }
  }

  @Nested
  class Ends {
    @Test
    void noiseWithoutWordsIsNoPhrase() throws EndOfInput {
      assertEquals("a", heard(fakes.ear("   a "), HOLD));
    }

    @Test
    void theLastWordsComeThoughNothingFollows() throws EndOfInput {
      SoundEar ear = fakes.ear("a bc");
      assertEquals("a", heard(ear, HOLD));
      assertEquals("b c", heard(ear, HOLD));
      assertThrows(EndOfInput.class, () -> ear.next(HOLD, 1000));
      assertThrows(EndOfInput.class, () -> ear.next(RESUME, 1000));
      assertEquals(0, fakes.open);
    }

    @Test
    void anEarlierEndIsTaken() throws EndOfInput {
      SoundEar ear = fakes.ear("abc ", new Attention(Activity.always(), new EarFakes.AtB(true)));
      assertEquals("a b", heard(ear, HOLD));
      assertEquals("c", heard(ear, HOLD));
    }

    @Test
    void aPhraseWithAGapInItIsDropped() throws EndOfInput {
      assertEquals("b", heard(fakes.ear("a.b "), HOLD));
    }

    @Test
    void forgettingDropsThePhraseBegun() throws EndOfInput {
      SoundEar ear = fakes.ear("ab ");
      ear.next(HOLD, MILLIS_PER_FRAME);
      ear.forget();
      assertThrows(EndOfInput.class, () -> ear.next(HOLD, 1000));
    }

    @Test
    void closingClosesTheSoundAndTheRecogniserButNotWhatMadeIt() throws EndOfInput {
      EarFakes.FakeFrames frames = new EarFakes.FakeFrames("a");
      SoundEar ear = new SoundEar(frames, fakes.maker, k -> List.of("x"), Attention.byRecogniser());
      ear.next(HOLD, MILLIS_PER_FRAME);
      ear.close();
      assertTrue(frames.closed);
      assertEquals(0, fakes.open);
      assertEquals(1, fakes.makerClosed.getCount());
    }
  }
}
