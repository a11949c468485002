package org.undercall.adapter.speaker;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.undercall.port.Signal;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;
import org.undercall.sound.Pcm;
import org.undercall.sound.Playback;
import org.undercall.sound.SpeakerCode;

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
  private static final long NEVER = -1;

  private static final long LINE_LIMIT_MILLIS = 2_500;

  private final Synthesiser synthesiser;
  private final SoundLine line;
  private final SpeakerSettings settings;
  private final Playback playback;
  private final AtomicLong stops = new AtomicLong();

  /**
   * A line that is being silenced is not resumed before that is done, else the next words are lost.
   */
  private final Object silencing = new Object();

  private final ToneOver over = new ToneOver();
  private volatile int openRate;
  private volatile boolean saying;
  private volatile boolean held;

  /** It was held since the sentence began: the line is silent, though it may go on again. */
  private volatile boolean cut;

  private long resumedAfter;

  /** A voice on the default sound device. It closes the synthesiser when it is closed. */
  public SpeakerVoice(Synthesiser synthesiser) {
    this(synthesiser, SpeakerSettings.STANDARD);
  }

  /** A voice on the default sound device with these settings. */
  public SpeakerVoice(Synthesiser synthesiser, SpeakerSettings settings) {
    this(synthesiser, settings, Playback.NONE);
  }

  /** A voice that tells what it plays. */
  public SpeakerVoice(Synthesiser synthesiser, SpeakerSettings settings, Playback playback) {
    this(
        new AdjustedSynthesiser(synthesiser, settings),
        new GuardedLine(JavaSoundLine::new, LINE_LIMIT_MILLIS),
        settings,
        playback);
  }

  SpeakerVoice(Synthesiser synthesiser, SoundLine line) {
    this(synthesiser, line, SpeakerSettings.STANDARD);
  }

  SpeakerVoice(Synthesiser synthesiser, SoundLine line, SpeakerSettings settings) {
    this(synthesiser, line, settings, Playback.NONE);
  }

  SpeakerVoice(
      Synthesiser synthesiser, SoundLine line, SpeakerSettings settings, Playback playback) {
    this.synthesiser = synthesiser;
    this.line = line;
    this.settings = settings;
    this.playback = playback;
  }

  /**
   * Says the words and returns when they have sounded or were stopped.
   *
   * @throws UncheckedFault SPK-001 without a device, SPK-002 if it is lost; the next call tries to
   *     open it again
   */
  @Override
  public void say(String words) {
    long stopsBefore = stops.get();
    saying = true;
    try {
      List<String> sentences = SpokenText.sentences(words);
      for (int i = 0; i < sentences.size() && stops.get() == stopsBefore; i++) {
        sentence(sentences.get(i), i == sentences.size() - 1, stopsBefore);
      }
    } catch (UncheckedFault e) {
      giveUp(e);
      throw e;
    } finally {
      saying = false;
      held = false;
      cut = false;
      over.forget();
      playback.ends(stops.get() != stopsBefore);
    }
  }

  /**
   * {@inheritDoc} On a device that is not open yet there is none. Any other than {@link
   * Signal#NOT_HEARD} goes right before words.
   */
  @Override
  public void signal(Signal signal) {
    int rate = openRate;
    Optional<Pcm> tone =
        (rate == 0 ? Optional.<Pcm>empty() : settings.tones().of(signal, rate))
            .map(sound -> sound.scaled(settings.volume() / 100.0));
    if (signal == Signal.NOT_HEARD && saying) {
      tone.ifPresent(over::wanted);
      return;
    }
    try {
      tone.ifPresent(sound -> play(sound, stops.get()));
    } catch (UncheckedFault e) {
      giveUp(e);
    }
  }

  /** Says a sentence, and once more after each time that it was held. */
  private void sentence(String words, boolean last, long stopsBefore) {
    Pcm sound = synthesiser.speak(words);
    do {
      playback.begins(words, sound.length() * 1000 / sound.rate());
      play(sound, stopsBefore);
      Pcm late = last && sounds(stopsBefore) ? over.late() : null;
      if (late != null) {
        play(late, stopsBefore);
      }
      if (last && sounds(stopsBefore)) {
        line.drain();
      }
    } while (again(stopsBefore));
  }

  private boolean sounds(long stopsBefore) {
    return openRate != 0 && !cut && stops.get() == stopsBefore;
  }

  /** Waits as long as the voice is held; whether the sentence is to be said once more. */
  private boolean again(long stopsBefore) {
    synchronized (silencing) {
      if (!cut) {
        return false;
      }
      line.silence();
      resumedAfter = NEVER;
      playback.ends(true);
      try {
        while (held) {
          silencing.wait();
        }
        cut = false;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return false;
      }
      return stops.get() == stopsBefore;
    }
  }

  @Override
  public void hold() {
    synchronized (silencing) {
      held = saying;
      if (held) {
        cut = true;
        line.silence();
      }
    }
  }

  @Override
  public void goOn() {
    synchronized (silencing) {
      held = false;
      silencing.notifyAll();
    }
  }

  private void giveUp(UncheckedFault why) {
    if (why.fault().code() == SpeakerCode.DEVICE_GONE && openRate != 0) {
      openRate = 0;
      line.close();
    }
  }

  @Override
  public void stop() {
    synchronized (silencing) {
      stops.incrementAndGet();
      goOn();
      line.silence();
    }
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
      synchronized (silencing) {
        line.silence();
      }
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
      synchronized (silencing) {
        line.resume();
      }
      resumedAfter = stopsBefore;
    }
  }

  private void writeAll(byte[] bytes, int rate, long stopsBefore) {
    int chunk = rate * CHUNK_MILLIS / 1000 * 2;
    int empty = 0;
    for (int at = 0; at < bytes.length && !cut && stops.get() == stopsBefore; ) {
      over.mixInto(bytes, at);
      int taken = line.write(bytes, at, Math.min(chunk, bytes.length - at));
      playback.plays(bytes, at, taken, rate);
      at += taken;
      empty = taken == 0 ? empty + 1 : 0;
      if (empty == EMPTY_WRITES && !cut && stops.get() == stopsBefore) {
        throw new UncheckedFault(SpeakerCode.DEVICE_GONE, "the sound device takes no more sound");
      }
    }
  }
}
