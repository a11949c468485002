package org.undercall.adapter.microphone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.undercall.port.Fault;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;
import org.undercall.sound.SampleFormat;
import org.undercall.sound.SoundCode;

/** The capture is run on the test's own thread, before the frames are taken. */
class MicrophoneFramesTest {
  private static final SampleFormat PLAIN = new SampleFormat(false, 16, 1, Frames.RATE);

  /** Gives so many blocks of a constant sound, then nothing again and again, like a lost device. */
  private static final class FakeLine implements SoundLine {
    private int blocks;
    private int zeros;
    private int closed;

    FakeLine(int blocks) {
      this.blocks = blocks;
    }

    @Override
    public int read(byte[] into) {
      if (blocks == 0) {
        zeros++;
        return 0;
      }
      blocks--;
      Arrays.fill(into, (byte) 1);
      return into.length;
    }

    @Override
    public synchronized void close() {
      closed++;
    }
  }

  private final FakeLine line = new FakeLine(30);

  private Capture capture(int firstFrames, int ringFrames) {
    return new Capture(line, PLAIN, "fake", firstFrames, ringFrames, OwnVoice.unheard());
  }

  private MicrophoneFrames frames(int ringFrames, boolean run) {
    Capture capture = capture(ringFrames, ringFrames);
    if (run) {
      capture.run();
    }
    return new MicrophoneFrames("fake", line, capture, 1, 1);
  }

  @Test
  void whatWasHeardBeforeTheDeviceWentIsGivenThenTheLossIsReported() throws Fault {
    MicrophoneFrames frames = frames(100, true);
    for (int i = 0; i < 20; i++) {
      assertEquals(i * 480L, frames.next().orElseThrow().firstSample());
    }
    Fault fault = assertThrows(Fault.class, frames::next);
    assertEquals(SoundCode.MICROPHONE_LOST, fault.code());
    assertEquals(10, line.zeros);
    assertEquals(0, frames.droppedMillis());
  }

  @Test
  void whenNobodyTakesThemTheOldestFramesAreDroppedAndCounted() throws Fault {
    MicrophoneFrames frames = frames(5, true);
    assertEquals(15 * 480L, frames.next().orElseThrow().firstSample());
    assertEquals(15 * 30, frames.droppedMillis());
  }

  @Test
  void whatComesBeforeTheTakerBeginsIsKeptAsAWholeAndOnlyThen() throws Exception {
    Capture capture = capture(20, 5);
    capture.run();
    for (int i = 0; i < 20; i++) {
      assertEquals(i * 480L, capture.take(1).firstSample());
    }
    line.blocks = 30;
    capture.run();
    assertEquals(35 * 480L, capture.take(1).firstSample());
    assertEquals(15, capture.dropped());
  }

  @Test
  void aDeviceThatHangsIsReportedAsLost() {
    MicrophoneFrames frames = frames(5, false);
    assertEquals(SoundCode.MICROPHONE_LOST, assertThrows(Fault.class, frames::next).code());
  }

  @Test
  void soundThatWasToBeForgottenDoesNotCountAsDropped() {
    MicrophoneFrames frames = frames(5, true);
    frames.discardWaiting();
    assertThrows(Fault.class, frames::next);
    assertEquals(0, frames.droppedMillis());
  }

  @Test
  void closedByHandIsTheEndAndNoLoss() throws Fault {
    MicrophoneFrames frames = frames(100, true);
    frames.close();
    frames.close();
    assertEquals(Optional.empty(), frames.next());
    synchronized (line) {
      assertEquals(1, line.closed);
    }
  }
}
