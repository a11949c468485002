package org.undercall.adapter.speaker;

import java.util.Optional;
import org.undercall.port.Signal;
import org.undercall.sound.Pcm;

/** Which short tones sound before a reply. They are made by the program, of sines. */
public enum Tones {
  /** None. */
  NONE,
  /** Only when something is not accepted, or not heard. */
  REFUSED,
  /** Also when a phrase was understood. */
  ALL;

  private static final double LOUDNESS = 0.25;
  private static final int EDGE_MILLIS = 8;

  /** The tone for a signal; empty if none is wanted: a high one, two falling ones, or a low one. */
  Optional<Pcm> of(Signal signal, int rate) {
    if (signal == Signal.NOT_HEARD && this != NONE) {
      return Optional.of(tone(rate, 220, 180).then(Pcm.silence(rate, 40)));
    }
    if (signal == Signal.NOT_ACCEPTED && this != NONE) {
      return Optional.of(
          tone(rate, 440, 90).then(tone(rate, 294, 140)).then(Pcm.silence(rate, 60)));
    }
    return signal == Signal.HEARD && this == ALL
        ? Optional.of(tone(rate, 880, 70).then(Pcm.silence(rate, 40)))
        : Optional.empty();
  }

  /** A sine that swells and fades in 8 ms, so that it does not click. */
  static Pcm tone(int rate, double hertz, int millis) {
    short[] samples = new short[rate * millis / 1000];
    double edge = rate * EDGE_MILLIS / 1000.0;
    for (int i = 0; i < samples.length; i++) {
      double near = Math.min(1, Math.min(i, samples.length - 1 - i) / edge);
      double envelope = 0.5 - 0.5 * Math.cos(Math.PI * near);
      double sine = Math.sin(2 * Math.PI * hertz * i / rate);
      samples[i] = (short) Math.round(LOUDNESS * Short.MAX_VALUE * envelope * sine);
    }
    return Pcm.of(rate, samples);
  }
}
