package org.undercall.adapter.recogniser;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.RecognisedPhrase.Word;
import org.undercall.port.Fault;

class RecogniserTest {
  private static final List<String> LIST = List.of("say again", "[unk]");
  private static final int WAV_HEADER = 44;

  private SpeechModel model;

  @BeforeEach
  void load() throws Fault {
    model = TestModel.shared();
  }

  private static byte[] sayAgain() throws IOException {
    try (InputStream in = RecogniserTest.class.getResourceAsStream("/sound/say-again.wav")) {
      in.skipNBytes(WAV_HEADER);
      return in.readAllBytes();
    }
  }

  private static RecognisedPhrase heard(Recogniser recogniser) throws IOException {
    byte[] silence = new byte[16_000];
    recogniser.accept(silence, silence.length);
    byte[] sound = sayAgain();
    recogniser.accept(sound, sound.length);
    recogniser.accept(silence, silence.length);
    return recogniser.finalResult();
  }

  @Nested
  class Hearing {
    @Test
    void aPhraseOfTheListIsHeardWithItsTimes() throws IOException {
      try (Recogniser recogniser = model.withWordList(LIST, 10)) {
        RecognisedPhrase phrase = heard(recogniser);
        assertEquals("say again", phrase.text());
        double before = 0;
        for (Word word : phrase.words()) {
          assertTrue(word.start() >= Math.max(10.5, before) && word.end() > word.start());
          assertTrue(word.confidence() > 0 && word.confidence() <= 1);
          before = word.end();
        }
        assertTrue(before < 12, "the last word ends at " + before);
      }
    }

    @Test
    void withoutTheWordsOnItsListItDoesNotHearThem() throws IOException {
      try (Recogniser recogniser = model.withWordList(List.of("torque reached", "[unk]"), 0)) {
        assertTrue(!heard(recogniser).text().contains("again"));
      }
    }

    @Test
    void pieceAfterPieceIsHeardFreelyWithTheTimesOfEach() throws IOException {
      byte[] said = sayAgain();
      byte[] sound = new byte[16_000 + said.length + 16_000];
      System.arraycopy(said, 0, sound, 16_000, said.length);
      try (FreeHearing freely = model.freely()) {
        RecognisedPhrase first = freely.of(sound, 10);
        assertTrue(first.text().contains("again"), first.text());
        assertEquals("", freely.of(new byte[16_000], 20).text());
        assertEquals(0, freely.of(sound, -5).words().get(0).start());
        for (int piece = 0; piece < 14; piece++) {
          RecognisedPhrase next = freely.of(sound, 5);
          assertEquals(first.text(), next.text());
          for (int i = 0; i < first.words().size(); i++) {
            assertEquals(first.words().get(i).start() - 5, next.words().get(i).start(), 0.1);
            assertEquals(first.words().get(i).end() - 5, next.words().get(i).end(), 0.1);
          }
        }
      }
    }

    @Test
    void freelyItHearsAnyWords() throws IOException {
      try (Recogniser recogniser = model.free(0)) {
        assertTrue(heard(recogniser).text().endsWith("again"));
      }
    }

    @Test
    void silenceHasNoWords() {
      try (Recogniser recogniser = model.withWordList(LIST, 0)) {
        byte[] silence = new byte[32_000];
        recogniser.accept(silence, silence.length);
        assertEquals("", recogniser.partial());
        assertEquals(List.of(), recogniser.finalResult().words());
      }
    }
  }

  @Nested
  class Alternatives {
    @Test
    void theLikeliestComesFirstAndAllHaveTheirWordsInTime() throws IOException {
      byte[] said = sayAgain();
      byte[] sound = new byte[said.length + 32_000];
      System.arraycopy(said, 0, sound, 16_000, said.length);
      List<String> list = List.of("say again", "say a gain", "[unk]");
      List<Alternative> all = model.alternatives(list, sound, 10);
      assertEquals("say again", new RecognisedPhrase(all.get(0).words()).text());
      double before = Double.POSITIVE_INFINITY;
      for (Alternative one : all) {
        assertTrue(one.score() <= before && !one.words().isEmpty());
        assertTrue(one.words().get(0).start() >= 10);
        before = one.score();
      }
      assertTrue(all.size() > 1, "alternatives: " + all);
    }

