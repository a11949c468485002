package org.undercall.adapter.speaker;

import java.util.concurrent.atomic.AtomicLong;
import org.undercall.Voice;
import org.undercall.adapter.speaker.SpeakerException.Fault;

/**
 * Says replies through the sound card, sentence by sentence. One thread says; {@link #stop} may be
 * called from any other.
 *
 * <p>The device is opened at the first words and kept open. Silence goes before the first words,
 * since a device that has just been opened swallows the start.
 */
public final class SpeakerVoice implements Voice {
  private static final int LEAD_MILLIS = 600;
  private static final int CHUNK_MILLIS = 20;
  private static final int EMPTY_WRITES = 20;

  private final Synthesiser synthesiser;
  private final SoundLine line;
  private final AtomicLong stops = new AtomicLong();
  private int openRate;
  private long resumedAfter;

  /** A voice on the default sound device. It closes the synthesiser when it is closed. */
  public SpeakerVoice(Synthesiser synthesiser) {
    this(synthesiser, new JavaSoundLine());
  }

  SpeakerVoice(Synthesiser synthesiser, SoundLine line) {
    this.synthesiser = synthesiser;
    this.line = line;
  }

  /**
   * Says the words and returns when they have sounded or were stopped.
   *
   * @throws SpeakerException SPK-001 without a device, SPK-002 if it is lost; the next call tries
   *     to open it again
   */
  @Override
  public void say(String words) {
    long stopsBefore = stops.get();
    for (String sentence : SpokenText.sentences(words)) {
      if (stops.get() != stopsBefore) {
        return;
      }
      play(synthesiser.speak(sentence), stopsBefore);
    }
    if (openRate != 0 && stops.get() == stopsBefore) {
      line.drain();
    }
  }

  /** Falls silent at once: the rest of what is being said is not said. */
  public void stop() {
    stops.incrementAndGet();
    line.silence();
  }

  @Override
  public void close() {
    stop();
    openRate = 0;
    line.close();
    synthesiser.close();
  }

  private void play(Pcm sound, long stopsBefore) {
    makeReady(sound.rate(), stopsBefore);
    writeAll(sound.bytes(), sound.rate(), stopsBefore);
    if (stops.get() != stopsBefore) {
      line.silence();
    }
  }

  private void makeReady(int rate, long stopsBefore) {
    if (openRate != rate) {
      if (openRate != 0) {
        line.close();
        openRate = 0;
      }
      line.open(rate);
      openRate = rate;
      resumedAfter = stopsBefore;
      writeAll(Pcm.silence(rate, LEAD_MILLIS).bytes(), rate, stopsBefore);
    } else if (resumedAfter != stopsBefore) {
      line.resume();
      resumedAfter = stopsBefore;
    }
  }

  private void writeAll(byte[] bytes, int rate, long stopsBefore) {
    int chunk = rate * CHUNK_MILLIS / 1000 * 2;
    int empty = 0;
    for (int at = 0; at < bytes.length && stops.get() == stopsBefore; ) {
      int taken = line.write(bytes, at, Math.min(chunk, bytes.length - at));
      at += taken;
      empty = taken == 0 ? empty + 1 : 0;
      if (empty == EMPTY_WRITES && stops.get() == stopsBefore) {
        openRate = 0;
        line.close();
        throw new SpeakerException(Fault.DEVICE_GONE, "the sound device takes no more sound");
      }
    }
  }
}
