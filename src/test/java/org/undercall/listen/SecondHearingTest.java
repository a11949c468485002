package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

@DisplayName("A second hearing that finds nothing")
class SecondHearingTest {
  private static final Set<IntentKind> VALUE = Set.of(IntentKind.VALUE_CALLED);

  /** Finds nothing. */
  private static final class Nothing implements RecogniserMaker {
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
      return (sound, startSeconds) -> new RecognisedPhrase(List.of());
    }

    @Override
    public List<Alternative> alternatives(List<String> phrases, byte[] sound, double startSeconds) {
      return List.of();
    }
  }

  private static RecognisedPhrase again(RecognisedPhrase first) {
    SecondHearing second = new SecondHearing(new Nothing());
    second.keep(Frame.of(0, new byte[Frames.FRAME_BYTES]));
    return second.of(first, VALUE);
  }

  @Test
  @DisplayName("keeps the words of a whole phrase, which do not count")
  void wholePhrase() {
    RecognisedPhrase phrase = again(RecognisedPhrase.typed("one seven five"));
    assertEquals("one seven five", phrase.text());
    assertTrue(phrase.confidence() < Interpreter.LEAST_CONFIDENCE);
  }

  @Test
  @DisplayName("leaves what is no phrase as it was, to be asked again or left alone")
  void noPhrase() {
    for (String text : List.of("nine", "twenty one five", "seven newton", "nine [unk]")) {
      RecognisedPhrase first = RecognisedPhrase.typed(text);
      assertEquals(first, again(first));
    }
  }
}