    @Test
    void silenceHoldsNoPhrase() {
      List<Alternative> all = model.alternatives(LIST, new byte[32_000], 0);
      assertTrue(
          all.stream()
              .flatMap(one -> one.words().stream())
              .allMatch(word -> word.text().equals(RecognisedPhrase.UNKNOWN)),
          all.toString());
    }
  }

  @Nested
  class WordLists {
    @Test
    void everyWordThatMayBeSaidIsKnownToTheModel() {
      assertEquals(List.of(), model.unknownWords(Phrasebook.words()));
    }

    @Test
    void wordsThatTheModelDoesNotKnowAreFound() {
      assertEquals(
          List.of("bushing", "subframe"),
          model.unknownWords(List.of("torque", "bushing", "[unk]", "subframe", "bushing")));
    }

    @Test
    void anEmptyListIsRefused() {
      assertThrows(IllegalArgumentException.class, () -> model.withWordList(List.of(), 0));
    }

    @Test
    void blankAndUpperCasePhrasesAreRefused() {
      assertThrows(IllegalArgumentException.class, () -> model.withWordList(List.of(" "), 0));
      assertThrows(IllegalArgumentException.class, () -> model.withWordList(List.of("Say"), 0));
    }

    @Test
    void aPhraseWithQuotesCannotBreakTheList() {
      List<String> quoted = List.of("say \"again\\", "[unk]");
      assertDoesNotThrow(() -> model.withWordList(quoted, 0).close());
    }
  }

  @Nested
  class Guards {
    @Test
    void closingTwiceDoesNothing() {
      Recogniser recogniser = model.withWordList(LIST, 0);
      recogniser.close();
      assertDoesNotThrow(recogniser::close);
    }

    @Test
    void aClosedRecogniserIsNotUsed() {
      Recogniser recogniser = model.withWordList(LIST, 0);
      recogniser.close();
      assertThrows(IllegalStateException.class, () -> recogniser.accept(new byte[2], 2));
      assertThrows(IllegalStateException.class, recogniser::finalResult);
      assertThrows(IllegalStateException.class, recogniser::partial);
    }

    @Test
    void aSecondThreadIsRefused() {
      try (Recogniser recogniser = model.withWordList(LIST, 0)) {
        var other = CompletableFuture.runAsync(() -> recogniser.accept(new byte[2], 2));
        Throwable fault = assertThrows(CompletionException.class, other::join).getCause();
        assertEquals(IllegalStateException.class, fault.getClass());
      }
    }

    @Test
    void aSecondThreadMayNotEvenAskOrClose() {
      try (Recogniser recogniser = model.withWordList(LIST, 0)) {
        List<Runnable> uses =
            List.of(
                recogniser::partial,
                recogniser::result,
                recogniser::finalResult,
                recogniser::close);
        for (Runnable use : uses) {
          var other = CompletableFuture.runAsync(use);
          Throwable fault = assertThrows(CompletionException.class, other::join).getCause();
          assertEquals(IllegalStateException.class, fault.getClass());
        }
        assertEquals("", recogniser.partial());
      }
    }

    @Test
    void lengthsOutsideTheArrayAndHalfSamplesAreRefused() {
      try (Recogniser recogniser = model.withWordList(LIST, 0)) {
        for (int length : List.of(-2, 3, 6)) {
          assertThrows(
              IllegalArgumentException.class, () -> recogniser.accept(new byte[4], length));
        }
      }
    }

    @Test
    void aClosedModelMakesNothingAndIsClosedOnce() throws Fault {
      SpeechModel own = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
      Recogniser recogniser = own.withWordList(LIST, 0);
      own.close();
      own.close();
      assertThrows(IllegalStateException.class, () -> own.withWordList(LIST, 0));
      assertThrows(IllegalStateException.class, () -> own.free(0));
      assertThrows(IllegalStateException.class, () -> own.unknownWords(LIST));
      recogniser.accept(new byte[3200], 3200);
      recogniser.close();
    }
  }
}
