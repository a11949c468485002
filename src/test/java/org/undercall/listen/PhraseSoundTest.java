package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

@DisplayName("The sound of a phrase")
class PhraseSoundTest {
  private final PhraseSound sounds = new PhraseSound();

  /** Keeps frames; each one is filled with its number. */
  private void keep(int from, int to) {
    for (int i = from; i < to; i++) {
      byte[] sound = new byte[Frames.FRAME_BYTES];
      java.util.Arrays.fill(sound, (byte) i);
      sounds.keep(Frame.of((long) i * Frames.FRAME_SAMPLES, sound));
    }
  }

  private static RecognisedPhrase phrase(double start, double end) {
    return new RecognisedPhrase(
        List.of(
            new RecognisedPhrase.Word("six", 1, start, start + 0.1),
            new RecognisedPhrase.Word("two", 1, end - 0.1, end)));
  }

  /** The numbers of the first and the last frame. */
  private String cut(PhraseSound.Margin margin, RecognisedPhrase... hearings) {
    Optional<byte[]> sound = sounds.of(List.of(hearings), margin);
    return sound.map(s -> s[0] + " to " + s[s.length - 1]).orElse("none");
  }

  @Test
  @DisplayName("goes from a little before the first word to a little after the last")
  void margin() {
    keep(0, 120);
    assertEquals("20 to 79", cut(PhraseSound.PHRASE, phrase(1.005, 1.995)));
    assertEquals(
        60 * Frames.FRAME_BYTES,
        sounds.of(List.of(phrase(1.005, 1.995)), PhraseSound.PHRASE).orElseThrow().length);
  }

  @Test
  @DisplayName("holds the words of both hearings, and more around a note")
  void both() {
    keep(0, 120);
    assertEquals("10 to 79", cut(PhraseSound.PHRASE, phrase(1.5, 1.995), phrase(0.705, 1.8)));
    assertEquals("0 to 99", cut(PhraseSound.NOTE, phrase(1.5, 1.995)));
  }

  @Test
  @DisplayName("is what was heard so far, without what was forgotten")
  void heardSoFar() {
    keep(0, 30);
    sounds.clear();
    keep(36, 70);
    assertEquals("36 to 69", cut(PhraseSound.PHRASE, phrase(1.2, 2.0)));
    assertEquals("none", cut(PhraseSound.PHRASE, phrase(0.1, 0.2)));
  }

  @Test
  @DisplayName("of a note of 20 seconds is there from its beginning")
  void longNote() {
    keep(0, 1200);
    Optional<byte[]> sound = sounds.of(List.of(phrase(14, 34)), PhraseSound.NOTE);
    int frames = sound.orElseThrow().length / Frames.FRAME_BYTES;
    assertEquals((int) Math.ceil(23.5 / 0.03), frames, 1);
  }
}
