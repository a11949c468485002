package org.undercall.command.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.term.TalkLevel;

@DisplayName("How much a technician wants to hear")
class TalkOptionTest {
  private static final Optional<String> ALEX = Optional.of("ALEX");

  @TempDir private Path folder;

  @Test
  @DisplayName("is kept for each by name, and for those who are not named")
  void kept() {
    Path file = folder.resolve("new").resolve("talk.properties");
    TalkOption option = new TalkOption(file);
    option.keep(ALEX, TalkLevel.SHORT);
    option.keep(Optional.empty(), TalkLevel.FULL);
    TalkOption next = new TalkOption(file);
    assertEquals(TalkLevel.SHORT, next.level(ALEX));
    assertEquals(TalkLevel.FULL, next.level(Optional.empty()));
    assertEquals(TalkLevel.NORMAL, next.level(Optional.of("KIM")));
    next.keep(ALEX, TalkLevel.NORMAL);
    assertEquals(TalkLevel.NORMAL, new TalkOption(file).level(ALEX));
  }

  @Test
  @DisplayName("is normal at first, and nothing is written for that")
  void normal() {
    Path file = folder.resolve("talk.properties");
    new TalkOption(file).keep(ALEX, TalkLevel.NORMAL);
    assertFalse(Files.exists(file));
  }

  @Test
  @DisplayName("is normal if the file holds an odd word or cannot be read")
  void odd() throws Exception {
    Path file = Files.writeString(folder.resolve("talk.properties"), "ALEX=loud");
    assertEquals(TalkLevel.NORMAL, new TalkOption(file).level(ALEX));
    assertEquals(TalkLevel.NORMAL, new TalkOption(folder).level(ALEX));
    String broken = "ALEX=" + (char) 92 + "u12";
    Files.writeString(file, broken);
    assertEquals(TalkLevel.NORMAL, new TalkOption(file).level(ALEX));
  }
}
