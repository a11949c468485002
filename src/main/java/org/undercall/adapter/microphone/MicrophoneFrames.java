package org.undercall.adapter.microphone;

import java.util.Optional;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;
import org.undercall.sound.SampleFormat;
import org.undercall.sound.SoundCode;

/**
 * The sound of a microphone. A thread of its own keeps reading; up to three seconds wait in a ring
 * (half a minute until whoever listens has begun and caught up), after that the oldest frames are
 * dropped and counted.
 */
public final class MicrophoneFrames implements Frames {
  private static final int RING_FRAMES = 100;

  /** A slow machine may make the ear and its first sentences at once. */
  private static final int FIRST_FRAMES = 1_000;

  /** A sound server may take two seconds to deliver the first sound. */
  private static final long FIRST_WAIT_MILLIS = 4_000;

  private static final long WAIT_MILLIS = 1_000;

  private final String name;
  private final SoundLine line;
  private final Capture capture;
  private final long waitMillis;
  private long firstWaitMillis;

  /** Frames of a line that is read by {@code capture}, which the caller runs. */
  MicrophoneFrames(
      String name, SoundLine line, Capture capture, long firstWaitMillis, long waitMillis) {
    this.name = name;
    this.line = line;
    this.capture = capture;
    this.firstWaitMillis = firstWaitMillis;
    this.waitMillis = waitMillis;
  }

  /**
   * Opens a microphone and starts to listen.
   *
   * @param name part of its name, in any case; empty for the system's choice
   * @throws Fault SND-020 to SND-022
   */
  public static MicrophoneFrames open(Optional<String> name) throws Fault {
    return open(name, OwnVoice.unheard());
  }

  /**
   * Opens a microphone out of whose sound the program's own voice is taken.
   *
   * @param own stays open when the microphone is closed
   * @throws Fault SND-020 to SND-022
   */
  public static MicrophoneFrames open(Optional<String> name, OwnVoice own) throws Fault {
    JavaSoundLine line = JavaSoundLine.open(name);
    Capture capture = new Capture(line, line.format(), line.name(), FIRST_FRAMES, RING_FRAMES, own);
    Thread thread = new Thread(capture, "microphone");
    thread.setDaemon(true);
    thread.start();
    return new MicrophoneFrames(line.name(), line, capture, FIRST_WAIT_MILLIS, WAIT_MILLIS);
  }

  /**
   * {@inheritDoc}
   *
   * @throws Fault SND-023 if the device is gone: it gave nothing, again and again or for a second.
   *     Open it again to go on.
   */
  @Override
  public Optional<Frame> next() throws Fault {
    if (capture.stopped()) {
      return Optional.empty();
    }
    Frame frame;
    try {
      frame = capture.take(firstWaitMillis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
    if (frame == null && !capture.stopped()) {
      throw new Fault(
          SoundCode.MICROPHONE_LOST, name, "gives no sound any more; plug it in and open it again");
    }
    firstWaitMillis = waitMillis;
    return Optional.ofNullable(frame);
  }

  /** The device and the format it was opened in, for people. */
  public String described() {
    SampleFormat format = capture.format();
    String channels = format.channels() == 1 ? "mono" : format.channels() + " channels";
    return name + ", " + format.rate() + " Hz, " + format.bits() + " bit, " + channels;
  }

  @Override
  public void discardWaiting() {
    capture.discardWaiting();
  }

  /** {@inheritDoc} It is counted when the frames after the lost ones are taken. */
  @Override
  public long droppedMillis() {
    return capture.dropped() * FRAME_SAMPLES * 1000 / RATE;
  }

  /** Stops; waits a second at most, since a sound system that hangs may never let go. */
  @Override
  public void close() {
    if (capture.stopped()) {
      return;
    }
    capture.stop();
    Thread closer = new Thread(line::close, "microphone close");
    closer.setDaemon(true);
    closer.start();
    try {
      closer.join(WAIT_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
