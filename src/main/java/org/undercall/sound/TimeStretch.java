package org.undercall.sound;

/**
 * Makes speech faster or slower without changing its pitch: pieces of 30 ms are laid over each
 * other by half, each taken from where it fits best to what went before (waveform similarity
 * overlap-add, Verhelst and Roelands, 1993).
 */
public final class TimeStretch {
  private static final int HALF_MILLIS = 15;
  private static final int SEARCH_MILLIS = 8;

  private final short[] in;
  private final int half;
  private final int search;

  private TimeStretch(Pcm sound) {
    this.in = sound.samples();
    this.half = sound.rate() * HALF_MILLIS / 1000;
    this.search = sound.rate() * SEARCH_MILLIS / 1000;
  }

  /**
   * The same words at another pace.
   *
   * @param pace 1 as it is, 2 twice as fast; 0.5 to 2
   */
  public static Pcm to(Pcm sound, double pace) {
    if (pace < 0.5 || pace > 2) {
      throw new IllegalArgumentException("found a pace of " + pace + ", expected 0.5 to 2");
    }
    return pace == 1 ? sound : Pcm.of(sound.rate(), new TimeStretch(sound).run(pace));
  }

  private short[] run(double pace) {
    double[] out = new double[(int) (in.length / pace) + 2 * half];
    int from = 0;
    for (int at = 0; at + 2 * half <= out.length; at += half) {
      int wanted = (int) (at * pace);
      from = at == 0 ? 0 : best(from + half, wanted);
      add(out, at, from);
    }
    short[] made = new short[(int) (in.length / pace)];
    for (int i = 0; i < made.length; i++) {
      made[i] = Pcm.clipped(out[i]);
    }
    return made;
  }

  /** Where near {@code wanted} the sound is most like the sound at {@code natural}. */
  private int best(int natural, int wanted) {
    int best = wanted;
    double most = Double.NEGATIVE_INFINITY;
    for (int shift = -search; shift <= search; shift += 2) {
      double likeness = likeness(natural, wanted + shift);
      if (likeness > most) {
        most = likeness;
        best = wanted + shift;
      }
    }
    return best;
  }

  private double likeness(int one, int other) {
    double product = 0;
    double power = 1;
    for (int i = 0; i < half; i += 2) {
      double sample = at(other + i);
      product += at(one + i) * sample;
      power += sample * sample;
    }
    return product / Math.sqrt(power);
  }

  private void add(double[] out, int at, int from) {
    for (int i = 0; i < 2 * half; i++) {
      double window = 0.5 - 0.5 * Math.cos(Math.PI * (i + 0.5) / half);
      boolean start = at == 0 && i < half;
      out[at + i] += (start ? 1 : window) * at(from + i);
    }
  }

  private double at(int index) {
    return index < 0 || index >= in.length ? 0 : in[index];
  }
}
