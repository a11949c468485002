package org.undercall.adapter.speaker;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.SpeakerCode;

/** A sound device that keeps what is written, and can be absent, lost, or call back. */
final class FakeLine implements SoundLine {
  final List<String> calls = new ArrayList<>();
  long written;
  boolean absent;
  boolean lost;
  boolean running;
  final AtomicInteger silenced = new AtomicInteger();
  Runnable duringWrite = () -> {};

  @Override
  public void open(int rate) {
    if (absent) {
      throw new UncheckedFault(SpeakerCode.NO_DEVICE, "no sound device");
    }
    running = true;
    calls.add("open " + rate);
  }

  @Override
  public int write(byte[] bytes, int offset, int length) {
    duringWrite.run();
    if (lost || !running) {
      return 0;
    }
    written += length;
    return length;
  }

  @Override
  public void drain() {
    calls.add("drain");
  }

  @Override
  public void silence() {
    running = false;
    silenced.incrementAndGet();
    calls.add("silence");
  }

  @Override
  public void resume() {
    running = true;
    calls.add("resume");
  }

  @Override
  public void close() {
    running = false;
    calls.add("close");
  }
}
