package org.undercall.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The quality of sound")
class SoundQualityTest {
  /** Half a second of a quiet tone, then half a second of a loud one. */
  private static double decibels(double hertz, double quiet, double loud) {
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
    return SoundQuality.decibels(frames);
  }

  @Test
  @DisplayName("is the distance between its loud and its quiet parts")
  void decibels() {
    assertEquals(20, decibels(1_000, 1_000, 10_000), 0.1);
    assertEquals(6, decibels(1_000, 5_000, 10_000), 0.1);
  }

  @Test
  @DisplayName("of digital silence is no distance at all")
  void silence() {
    assertEquals(0, SoundQuality.decibels(List.of(Frame.of(0, new byte[Frames.FRAME_BYTES]))));
  }
}
