package org.undercall.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LevelMeterTest {
  private static Level of(int... samples) {
    byte[] sound = new byte[2 * samples.length];
    for (int i = 0; i < samples.length; i++) {
      sound[2 * i] = (byte) samples[i];
      sound[2 * i + 1] = (byte) (samples[i] >> 8);
    }
    LevelMeter meter = new LevelMeter();
    meter.add(Frame.of(0, sound));
    return meter.level();
  }

  @Test
  void halfOfFullScaleIsSixDecibelsDown() {
    assertEquals(-6.02, of(16_384, -16_384).rms(), 0.01);
    assertEquals(-6.02, of(0, -16_384, 5).peak(), 0.01);
  }

  @Test
  void samplesAtFullScaleAreCountedAsClipped() {
    assertEquals(0.5, of(32_767, -32_768, 32_766, 0).clipped());
  }

  @Test
  void aConstantOffsetIsNoSound() {
    assertEquals(-120, of(16_384, 16_384).rms());
    assertEquals(of(1_000, -1_000).rms(), of(21_000, 19_000).rms(), 1e-9);
  }

  @Test
  void noSoundHasTheLevelOfSilence() {
    assertEquals(new Level(-120, -120, 0), of(0, 0));
    assertEquals(new Level(-120, -120, 0), new LevelMeter().level());
  }
}
