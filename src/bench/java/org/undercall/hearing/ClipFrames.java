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
  private int at;
  private double clock;
  private long asked = Machine.computingNanos();

  ClipFrames(Sound sound) {
    this.sound = sound;
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
    asked = Machine.computingNanos();
    return Optional.of(frame);
  }

  /**
   * When the work done so far would have been done if the sound came live: a frame can be worked on
   * once it has sounded and the work on the one before is done.
   */
  double seconds() {
    return clock + (Machine.computingNanos() - asked) / 1e9;
  }

  /** Whether all the sound was given. */
  boolean ended() {
    return at >= sound.length();
  }

  @Override
  public void close() {}
}
