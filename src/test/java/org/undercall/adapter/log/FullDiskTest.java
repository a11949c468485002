package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Recorded;
import org.undercall.port.Fault;

@DisplayName("A disk that does not take a decision")
class FullDiskTest {
  private final Disk disk = new Disk();
  private final SessionLogFile log =
      new SessionLogFile(
          "log.jsonl",
          disk,
          null,
          new LogContent(List.of(), Optional.empty(), 0, LogLine.FIRST),
          new SumKeeper(new RunningSum(), this::keepSum));

  private String sumText = "";
  private boolean sumFails;

  private void keepSum(String text) throws IOException {
    disk.calls.add("sum");
    Disk.fail(sumFails, "read-only folder");
    sumText = text;
  }

  /** A file in memory that fails when told to. */
  private static final class Disk implements LogChannel {
    private byte[] bytes = new byte[0];
    private final List<String> calls = new ArrayList<>();
    private int room = Integer.MAX_VALUE;
    private boolean forceFails;
    private boolean cutFails;

    @Override
    public void write(byte[] more, long position) throws IOException {
      calls.add("write");
      int taken = Math.min(more.length, room);
      bytes = Arrays.copyOf(bytes, (int) position + taken);
      System.arraycopy(more, 0, bytes, (int) position, taken);
      fail(taken < more.length, "no space left");
    }

    @Override
    public void force() throws IOException {
      calls.add("force");
      fail(forceFails, "input/output error");
    }

    @Override
    public void cut(long size) throws IOException {
      calls.add("cut");
      fail(cutFails, "cannot cut");
      bytes = size < bytes.length ? Arrays.copyOf(bytes, (int) size) : bytes;
    }

    @Override
    public void close() {
      calls.add("close");
    }

    private static void fail(boolean now, String why) throws IOException {
      if (now) {
        throw new IOException(why);
      }
    }
  }

  private Fault failed(Recorded decision) {
    Fault fault = assertThrows(Fault.class, () -> log.append(decision));
    assertEquals(LogCode.CANNOT_RECORD, fault.code());
    return fault;
  }

  @Test
  @DisplayName("is asked to force each decision before it counts")
  void forced() throws Fault {
    log.append(Samples.decision(1));
    assertEquals(List.of("cut", "write", "force", "sum"), disk.calls);
    assertEquals(1, log.decisions().size());
  }

  @Test
  @DisplayName("leaves the whole lines and nothing else when it is full, and the next try works")
  void full() throws Fault {
    log.append(Samples.decision(1));
    byte[] before = disk.bytes;
    disk.room = 50;
    Fault fault = failed(Samples.decision(2));
    assertTrue(fault.getMessage().contains("no space left"), fault.getMessage());
    assertArrayEquals(before, disk.bytes);
    assertEquals(1, log.decisions().size());
    disk.room = Integer.MAX_VALUE;
    log.append(Samples.decision(2));
    assertEquals(log.decisions(), LogContent.of(disk.bytes, "log.jsonl").decisions());
  }

  @Test
  @DisplayName("leaves no line whose forcing failed")
  void forceFails() throws Fault {
    log.append(Samples.decision(1));
    byte[] before = disk.bytes;
    disk.forceFails = true;
    failed(Samples.decision(2));
    assertArrayEquals(before, disk.bytes);
    assertEquals(1, log.decisions().size());
  }

  @Test
  @DisplayName("says so when the torn line stays, and cuts it off before the next decision")
  void cutFails() throws Fault {
    log.append(Samples.decision(1));
    disk.room = 50;
    disk.calls.clear();
    disk.cutFails = true;
    failed(Samples.decision(2));
    assertFalse(disk.calls.contains("write"), "wrote behind a line that could not be cut");
    disk.cutFails = false;
    failed(Samples.decision(2));
    disk.room = Integer.MAX_VALUE;
    log.append(Samples.decision(2));
    assertEquals(2, LogContent.of(disk.bytes, "log.jsonl").decisions().size());
  }

  @Test
  @DisplayName("loses no decision for a sum file that cannot be written, which catches up later")
  void sumFails() throws Fault {
    log.append(Samples.decision(1));
    String first = sumText;
    sumFails = true;
    log.append(Samples.decision(2));
    assertEquals(2, LogContent.of(disk.bytes, "log.jsonl").decisions().size());
    assertEquals(Optional.of("reading or writing failed: read-only folder"), log.sumTrouble());
    assertEquals(first, sumText);
    assertEquals(SumState.Kind.BEHIND, SumState.of(disk.bytes, Optional.of(sumText)).kind());
    sumFails = false;
    log.append(Samples.decision(3));
    assertEquals(Optional.empty(), log.sumTrouble());
    assertEquals(SumState.Kind.SAME, SumState.of(disk.bytes, Optional.of(sumText)).kind());
  }

  @Test
  @DisplayName("gives no sum to a line that is not on it")
  void noSumWithoutLine() throws Fault {
    log.append(Samples.decision(1));
    String first = sumText;
    disk.forceFails = true;
    failed(Samples.decision(2));
    assertEquals(first, sumText);
  }
}
