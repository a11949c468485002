package org.undercall.adapter.echo;

import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;

@DisplayName("What takes the own voice out")
class EchoCancellerTest {
  private static final int DELAY_FRAMES = 3;

  private long nanos;
  private final OwnVoice canceller = loaded();

  private OwnVoice loaded() {
    Optional<OwnVoice> loaded = EchoCanceller.load(() -> nanos);
    Assumptions.assumeTrue(loaded.isPresent(), "there is no native library for this system");
    return loaded.orElseThrow();
  }

  /** Noise that swells and fades, as syllables do. */
  private static byte[][] syllables(int frames, long seed) {
    Random random = new Random(seed);
    byte[][] all = new byte[frames][Frames.FRAME_BYTES];
    for (int f = 0; f < frames; f++) {
      double loud = 3_000 * Math.pow(Math.sin(f * Math.PI / 7), 2);
      for (int i = 0; i < Frames.FRAME_SAMPLES; i++) {
        int sample = (int) (loud * random.nextGaussian() / 2);
        all[f][2 * i] = (byte) sample;
        all[f][2 * i + 1] = (byte) (sample >> 8);
      }
    }
    return all;
  }

  private static double power(Frame frame) {
    double sum = 0;
    for (int i = 0; i < frame.samples(); i++) {
      sum += (double) frame.sample(i) * frame.sample(i);
    }
    return sum;
  }

  @Test
  @DisplayName("takes out what is played, heard 90 ms later, by 15 dB and more")
  void takesOut() {
    byte[][] voice = syllables(300, 1);
    double heard = 0;
    double left = 0;
    for (int f = 0; f < voice.length; f++) {
      canceller.plays(voice[f], 0, voice[f].length, Frames.RATE);
      byte[] echo = f < DELAY_FRAMES ? new byte[Frames.FRAME_BYTES] : voice[f - DELAY_FRAMES];
      Frame frame = Frame.of((long) f * Frames.FRAME_SAMPLES, echo);
      nanos += 30_000_000;
      Frame without = canceller.without(frame);
      if (f > 150) {
        heard += power(frame);
        left += power(without);
      }
    }
    assertTrue(left * 32 < heard, left + " of " + heard);
  }

  @Test
  @DisplayName("leaves sound as it is while nothing is played, and once it is closed")
  void leaves() {
    byte[][] speech = syllables(2, 2);
    Frame first = Frame.of(0, speech[0]);
    assertSame(first, canceller.without(first));
    canceller.plays(speech[0], 0, speech[0].length, Frames.RATE);
    canceller.close();
    canceller.close();
    Frame second = Frame.of(Frames.FRAME_SAMPLES, speech[1]);
    assertSame(second, canceller.without(second));
  }
}
