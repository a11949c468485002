package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.SpeakerCode;

class GuardedLineTest {
  private static final long PATIENT = 60_000;

  private final CountDownLatch hung = new CountDownLatch(1);
  private final List<FakeLine> lines = new ArrayList<>();

  private SoundLine line() {
    FakeLine line = new FakeLine();
    lines.add(line);
    return line;
  }

  private void hang() {
    try {
      hung.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @AfterEach
  void letGo() {
    hung.countDown();
  }

  @Test
  void soundGoesThrough() {
    GuardedLine guarded = new GuardedLine(this::line, PATIENT);
    guarded.open(16_000);
    assertEquals(100, guarded.write(new byte[200], 0, 100));
    guarded.drain();
    guarded.silence();
    guarded.resume();
    guarded.close();
    assertEquals(List.of("open 16000", "drain", "silence", "resume", "close"), lines.get(0).calls);
  }

  @Test
  void aDeviceThatHangsIsGoneAndIsOpenedAgainOnANewThread() {
    GuardedLine guarded = new GuardedLine(this::line, 20);
    guarded.open(16_000);
    lines.get(0).duringWrite = this::hang;
    UncheckedFault e = assertThrows(UncheckedFault.class, () -> guarded.write(new byte[2], 0, 2));
    assertEquals(SpeakerCode.DEVICE_GONE, e.fault().code());
    assertThrows(UncheckedFault.class, () -> guarded.write(new byte[2], 0, 2));
    guarded.open(16_000);
    assertEquals(2, guarded.write(new byte[2], 0, 2));
    assertEquals(2, lines.size());
    assertTrue(lines.get(0).calls.contains("close"));
  }

  @Test
  void silenceDoesNotQueueBehindAWriteThatHangs() {
    GuardedLine guarded = new GuardedLine(this::line, 20);
    guarded.open(16_000);
    FakeLine line = lines.get(0);
    line.duringWrite = this::hang;
    Thread writing = new Thread(() -> assertThrows(UncheckedFault.class, () -> write(guarded)));
    writing.start();
    guarded.silence();
    assertTrue(line.calls.contains("silence"));
  }

  private static void write(GuardedLine guarded) {
    guarded.write(new byte[2], 0, 2);
  }

  @Test
  void aFaultOfTheDeviceKeepsItsCode() {
    GuardedLine guarded =
        new GuardedLine(
            () -> {
              FakeLine line = new FakeLine();
              line.absent = true;
              return line;
            },
            PATIENT);
    UncheckedFault e = assertThrows(UncheckedFault.class, () -> guarded.open(16_000));
    assertEquals(SpeakerCode.NO_DEVICE, e.fault().code());
  }
}
