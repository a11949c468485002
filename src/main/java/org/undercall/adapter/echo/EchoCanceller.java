package org.undercall.adapter.echo;

import dev.onvoid.webrtc.media.audio.AudioProcessing;
import dev.onvoid.webrtc.media.audio.AudioProcessingConfig;
import dev.onvoid.webrtc.media.audio.AudioProcessingStreamConfig;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;

/**
 * Takes the program's own voice out with the third echo canceller of WebRTC (AEC3). It finds the
 * delay between loudspeaker and microphone itself, up to about half a second.
 *
 * <p>While nothing was played for half a second, frames stay as they are: its filters cost a little
 * of what is heard.
 */
public final class EchoCanceller implements OwnVoice {
  /** WebRTC takes 10 ms at a time and does not look at the length. */
  private static final int PIECE_BYTES = 2 * Frames.RATE / 100;

  /** How long after the last sound an echo of it may still be heard. */
  private static final int ECHO_SAMPLES = Frames.RATE / 2;

  private static final AudioProcessingStreamConfig FORMAT =
      new AudioProcessingStreamConfig(Frames.RATE, 1);

  private final PlayedSound played;
  private final AudioProcessing processing;
  private int quietSamples = ECHO_SAMPLES;
  private boolean closed;

  private EchoCanceller(AudioProcessing processing, LongSupplier nanos) {
    this.played = new PlayedSound(nanos);
    this.processing = processing;
    AudioProcessingConfig config = new AudioProcessingConfig();
    config.echoCanceller.enabled = true;
    processing.applyConfig(config);
  }

  /** A new one; empty where the native library is missing or does not load. */
  public static Optional<OwnVoice> load() {
    return load(System::nanoTime);
  }

  /** The same by another clock, in nanoseconds, for sound that is faster than life. */
  public static Optional<OwnVoice> load(LongSupplier nanos) {
    try {
      return Optional.of(new EchoCanceller(new AudioProcessing(), nanos));
    } catch (LinkageError | RuntimeException e) {
      return Optional.empty(); // The ear is closed while the voice speaks, as without it.
    }
  }

  @Override
  public void begins(String sentence, int millis) {}

  @Override
  public void plays(byte[] samples, int offset, int length, int rate) {
    played.add(samples, offset, length, rate);
  }

  @Override
  public void ends(boolean cutShort) {
    if (cutShort) {
      played.clear();
    }
  }

  @Override
  public synchronized Frame without(Frame heard) {
    byte[] sound = heard.sound();
    if (closed || sound.length != Frames.FRAME_BYTES) {
      return heard;
    }
    played.comes(heard.samples());
    for (int at = 0; at < sound.length; at += PIECE_BYTES) {
      byte[] far = new byte[PIECE_BYTES];
      byte[] near = Arrays.copyOfRange(sound, at, at + PIECE_BYTES);
      quietSamples = played.take(far) ? 0 : Math.min(ECHO_SAMPLES, quietSamples + far.length / 2);
      processing.processReverseStream(far, FORMAT, FORMAT, far);
      processing.processStream(near, FORMAT, FORMAT, near);
      System.arraycopy(near, 0, sound, at, PIECE_BYTES);
    }
    return quietSamples < ECHO_SAMPLES ? new Frame(heard.firstSample(), sound) : heard;
  }

  @Override
  public synchronized void close() {
    if (!closed) {
      closed = true;
      processing.dispose();
    }
  }
}
