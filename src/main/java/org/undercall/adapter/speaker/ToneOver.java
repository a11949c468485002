package org.undercall.adapter.speaker;

import java.util.concurrent.atomic.AtomicReference;
import org.undercall.sound.Pcm;

/** A tone that is to sound in the words that are just said, at once; the last one wanted counts. */
final class ToneOver {
  private final AtomicReference<Pcm> wanted = new AtomicReference<>();

  /** Any thread wants it. */
  void wanted(Pcm tone) {
    wanted.set(tone);
  }

  void forget() {
    wanted.set(null);
  }

  /** What did not sound in the words, to be played after them; null if nothing is left. */
  Pcm late() {
    return wanted.getAndSet(null);
  }

  /** Lays the tone over what is played from a place on, if there is room for the whole of it. */
  void mixInto(byte[] bytes, int from) {
    Pcm tone = wanted.get();
    if (tone == null
        || bytes.length - from < 2 * tone.length()
        || !wanted.compareAndSet(tone, null)) {
      return;
    }
    Pcm rest = Pcm.ofBytes(tone.rate(), bytes, from, 2 * tone.length());
    short[] both = new short[tone.length()];
    for (int i = 0; i < both.length; i++) {
      int sum = rest.at(i) + tone.at(i);
      both[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, sum));
    }
    byte[] mixed = Pcm.of(tone.rate(), both).bytes();
    System.arraycopy(mixed, 0, bytes, from, mixed.length);
  }
}
