package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;

@DisplayName("A damaged log")
class DamagedLogTest {
  private static final List<Recorded> THREE =
      List.of(
          Samples.decision(1, new SessionEvent.CautionsUnderstood()),
          Samples.decision(2),
          Samples.decision(3, new SessionEvent.WorkHeld(), new SessionEvent.WorkResumed()));

  @TempDir private Path folder;
  private Path path;

  @BeforeEach
  void name() {
    path = folder.resolve("log.jsonl");
  }

  private byte[] written(List<Recorded> decisions) throws Fault, IOException {
    try (SessionLogFile log = SessionLogFile.open(path)) {
      for (Recorded decision : decisions) {
        log.append(decision);
      }
    }
    return Files.readAllBytes(path);
  }

  private static List<byte[]> lines(byte[] bytes) {
    List<byte[]> lines = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        lines.add(Arrays.copyOfRange(bytes, start, i + 1));
        start = i + 1;
      }
    }
    return lines;
  }

  private static byte[] joined(List<byte[]> lines) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    lines.forEach(out::writeBytes);
    return out.toByteArray();
  }

  @Test
  @DisplayName("shows every changed byte")
  void everyByte() throws Exception {
    byte[] good = written(THREE);
    int lastLine = good.length - lines(good).get(2).length;
    for (int i = 0; i < good.length; i++) {
      for (int bit = 0; bit < 8; bit++) {
        byte[] bad = good.clone();
        bad[i] ^= (byte) (1 << bit);
        assertShown(bad, i >= lastLine, "byte " + i + " bit " + bit);
      }
    }
  }

  private void assertShown(byte[] bad, boolean inLastLine, String where) {
    try {
      LogContent content = LogContent.of(bad, "log.jsonl");
      assertTrue(inLastLine && content.dropped().isPresent(), where);
      assertEquals(THREE.subList(0, 2), content.decisions(), where);
    } catch (Fault e) {
      assertTrue(e.getMessage().matches("LOG-\\d{3} log.jsonl line [123].*"), e.getMessage());
    }
  }

  @Test
  @DisplayName("names the line, what was found and what was expected")
  void namesTheLine() throws Exception {
    byte[] bad = written(THREE);
    bad[lines(bad).get(0).length + 8] ^= 1;
    Fault fault = assertThrows(Fault.class, () -> LogContent.of(bad, "log.jsonl"));
    assertEquals(
        "LOG-004 log.jsonl line 2: found bytes that do not give the sum at the end of the line,"
            + " expected the line as it was written",
        fault.getMessage());
  }

  @Test
  @DisplayName("keeps every whole decision when cut at any byte, and goes on from there")
  void cutAnywhere() throws Exception {
    byte[] good = written(THREE);
    int first = lines(good).get(0).length;
    int second = first + lines(good).get(1).length;
    for (int size = 0; size <= good.length; size++) {
      int whole = size == good.length ? 3 : size >= second ? 2 : size >= first ? 1 : 0;
      boolean clean = size == 0 || size == first || size == second || size == good.length;
      LogContent content = LogContent.of(Arrays.copyOf(good, size), "log.jsonl");
      assertEquals(THREE.subList(0, whole), content.decisions());
      assertEquals(clean, content.dropped().isEmpty(), "cut at " + size);
      if (size % 23 == 0 || clean) {
        goesOnFrom(Arrays.copyOf(good, size), whole, clean);
        assertArrayEquals(good, Files.readAllBytes(path));
      }
    }
  }

  private void goesOnFrom(byte[] cut, int whole, boolean clean) throws Exception {
    Files.write(path, cut);
    try (SessionLogFile log = SessionLogFile.open(path)) {
      assertEquals(THREE.subList(0, whole), log.decisions());
      assertEquals(clean, log.dropped().isEmpty());
      for (Recorded decision : THREE.subList(whole, THREE.size())) {
        log.append(decision);
      }
    }
  }

  @Test
  @DisplayName("shows a line that was removed, doubled or moved")
  void lineOrder() throws Exception {
    List<byte[]> good = lines(written(THREE));
    for (int i = 0; i < 2; i++) {
      List<byte[]> removed = new ArrayList<>(good);
      removed.remove(i);
      assertOutOfChain(removed);
      List<byte[]> swapped = new ArrayList<>(good);
      Collections.swap(swapped, i, i + 1);
      assertOutOfChain(swapped);
    }
    for (int i = 0; i < 3; i++) {
      List<byte[]> doubled = new ArrayList<>(good);
      doubled.add(i, good.get(i));
      assertOutOfChain(doubled);
    }
  }

  private void assertOutOfChain(List<byte[]> lines) {
    Fault fault = assertThrows(Fault.class, () -> LogContent.of(joined(lines), "log.jsonl"));
    assertEquals(LogCode.OUT_OF_CHAIN, fault.code());
  }

  @Test
  @DisplayName("shows a gap in the numbers of a chain that is right")
  void gap() {
    LogLine.Sealed one = LogLine.write(THREE.get(0), LogLine.FIRST);
    LogLine.Sealed three = LogLine.write(THREE.get(2), one.sum());
    byte[] bytes = joined(List.of(one.bytes(), three.bytes()));
    Fault fault = assertThrows(Fault.class, () -> LogContent.of(bytes, "log.jsonl"));
    assertEquals(LogCode.OUT_OF_COUNT, fault.code());
  }
}
