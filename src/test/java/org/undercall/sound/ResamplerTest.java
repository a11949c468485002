package org.undercall.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResamplerTest {

  private static Pcm tone(int rate, double hertz) {
    short[] samples = new short[rate];
    for (int i = 0; i < rate; i++) {
      samples[i] = (short) Math.round(10_000 * Math.sin(2 * Math.PI * hertz * i / rate));
    }
    return Pcm.of(rate, samples);
  }

  /** The greatest difference away from the ends, where the filter has sound on both sides. */
  private static int difference(Pcm one, Pcm other) {
    int greatest = 0;
    for (int i = 200; i < one.length() - 200; i++) {
      greatest = Math.max(greatest, Math.abs(one.at(i) - other.at(i)));
    }
    return greatest;
  }

  @ParameterizedTest
  @CsvSource({"48000, 16000", "48000, 24000", "22050, 16000", "16000, 24000", "43200, 16000"})
  void aToneWithinBothRatesIsKept(int from, int to) {
    Pcm changed = Resampler.to(tone(from, 1000), to);
    assertEquals(to, changed.rate());
    assertEquals(to, changed.length(), 1);
    int error = difference(tone(to, 1000), changed);
    assertTrue(error < 40, "error " + error + " of 10000");
  }

  @Test
  void aToneAboveTheLowerRateIsTakenAway() {
    Pcm changed = Resampler.to(tone(48_000, 12_000), 16_000);
    assertTrue(difference(changed, Pcm.silence(16_000, 1000)) < 40, "peak " + changed.peak());
  }

  @Test
  void theSameRateChangesNothing() {
    Pcm sound = tone(16_000, 440);
    assertSame(sound, Resampler.to(sound, 16_000));
  }
}
