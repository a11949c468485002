package org.undercall.sound;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A rising tone")
class ChirpTest {
  private static final int RATE = 16_000;

  private static Pcm noisy(double gain, double noise) {
    Pcm chirp = Chirp.at(RATE);
    Random random = new Random(1);
    short[] heard = new short[RATE];
    for (int i = 0; i < heard.length; i++) {
      int at = i - RATE / 4;
      double tone = at >= 0 && at < chirp.length() ? gain * chirp.at(at) : 0;
      heard[i] = (short) Math.round(tone + noise * random.nextGaussian());
    }
    return Pcm.of(RATE, heard);
  }

  @Test
  @DisplayName("is found in sound, also where it is 10 dB below the noise")
  void found() {
    assertTrue(Chirp.isIn(noisy(0.5, 10)));
    assertTrue(Chirp.isIn(noisy(0.02, 220)));
  }

  @Test
  @DisplayName("is not found in silence or in noise alone")
  void notFound() {
    assertFalse(Chirp.isIn(noisy(0, 0)));
    assertFalse(Chirp.isIn(noisy(0, 1_000)));
  }
}
