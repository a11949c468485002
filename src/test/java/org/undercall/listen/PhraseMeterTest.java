package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.RecognisedPhrase.Word;
import org.undercall.core.intent.SoundLevels;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

@DisplayName("The meter of a phrase")
class PhraseMeterTest {
  private final PhraseMeter meter = new PhraseMeter();
  private long place;

  /** Sound that swings between an amplitude and its opposite. */
  private void sound(double seconds, int amplitude) {
    for (long end = place + (long) (seconds * Frames.RATE); place < end; ) {
      byte[] bytes = new byte[Frames.FRAME_BYTES];
      for (int i = 0; i < Frames.FRAME_SAMPLES; i++) {
        int value = i % 2 == 0 ? amplitude : -amplitude;
        bytes[2 * i] = (byte) value;
        bytes[2 * i + 1] = (byte) (value >> 8);
      }
      meter.add(Frame.of(place, bytes));
      place += Frames.FRAME_SAMPLES;
    }
  }

  private static RecognisedPhrase phrase(double start, double end) {
    return new RecognisedPhrase(List.of(new Word("say", 1, start, end)));
  }

  @Test
  @DisplayName("tells the voice from the noise around it")
  void voiceAndNoise() {
    sound(3, 33);
    sound(0.9, 3277);
    sound(0.9, 33);
    SoundLevels levels = meter.of(phrase(3, 3.9)).orElseThrow();
    assertEquals(-20, levels.speech(), 0.1);
    assertEquals(-60, levels.noise(), 0.1);
    assertEquals(0, levels.clipped());
  }

  @Test
  @DisplayName("does not take a bang nor another phrase for the noise")
  void bang() {
    sound(3, 33);
    sound(0.9, 20000);
    sound(1.5, 33);
    sound(0.9, 3277);
    assertEquals(-60, meter.of(phrase(5.4, 6.3)).orElseThrow().noise(), 0.1);
  }

  @Test
  @DisplayName("counts what is at full scale while words are spoken")
  void clipped() {
    sound(1.5, 33);
    sound(0.3, 32767);
    sound(0.3, 3277);
    assertEquals(0.5, meter.of(phrase(1.5, 2.1)).orElseThrow().clipped(), 0.05);
  }

  @Test
  @DisplayName("measures nothing without sound of the phrase or around it")
  void nothing() {
    sound(0.6, 3277);
    assertEquals(Optional.empty(), meter.of(phrase(0, 0.6)));
    assertEquals(Optional.empty(), meter.of(phrase(9, 9.6)));
  }
}
