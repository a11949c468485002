package org.undercall.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The quality of sound")
class SoundQualityTest {
  /** Half a second of a quiet tone, then half a second of a loud one. */
  private static SoundQuality of(double hertz, double quiet, double loud) {
    List<Frame> frames = new ArrayList<>();
    for (int frame = 0; frame < 32; frame++) {
      double peak = frame < 16 ? quiet : loud;
      byte[] sound = new byte[Frames.FRAME_BYTES];
      for (int i = 0; i < sound.length / 2; i++) {
        int sample = (int) Math.round(peak * Math.sin(2 * Math.PI * hertz * i / Frames.RATE));
        sound[2 * i] = (byte) sample;
        sound[2 * i + 1] = (byte) (sample >> 8);
      }
      frames.add(Frame.of((long) frame * Frames.FRAME_SAMPLES, sound));
    }
    return SoundQuality.of(frames);
  }

  @Test
  @DisplayName("is the distance between its loud and its quiet parts")
  void decibels() {
    assertEquals(20, of(1_000, 1_000, 10_000).decibels(), 0.1);
    assertEquals(6, of(1_000, 5_000, 10_000).decibels(), 0.1);
  }

  @Test
  @DisplayName("is narrow if there is nothing above 4.5 kHz")
  void narrow() {
    assertTrue(of(1_000, 100, 10_000).narrow());
    assertTrue(of(3_000, 100, 10_000).narrow());
    assertFalse(of(6_000, 100, 10_000).narrow());
  }

  @Test
  @DisplayName("of digital silence is no distance at all")
  void silence() {
    assertEquals(0, SoundQuality.of(List.of(Frame.of(0, new byte[Frames.FRAME_BYTES]))).decibels());
  }
}
