package org.undercall.adapter.speaker;

import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;
import org.undercall.sound.SpeakerCode;

/** Tries whether the system's sound device plays. */
public final class SpeakerTrial {
  /** The samples a second of the standard voice. */
  public static final int RATE = 24_000;

  private static final long LIMIT_MILLIS = 2_500;
  private static final int SILENCE_BYTES = RATE / 5 * 2;
  private static final int LEAD_MILLIS = 600;
  private static final int EMPTY_WRITES = 20;

  private SpeakerTrial() {}

  /**
   * Opens the device, plays 0.2 s of silence and closes it. Takes a few seconds at most.
   *
   * @throws UncheckedFault SPK-001 without a device, SPK-002 if it takes no sound
   */
  public static void play() {
    play(new GuardedLine(JavaSoundLine::new, LIMIT_MILLIS));
  }

  /**
   * Plays a sound, after silence that a device just opened may swallow.
   *
   * @throws UncheckedFault as {@link #play()}
   */
  public static void play(Pcm sound) {
    Pcm lead = Pcm.silence(sound.rate(), LEAD_MILLIS);
    play(new GuardedLine(JavaSoundLine::new, LIMIT_MILLIS), sound.rate(), lead.then(sound).bytes());
  }

  static void play(SoundLine line) {
    play(line, RATE, new byte[SILENCE_BYTES]);
  }

  private static void play(SoundLine line, int rate, byte[] bytes) {
    line.open(rate);
    try {
      int empty = 0;
      for (int done = 0; done < bytes.length; ) {
        int taken = line.write(bytes, done, bytes.length - done);
        done += taken;
        empty = taken > 0 ? 0 : empty + 1;
        if (empty == EMPTY_WRITES) {
          throw new UncheckedFault(SpeakerCode.DEVICE_GONE, "the sound device takes no sound");
        }
      }
      line.drain();
    } finally {
      line.close();
    }
  }
}
