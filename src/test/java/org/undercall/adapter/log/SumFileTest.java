package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.term.LogTrouble;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("The sum file beside a log")
class SumFileTest {
  @TempDir private Path folder;
  private Path log;
  private Path sum;

  @BeforeEach
  void names() {
    log = folder.resolve("log.jsonl");
    sum = folder.resolve("log.jsonl.sha256");
  }

  private void append(int from, int to) throws Fault {
    try (SessionLogFile open = SessionLogFile.open(log)) {
      for (int seq = from; seq <= to; seq++) {
        open.append(Samples.decision(seq));
      }
    }
  }

  private SumState state() throws IOException {
    return SumState.of(Files.readAllBytes(log), SumFile.read(sum));
  }

  private static String firstLines(Path file, int count) throws IOException {
    return String.join("\n", Files.readAllLines(file).subList(0, count)) + "\n";
  }

  @Test
  @DisplayName("is written after each line, in the form of sha256sum, and leaves no other file")
  void form() throws Exception {
    append(1, 3);
    byte[] bytes = Files.readAllBytes(log);
    assertEquals(
        "# 3 lines, " + bytes.length + " bytes\n" + Sha256.hex(bytes) + "  log.jsonl\n",
        Files.readString(sum));
    try (var files = Files.list(folder)) {
      assertEquals(
          List.of("log.jsonl", "log.jsonl.lock", "log.jsonl.sha256"),
          files.map(f -> f.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  @DisplayName("that a crash left a line behind is no trouble and is brought up to date")
  void behind() throws Exception {
    append(1, 2);
    String old = Files.readString(sum);
    append(3, 3);
    Files.writeString(sum, old);
    assertEquals(SumState.Kind.BEHIND, state().kind());
    assertEquals(2, state().covered());
    try (SessionLogFile open = SessionLogFile.open(log)) {
      assertEquals(Optional.empty(), open.trouble());
      assertEquals(SumState.Kind.SAME, state().kind());
    }
  }

  @Test
  @DisplayName("that a crash left absent after the first line is no trouble")
  void firstLine() throws Exception {
    append(1, 1);
    Files.delete(sum);
    try (SessionLogFile open = SessionLogFile.open(log)) {
      assertEquals(Optional.empty(), open.trouble());
      assertEquals(SumState.Kind.SAME, state().kind());
    }
  }

  private void trouble(LogTrouble trouble, int gone) throws Exception {
    try (SessionLogFile open = SessionLogFile.open(log)) {
      assertEquals(Optional.of(trouble), open.trouble());
      assertEquals(gone, open.gone());
      assertTrue(state().kind() != SumState.Kind.SAME, "hidden before anything was recorded");
      open.append(Samples.decision(open.decisions().size() + 1));
      assertEquals(SumState.Kind.SAME, state().kind());
    }
  }

  @Test
  @DisplayName("shows lines cut off, how many, and stays until the next line is written")
  void cut() throws Exception {
    append(1, 5);
    Files.writeString(log, firstLines(log, 3));
    trouble(LogTrouble.LINES_GONE, 2);
  }

  @Test
  @DisplayName("shows a last line that was whole and is torn now")
  void tornLater() throws Exception {
    append(1, 5);
    byte[] bytes = Files.readAllBytes(log);
    Files.write(log, java.util.Arrays.copyOf(bytes, bytes.length - 9));
    trouble(LogTrouble.LINES_GONE, 1);
  }

  @Test
  @DisplayName("does not take a line torn by a power cut for a lost one")
  void tornNow() throws Exception {
    append(1, 5);
    Files.write(log, "{\"seq\":6,\"at".getBytes(UTF_8), java.nio.file.StandardOpenOption.APPEND);
    try (SessionLogFile open = SessionLogFile.open(log)) {
      assertEquals(Optional.empty(), open.trouble());
      assertTrue(open.dropped().isPresent());
    }
  }

  @Test
  @DisplayName("of another log, of another form or absent is told")
  void others() throws Exception {
    append(1, 5);
    String good = Files.readString(sum);
    Files.writeString(sum, good.replaceAll("[0-9a-f]{64}", "0".repeat(64)));
    trouble(LogTrouble.SUM_DIFFERS, 0);
    Files.writeString(sum, "");
    trouble(LogTrouble.SUM_MISSING, 0);
    Files.delete(sum);
    trouble(LogTrouble.SUM_MISSING, 0);
  }

  @Test
  @DisplayName("written by sha256sum itself, without the counts, does as well")
  void plain() throws Exception {
    append(1, 5);
    Files.writeString(sum, Sha256.hex(Files.readAllBytes(log)) + "  log.jsonl\n");
    assertEquals(SumState.Kind.SAME, state().kind());
    append(6, 6);
    assertEquals(6, state().covered());
  }
}
