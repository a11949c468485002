package org.undercall.hearing;

import java.util.Optional;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * A clip as a source of sound, with a clock that says when a live source would have got here.
 * Computing counts as the processor time of this thread, so that a busy machine does not blur it.
 */
final class ClipFrames implements Frames {
  private final Sound sound;
  private final boolean live;
  private final long begun = System.nanoTime();
  private int at;
  private double clock;
  private long asked = Machine.computingNanos();

  ClipFrames(Sound sound) {
    this(sound, false);
  }

  private ClipFrames(Sound sound, boolean live) {
    this.sound = sound;
    this.live = live;
  }

  /** A clip that sounds as fast as a live source; its clock is the machine's. */
  static ClipFrames live(Sound sound) {
    return new ClipFrames(sound, true);
  }

  @Override
  public Optional<Frame> next() {
    clock = seconds();
    if (at >= sound.length()) {
      asked = Machine.computingNanos();
      return Optional.empty();
    }
    Frame frame = sound.frame(at);
    at += frame.samples();
    clock = Math.max(clock, (double) at / RATE);
    if (live) {
      sleepUntil((double) at / RATE);
    }
    asked = Machine.computingNanos();
    return Optional.of(frame);
  }

  /**
   * When the work done so far would have been done if the sound came live: a frame can be worked on
   * once it has sounded and the work on the one before is done.
   */
  double seconds() {
    return live
        ? (System.nanoTime() - begun) / 1e9
        : clock + (Machine.computingNanos() - asked) / 1e9;
  }

  private void sleepUntil(double seconds) {
    try {
      Thread.sleep((long) Math.max(0, 1000 * (seconds - seconds())));
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Whether all the sound was given. */
  boolean ended() {
    return at >= sound.length();
  }

  @Override
  public void close() {}
}
