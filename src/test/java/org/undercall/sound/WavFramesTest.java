package org.undercall.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

class WavFramesTest {
  @TempDir private Path folder;

  private Path file(byte[] content) throws IOException {
    return Files.write(folder.resolve("a.wav"), content);
  }

  /** All samples of a file; checks the size and place of every frame. */
  private int[] samples(byte[] content) throws IOException, Fault {
    int[] all = new int[1 << 17];
    int count = 0;
    try (Frames frames = WavFrames.open(file(content))) {
      for (Optional<Frame> f = frames.next(); f.isPresent(); f = frames.next()) {
        assertEquals(0, count % Frames.FRAME_SAMPLES, "only the last frame may be short");
        assertEquals(count, f.get().firstSample());
        for (int i = 0; i < f.get().samples(); i++) {
          all[count++] = f.get().sample(i);
        }
      }
    }
    return Arrays.copyOf(all, count);
  }

  private static double rms(int[] samples) {
    int[] middle = Arrays.copyOfRange(samples, samples.length / 4, samples.length * 3 / 4);
    return Math.sqrt(Arrays.stream(middle).mapToDouble(v -> (double) v * v).average().orElse(0))
        / 32_768;
  }

  @Nested
  class Formats {
    @ParameterizedTest
    @CsvSource({
      "1, 8, 1, 8000", "1, 16, 1, 8000", "1, 16, 2, 44100", "1, 24, 1, 48000", "1, 24, 2, 44100",
      "1, 32, 1, 22050", "3, 32, 2, 48000", "3, 64, 1, 11025", "1, 16, 6, 96000", "1, 16, 1, 16000"
    })
    void aToneKeepsItsLengthAndLevel(int tag, int bits, int channels, int rate) throws Exception {
      int[] samples =
          samples(new WavBytes().coded(tag, bits).channels(channels).rate(rate).tone(1000, 0.5));
      assertEquals(Frames.RATE, samples.length);
      assertEquals(0.5 / Math.sqrt(2), rms(samples), 0.004);
    }

    @ParameterizedTest
    @ValueSource(ints = {8_000, 44_100, 48_000})
    void aToneKeepsItsPitchAndPlace(int rate) throws Exception {
      int[] samples = samples(new WavBytes().rate(rate).tone(400, 0.5));
      for (int i = 200; i < samples.length - 200; i++) {
        double expected = 0.5 * 32_768 * Math.sin(2 * Math.PI * 400 * i / Frames.RATE);
        assertEquals(expected, samples[i], 40, "sample " + i);
      }
    }

    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000})
    void aToneThatTheNewRateCannotCarryIsGone(int rate) throws Exception {
      assertTrue(rms(samples(new WavBytes().rate(rate).tone(10_000, 0.9))) < 0.001);
    }

    @Test
    void sixteenBitSamplesOfTheRightRateStayAsTheyAre() throws Exception {
      byte[] data = {0, 0, 1, 0, -1, -1, 0, -128, -1, 127};
      int[] samples = samples(new WavBytes().of(data));
      assertEquals(List.of(0, 1, -1, -32_768, 32_767), Arrays.stream(samples).boxed().toList());
    }

    @Test
    void tooLoudFloatsAreClipped() throws Exception {
      byte[] data = floats(2f, -3f);
      int[] samples = samples(new WavBytes().coded(3, 32).of(data));
      assertEquals(List.of(32_767, -32_768), Arrays.stream(samples).boxed().toList());
    }

    @Test
    void aLengthThatTheWriterDidNotKnowMeansToTheEnd() throws Exception {
      byte[] content = new WavBytes().statedLength(0xffff_ffffL).of(new byte[1001]);
      assertEquals(500, samples(content).length);
    }
  }

  private static byte[] floats(float... values) {
    byte[] bytes = new byte[4 * values.length];
    ByteBuffer data = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    for (float value : values) {
      data.putFloat(value);
    }
    return bytes;
  }

  @Nested
  class Faults {
    private void refused(SoundCode code, byte[] content) {
      Fault fault = assertThrows(Fault.class, () -> samples(content));
      assertEquals(code, fault.code(), fault.getMessage());
      assertTrue(fault.getMessage().startsWith(code.id() + " "), fault.getMessage());
    }

    @Test
    void aFileThatIsNotThere() {
      Path nowhere = folder.resolve("none.wav");
      Fault fault = assertThrows(Fault.class, () -> WavFrames.open(nowhere));
      assertEquals(SoundCode.UNREADABLE, fault.code());
    }

    @Test
    void filesThatAreNoWav() {
      refused(SoundCode.NOT_WAV, new byte[0]);
      refused(SoundCode.NOT_WAV, "RIFF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      refused(SoundCode.NOT_WAV, new byte[100]);
    }

    @Test
    void everyCutOfAFileIsRefusedWithACode() {
      byte[] whole = new WavBytes().of(new byte[64]);
      for (int length = 0; length < whole.length; length++) {
        byte[] cut = Arrays.copyOf(whole, length);
        assertThrows(Fault.class, () -> samples(cut), "cut to " + length);
      }
    }

    @Test
    void aDataLengthThatLies() {
      refused(SoundCode.TRUNCATED, new WavBytes().statedLength(1000).of(new byte[998]));
      refused(SoundCode.TRUNCATED, new WavBytes().statedLength(0x7fff_ffff).of(new byte[998]));
    }

    @Test
    void aFileWithoutSound() {
      refused(SoundCode.NO_DATA, new WavBytes().of(new byte[0]));
      refused(SoundCode.NO_DATA, Arrays.copyOf(new WavBytes().of(new byte[0]), 36));
    }

    @Test
    void dataBeforeTheFormat() {
      byte[] whole = new WavBytes().of(new byte[64]);
      byte[] without = Arrays.copyOf(whole, 12 + 72);
      System.arraycopy(whole, 36, without, 12, 72);
      refused(SoundCode.NO_FORMAT, without);
    }

    @Test
    void formatsThatAreNotSupported() {
      refused(SoundCode.ENCODING, new WavBytes().coded(7, 8).of(new byte[64]));
      refused(SoundCode.SAMPLE_SIZE, new WavBytes().coded(1, 12).statedBlock(2).of(new byte[64]));
      refused(SoundCode.SAMPLE_SIZE, new WavBytes().coded(3, 16).of(new byte[64]));
      refused(SoundCode.CHANNELS, new WavBytes().channels(0).of(new byte[64]));
      refused(SoundCode.CHANNELS, new WavBytes().channels(9).of(new byte[180]));
      refused(SoundCode.RATE, new WavBytes().rate(0).of(new byte[64]));
      refused(SoundCode.RATE, new WavBytes().rate(-16_000).of(new byte[64]));
      refused(SoundCode.RATE, new WavBytes().rate(192_000).of(new byte[64]));
    }

    @Test
    void statementsThatContradictEachOther() {
      refused(SoundCode.CONTRADICTION, new WavBytes().statedBlock(4).of(new byte[64]));
      refused(SoundCode.CONTRADICTION, new WavBytes().of(new byte[63]));
    }

    @ParameterizedTest
    @ValueSource(floats = {Float.NaN, Float.POSITIVE_INFINITY})
    void aSampleThatIsNoNumber(float bad) {
      refused(SoundCode.NOT_A_NUMBER, new WavBytes().coded(3, 32).of(floats(0, 0.5f, bad)));
    }
  }
}
