package org.undercall.adapter.clips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.event.Clip;

@DisplayName("A writer of clips")
class ClipWriterTest {
  private static final byte[] SOUND = new byte[32_000];

  @TempDir private Path session;
  private final List<String> told = new ArrayList<>();

  private Path folder() {
    return session.resolve("clips");
  }

  private ClipWriter writer(ClipFormat format) {
    return new ClipWriter(folder(), new ClipWriter.Settings(format, false), told::add);
  }

  @Test
  @DisplayName("names a file after its decision and gives the hash of what is on the disk")
  void named() throws Exception {
    Clip flac = writer(ClipFormat.FLAC).keep(123, SOUND).orElseThrow();
    Clip wav = writer(ClipFormat.WAV).keep(1_234_567, SOUND).orElseThrow();
    assertEquals("000123.flac", flac.file());
    assertEquals("1234567.wav", wav.file());
    ClipFolder clips = new ClipFolder(folder());
    assertEquals(ClipFolder.State.WHOLE, clips.look(flac).state());
    assertEquals(new ClipFolder.Found(ClipFolder.State.WHOLE, 32_044), clips.look(wav));
    assertEquals(List.of(), clips.others(Set.of(flac.file(), wav.file())));
    assertEquals(List.of(), told);
  }

  @Test
  @DisplayName("writes anew over a clip that a crash left behind")
  void anew() throws Exception {
    Files.createDirectories(folder());
    Files.writeString(folder().resolve("000007.flac"), "left behind");
    Files.writeString(
        folder().resolve("000007.flac.part"), "a longer part left behind".repeat(999));
    Clip clip = writer(ClipFormat.FLAC).keep(7, SOUND).orElseThrow();
    assertEquals(ClipFolder.State.WHOLE, new ClipFolder(folder()).look(clip).state());
    assertEquals(List.of(), new ClipFolder(folder()).others(Set.of(clip.file())));
  }

  @Test
  @DisplayName("tells once that it cannot write, and goes on when it can")
  void cannotWrite() throws Exception {
    Files.writeString(folder(), "in the way");
    ClipWriter writer = writer(ClipFormat.FLAC);
    assertEquals(Optional.empty(), writer.keep(1, SOUND));
    assertEquals(Optional.empty(), writer.keep(2, SOUND));
    assertEquals(1, told.size());
    assertTrue(told.get(0).startsWith("CLP-001 clip 000001.flac: found "), told.get(0));
    assertEquals("in the way", Files.readString(folder()));
    Files.delete(folder());
    assertTrue(writer.keep(3, SOUND).isPresent());
  }

  @Test
  @DisplayName("leaves the last ten megabytes of the disk to the log")
  void nearlyFull() {
    long[] free = {ClipWriter.SPARE + 32_043};
    ClipWriter.Settings settings = new ClipWriter.Settings(ClipFormat.WAV, false);
    ClipWriter writer = new ClipWriter(folder(), settings, told::add, where -> free[0]);
    assertEquals(Optional.empty(), writer.keep(1, SOUND));
    assertTrue(told.get(0).contains("a disk nearly full"), told.get(0));
    free[0]++;
    assertTrue(writer.keep(2, SOUND).isPresent());
  }

  @Test
  @DisplayName("leaves no part of a clip that could not be put in its place")
  void noPart() throws Exception {
    Files.createDirectories(folder().resolve("000001.flac").resolve("in the way"));
    assertEquals(Optional.empty(), writer(ClipFormat.FLAC).keep(1, SOUND));
    assertFalse(Files.exists(folder().resolve("000001.flac.part")));
    assertEquals(1, told.size());
  }

  @Test
  @DisplayName("deletes the clip of a decision that was not recorded")
  void discarded() {
    ClipWriter writer = writer(ClipFormat.WAV);
    Clip clip = writer.keep(1, SOUND).orElseThrow();
    writer.discard(clip);
    assertFalse(Files.exists(folder().resolve(clip.file())));
    writer.discard(clip);
  }
}
