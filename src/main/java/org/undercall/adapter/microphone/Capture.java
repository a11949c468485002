package org.undercall.adapter.microphone;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.FrameMaker;
import org.undercall.sound.OwnVoice;
import org.undercall.sound.SampleFormat;

/**
 * Reads a line into a ring of frames, on its own thread, until it is stopped or the device is gone.
 * When nobody takes the frames, the oldest are dropped and counted.
 */
final class Capture implements Runnable {
  /** A device that is gone answers 0 every 50 ms. */
  private static final int ZEROS_UNTIL_LOST = 10;

  private final SoundLine line;
  private final SampleFormat format;
  private final FrameMaker maker;
  private final OwnVoice own;
  private final byte[] block;
  private final int ringFrames;
  private final ArrayBlockingQueue<Frame> ring;
  private final AtomicLong pushedOut = new AtomicLong();
  private final AtomicLong dropped = new AtomicLong();
  private volatile boolean stopped;
  private volatile boolean lost;

  /** Whoever takes the frames has begun and caught up: from now on a wait means a slow machine. */
  private volatile boolean caughtUp;

  /**
   * A capture.
   *
   * @param firstFrames how many frames are kept until the taker, which may begin late, has caught
   *     up
   * @param ringFrames how many frames are kept for a slow taker after that
   * @param own takes the program's own voice out, frame by frame as they come
   */
  Capture(
      SoundLine line,
      SampleFormat format,
      String name,
      int firstFrames,
      int ringFrames,
      OwnVoice own) {
    this.own = own;
    this.line = line;
    this.format = format;
    this.maker = new FrameMaker(format, name);
    this.block = new byte[format.rate() / 50 * format.blockBytes()];
    this.ringFrames = ringFrames;
    this.ring = new ArrayBlockingQueue<>(firstFrames);
  }

  @Override
  public void run() {
    int zeros = 0;
    try {
      while (!stopped && zeros < ZEROS_UNTIL_LOST) {
        int found = line.read(block);
        zeros = found > 0 ? 0 : zeros + 1;
        maker.add(block, Math.max(0, found));
        for (Frame frame = maker.poll(); frame != null; frame = maker.poll()) {
          put(own.without(frame));
        }
      }
    } catch (Fault e) {
      zeros = ZEROS_UNTIL_LOST;
    }
    lost = !stopped;
  }

  private void put(Frame frame) {
    while ((caughtUp && ring.size() >= ringFrames) || !ring.offer(frame)) {
      if (ring.poll() != null) {
        pushedOut.incrementAndGet();
      }
    }
  }

  /** The oldest frame; null if none came in time. */
  Frame take(long waitMillis) throws InterruptedException {
    dropped.addAndGet(pushedOut.getAndSet(0));
    Frame frame = ring.poll();
    caughtUp |= ring.size() < ringFrames;
    if (frame != null || lost || stopped) {
      return frame;
    }
    return ring.poll(waitMillis, TimeUnit.MILLISECONDS);
  }

  /** Forgets what waits; what was pushed out before would have been forgotten as well. */
  void discardWaiting() {
    pushedOut.set(0);
    ring.clear();
  }

  SampleFormat format() {
    return format;
  }

  void stop() {
    stopped = true;
  }

  boolean stopped() {
    return stopped;
  }

  /** How many frames were lost before one that was taken. */
  long dropped() {
    return dropped.get();
  }
}
