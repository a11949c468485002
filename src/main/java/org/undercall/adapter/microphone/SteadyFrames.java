package org.undercall.adapter.microphone;

import java.util.Optional;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.SoundCode;

/**
 * The sound of a microphone that may go and come back. While it is gone, silence takes its place at
 * the pace of the clock, so that whoever listens is not held up; a gap in the places of the frames
 * shows where sound is missing.
 *
 * <p>One thread at a time uses it.
 */
public final class SteadyFrames implements Frames {
  private static final int FRAME_MILLIS = 1000 * FRAME_SAMPLES / RATE;

  private final Opener opener;
  private final MicrophoneWatch watch;
  private final Pace pace;
  private Frames current;
  private Reopening reopening;
  private long offset;
  private long end;
  private long droppedBefore;
  private boolean told;
  private boolean closed;

  /** Opens the microphone. */
  @FunctionalInterface
  public interface Opener {
    /**
     * Opens it.
     *
     * @throws Fault if it cannot be opened
     */
    Frames open() throws Fault;
  }

  SteadyFrames(Opener opener, MicrophoneWatch watch, Pace pace) throws Fault {
    this.opener = opener;
    this.watch = watch;
    this.pace = pace;
    this.current = opener.open();
  }

  /**
   * Opens a microphone.
   *
   * @param opener opens it, now and whenever it was lost
   * @throws Fault if it cannot be opened now
   */
  public static SteadyFrames open(Opener opener, MicrophoneWatch watch) throws Fault {
    return new SteadyFrames(opener, watch, Pace.ofMachine());
  }

  /**
   * {@inheritDoc}
   *
   * @throws Fault if the sound breaks off otherwise than by the loss of the microphone
   */
  @Override
  public Optional<Frame> next() throws Fault {
    if (closed) {
      return Optional.empty();
    }
    if (reopening != null) {
      return whileGone();
    }
    try {
      Optional<Frame> frame = current.next().map(this::placed);
      tellDropped();
      return frame;
    } catch (Fault e) {
      if (e.code() != SoundCode.MICROPHONE_LOST) {
        throw e;
      }
      lose(e);
      return Optional.of(silence());
    }
  }

  @Override
  public void discardWaiting() {
    if (reopening == null) {
      current.discardWaiting();
    }
  }

  @Override
  public long droppedMillis() {
    return droppedBefore + (reopening == null ? current.droppedMillis() : 0);
  }

  @Override
  public void close() {
    closed = true;
    if (reopening == null) {
      current.close();
    } else {
      reopening.stop();
    }
  }

  private void lose(Fault why) {
    droppedBefore += current.droppedMillis();
    Frames gone = current;
    pace.aside(gone::close);
    reopening = new Reopening(opener, pace);
    end += FRAME_SAMPLES;
    watch.lost(why.getMessage());
  }

  private Optional<Frame> whileGone() {
    Optional<Reopening.Opened> opened = reopening.look();
    if (opened.isPresent()) {
      current = opened.get().frames();
      reopening = null;
      Frame first = opened.get().first();
      offset = end + FRAME_SAMPLES - first.firstSample();
      watch.back();
      return Optional.of(placed(first));
    }
    try {
      pace.rest(FRAME_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
    return Optional.of(silence());
  }

  private Frame placed(Frame frame) {
    Frame placed = frame.later(offset);
    end = placed.firstSample() + placed.samples();
    return placed;
  }

  private Frame silence() {
    Frame silence = new Frame(end, new byte[FRAME_BYTES]);
    end += FRAME_SAMPLES;
    return silence;
  }

  private void tellDropped() {
    if (!told && droppedMillis() > 0) {
      told = true;
      watch.dropped(droppedMillis());
    }
  }
}
