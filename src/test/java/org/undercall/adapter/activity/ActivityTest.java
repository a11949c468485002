package org.undercall.adapter.activity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.sound.Frames;

@DisplayName("A detector of speech")
class ActivityTest {
  private final Random random = new Random(3);

  private byte[] noise(double rms) {
    byte[] frame = new byte[2 * Frames.FRAME_SAMPLES];
    for (int i = 0; i < frame.length; i += 2) {
      int sample = (int) Math.round(rms * random.nextGaussian());
      frame[i] = (byte) sample;
      frame[i + 1] = (byte) (sample >> 8);
    }
    return frame;
  }

  /** Sounds like a vowel: many harmonics of 120 Hz that swell and fade. */
  private static byte[] vowel(int index) {
    byte[] frame = new byte[2 * Frames.FRAME_SAMPLES];
    for (int i = 0; i < Frames.FRAME_SAMPLES; i++) {
      double time = (index * Frames.FRAME_SAMPLES + i) / 16_000.0;
      double sum = 0;
      for (int harmonic = 1; harmonic < 25; harmonic++) {
        sum += Math.sin(2 * Math.PI * 120 * harmonic * time) / harmonic;
      }
      int sample = (int) (4_000 * sum * (1 + Math.sin(2 * Math.PI * 4 * time)) / 2);
      frame[2 * i] = (byte) sample;
      frame[2 * i + 1] = (byte) (sample >> 8);
    }
    return frame;
  }

  private static int speech(Activity activity, byte[]... frames) {
    int count = 0;
    for (byte[] frame : frames) {
      count += activity.isSpeech(frame) ? 1 : 0;
    }
    return count;
  }

  private byte[][] noises(int count, double rms) {
    byte[][] frames = new byte[count][];
    for (int i = 0; i < count; i++) {
      frames[i] = noise(rms);
    }
    return frames;
  }

  private static byte[][] vowels(int count) {
    byte[][] frames = new byte[count][];
    for (int i = 0; i < count; i++) {
      frames[i] = vowel(i);
    }
    return frames;
  }

  private void tellsThemApart(Activity activity) {
    assertEquals(0, speech(activity, noises(100, 0)), "digital silence");
    assertTrue(speech(activity, noises(100, 20)) < 10, "a quiet room after digital silence");
    assertTrue(speech(activity, vowels(40)) > 20, "a vowel");
    speech(activity, noises(10, 20));
    assertEquals(0, speech(activity, noises(100, 20)), "the room again");
  }

  @Nested
  @DisplayName("that is native")
  class Native {
    private final Activity activity;

    Native() {
      assumeTrue(FvadActivity.isThere(), "no native detector for this machine");
      activity = Activities.best();
    }

    @Test
    @DisplayName("tells speech from a quiet room")
    void apart() {
      tellsThemApart(activity);
    }

    @Test
    @DisplayName("takes a short last frame, and an empty one")
    void shortFrames() {
      assertFalse(activity.isSpeech(new byte[100]));
      assertFalse(activity.isSpeech(new byte[0]));
    }

    @Test
    @DisplayName("may be closed twice, and is not used then")
    void closing() {
      activity.close();
      activity.close();
      assertThrows(IllegalStateException.class, () -> activity.isSpeech(noise(20)));
    }

    @Test
    @DisplayName("hears the same in two detectors at once")
    void two() {
      byte[][] frames = vowels(100);
      try (Activity other = Activities.best()) {
        for (byte[] frame : frames) {
          assertEquals(other.isSpeech(frame), activity.isSpeech(frame));
        }
      }
    }
  }

  @Nested
  @DisplayName("by loudness")
  class ByLoudness {
    private final Activity activity = Activities.byLoudness();

    @Test
    @DisplayName("tells speech from a quiet room")
    void apart() {
      tellsThemApart(activity);
    }

    @Test
    @DisplayName("gets used to steady noise")
    void steadyNoise() {
      speech(activity, noises(400, 1_000));
      assertEquals(0, speech(activity, noises(100, 1_000)));
    }

    @Test
    @DisplayName("holds on for 60 ms after a loud frame")
    void holdsOn() {
      speech(activity, noises(100, 20));
      assertTrue(activity.isSpeech(noise(2_000)));
      assertEquals(2, speech(activity, noises(10, 20)));
    }

    @Test
    @DisplayName("takes an empty frame for silence")
    void empty() {
      assertFalse(activity.isSpeech(new byte[0]));
    }
  }
}
