package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.command.App;
import org.undercall.sound.WavBytes;
import picocli.CommandLine;

@DisplayName("A sound file that lies, given to a command")
class LyingSoundTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final byte[] SECOND = new byte[32_000];

  @TempDir private Path folder;

  private static WavBytes wav() {
    return new WavBytes();
  }

  private static byte[] floats(float value) {
    ByteBuffer data = ByteBuffer.allocate(64_000).order(ByteOrder.LITTLE_ENDIAN);
    data.putFloat(32_000, value);
    return wav().coded(3, 32).of(data.array());
  }

  static Stream<Arguments> files() {
    return Stream.of(
        Arguments.of("is empty", new byte[0], "SND-002"),
        Arguments.of("is no sound", "not a sound, but long enough".getBytes(US), "SND-002"),
        Arguments.of("ends in its header", Arrays.copyOf(wav().of(SECOND), 30), "SND-009"),
        Arguments.of("ends too early", Arrays.copyOf(wav().of(SECOND), 20_000), "SND-009"),
        Arguments.of("says one byte too many", wav().statedLength(32_001).of(SECOND), "SND-009"),
        Arguments.of("says 2 GB", wav().statedLength(0x7fff_ffffL).of(SECOND), "SND-009"),
        Arguments.of("says 4 GB", wav().statedLength(0xffff_fffeL).of(SECOND), "SND-009"),
        Arguments.of("says there is nothing", wav().statedLength(0).of(SECOND), "SND-004"),
        Arguments.of("holds nothing", wav().statedLength(0xffff_ffffL).of(new byte[0]), "SND-004"),
        Arguments.of("holds half a block", wav().of(new byte[31_999]), "SND-010"),
        Arguments.of("has blocks of 3 bytes", wav().statedBlock(3).of(SECOND), "SND-010"),
        Arguments.of("has blocks of nothing", wav().statedBlock(0).of(SECOND), "SND-010"),
        Arguments.of("has blocks of 65535", wav().statedBlock(65_535).of(SECOND), "SND-010"),
        Arguments.of("has no rate", wav().rate(0).of(SECOND), "SND-008"),
        Arguments.of("has a rate below nothing", wav().rate(-1).of(SECOND), "SND-008"),
        Arguments.of("has the highest rate", wav().rate(Integer.MAX_VALUE).of(SECOND), "SND-008"),
        Arguments.of("has no channel", wav().channels(0).of(SECOND), "SND-007"),
        Arguments.of("has 65535 channels", wav().channels(65_535).of(SECOND), "SND-007"),
        Arguments.of("has samples of no bits", wav().coded(1, 0).of(SECOND), "SND-006"),
        Arguments.of("has samples of 64 bits", wav().coded(1, 64).of(SECOND), "SND-006"),
        Arguments.of("is packed", wav().coded(85, 16).of(SECOND), "SND-005"),
        Arguments.of("holds a sample that is no number", floats(Float.NaN), "SND-011"),
        Arguments.of("holds an endless sample", floats(Float.NEGATIVE_INFINITY), "SND-011"));
  }

  private static final java.nio.charset.Charset US = java.nio.charset.StandardCharsets.US_ASCII;

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("files")
  @DisplayName("is a fault in one line with its code, and the work closes nothing")
  void fault(String name, byte[] content, String code) throws Exception {
    Path file = Files.write(folder.resolve("lying.wav"), content);
    refused(code, "listen", "--sound", file.toString());
    Path sessions = folder.resolve("sessions");
    refused(
        code,
        "work",
        PROCEDURE.toString(),
        "--sound",
        file.toString(),
        "--voice",
        "none",
        "--sessions",
        sessions.toString());
    for (SessionFolder session : SessionFolder.all(sessions)) {
      assertTrue(!Files.readString(session.log()).contains("EV03"), "the cautions stay open");
    }
  }

  private static void refused(String code, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    assertEquals(1, line.execute(words), () -> out + "\n" + err);
    assertEquals(1, err.toString().lines().count(), err.toString());
    assertTrue(err.toString().startsWith(code + " "), err.toString());
  }
}
