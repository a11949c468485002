package org.undercall.adapter.clips;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The format of a clip")
class ClipFormatTest {
  private static final int PIECE_BYTES = 960;
  private static final int MD5_AT = 26;

  private static byte[] sound(int samples, IntUnaryOperator sample) {
    ByteBuffer bytes = ByteBuffer.allocate(2 * samples).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < samples; i++) {
      bytes.putShort((short) sample.applyAsInt(i));
    }
    return bytes.array();
  }

  private static byte[] filledUp(byte[] sound) {
    int pieces = Math.max(1, (sound.length + PIECE_BYTES - 1) / PIECE_BYTES);
    return Arrays.copyOf(sound, pieces * PIECE_BYTES);
  }

  private static void sameAfterwards(byte[] sound) throws Exception {
    byte[] flac = ClipFormat.FLAC.encode(sound);
    Decoded decoded = Decoded.of(flac);
    byte[] expected = filledUp(sound);
    assertArrayEquals(expected, decoded.sound());
    assertEquals(16_000, decoded.info().getSampleRate());
    assertEquals(1, decoded.info().getChannels());
    assertEquals(16, decoded.info().getBitsPerSample());
    assertEquals(expected.length / 2, decoded.info().getTotalSamples());
    assertArrayEquals(
        MessageDigest.getInstance("MD5").digest(expected),
        Arrays.copyOfRange(flac, MD5_AT, MD5_AT + 16));
  }

  @ParameterizedTest(name = "{0} samples")
  @ValueSource(ints = {0, 1, 2, 3, 479, 480, 481, 3839, 3840, 3841, 3844, 7681, 48_000, 480_000})
  @DisplayName("FLAC gives back every sample of quiet, tones, noise and full swings, of any length")
  void lossless(int samples) throws Exception {
    Random chance = new Random(samples);
    sameAfterwards(sound(samples, i -> 0));
    sameAfterwards(sound(samples, i -> (int) (20_000 * Math.sin(i * 0.05))));
    sameAfterwards(sound(samples, i -> chance.nextInt()));
    sameAfterwards(sound(samples, i -> i % 2 == 0 ? Short.MIN_VALUE : Short.MAX_VALUE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"one-seven-five.wav", "go-to-step-four.wav", "say-again.wav"})
  @DisplayName("FLAC gives back speech, in less room")
  void speech(String name) throws Exception {
    try (InputStream in = ClipFormatTest.class.getResourceAsStream("/sound/" + name)) {
      in.skipNBytes(44);
      byte[] sound = in.readAllBytes();
      sameAfterwards(sound);
      int size = ClipFormat.FLAC.encode(sound).length;
      assertTrue(size < 0.8 * sound.length, size + " of " + sound.length);
    }
  }

  @Test
  @DisplayName("FLAC is made without a line on the screen or a thread left behind")
  void quiet() throws Exception {
    PrintStream before = System.err;
    int threads = Thread.activeCount();
    ByteArrayOutputStream shown = new ByteArrayOutputStream();
    System.setErr(new PrintStream(shown, true, StandardCharsets.UTF_8));
    try {
      Random chance = new Random(1);
      ClipFormat.FLAC.encode(sound(48_000, i -> chance.nextInt()));
    } finally {
      System.setErr(before);
    }
    assertEquals("", shown.toString(StandardCharsets.UTF_8));
    assertTrue(Thread.activeCount() <= threads);
  }

  @Test
  @DisplayName("WAV is read by the Java library as it was written")
  void wav() throws Exception {
    byte[] sound = sound(1001, i -> 31 * i);
    byte[] file = ClipFormat.WAV.encode(sound);
    try (AudioInputStream in = AudioSystem.getAudioInputStream(new ByteArrayInputStream(file))) {
      assertEquals(16_000, in.getFormat().getSampleRate());
      assertEquals(1, in.getFormat().getChannels());
      assertArrayEquals(sound, in.readAllBytes());
    }
  }
}
