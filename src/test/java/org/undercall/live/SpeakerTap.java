package org.undercall.live;

import java.io.IOException;
import java.io.InputStream;
import java.util.TreeSet;

/** Listens to what the loudspeaker plays and knows when it was loud. Times are in nanoseconds. */
final class SpeakerTap implements Runnable, AutoCloseable {
  private static final int BLOCK_BYTES = 320;
  private static final int LOUD = 200;

  private final Process recording;
  private final TreeSet<Long> loud = new TreeSet<>();

  private SpeakerTap(Process recording) {
    this.recording = recording;
  }

  static SpeakerTap on(Process recording) {
    SpeakerTap tap = new SpeakerTap(recording);
    Thread thread = new Thread(tap, "tap");
    thread.setDaemon(true);
    thread.start();
    return tap;
  }

  @Override
  public void run() {
    byte[] block = new byte[BLOCK_BYTES];
    try (InputStream in = recording.getInputStream()) {
      while (in.readNBytes(block, 0, BLOCK_BYTES) == BLOCK_BYTES) {
        note(peak(block), System.nanoTime());
      }
    } catch (IOException e) {
      // The recording was ended.
    }
  }

  private static int peak(byte[] block) {
    int peak = 0;
    for (int i = 0; i < block.length; i += 2) {
      peak = Math.max(peak, Math.abs((block[i] & 0xff) | (block[i + 1] << 8)));
    }
    return peak;
  }

  private synchronized void note(int peak, long now) {
    if (peak >= LOUD) {
      loud.add(now);
      notifyAll();
    }
  }

  /** From when on sound counts. It may be in the past: what has sounded since then counts. */
  synchronized void from(long nanos) {
    loud.headSet(nanos).clear();
  }

  /** When it became loud first; 0 if it did not in so many milliseconds. */
  synchronized long awaitLoud(long millis) throws InterruptedException {
    long until = System.nanoTime() + millis * 1_000_000;
    while (loud.isEmpty() && System.nanoTime() < until) {
      wait(20);
    }
    return loud.isEmpty() ? 0 : loud.first();
  }

  /** When it was loud last, after it has been quiet for so long, in milliseconds. */
  synchronized long awaitQuiet(long millis) throws InterruptedException {
    while (System.nanoTime() - last() < millis * 1_000_000) {
      wait(20);
    }
    return last();
  }

  private long last() {
    return loud.isEmpty() ? 0 : loud.last();
  }

  @Override
  public void close() {
    recording.destroy();
  }
}
