package org.undercall.adapter.speaker;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.undercall.sound.Pcm;

/** Gives each text a sound of its own and notes what was asked of it. */
final class FakeSynthesiser implements Synthesiser {
  static final int RATE = 16_000;

  final List<String> asked = Collections.synchronizedList(new ArrayList<>());
  Runnable duringSpeak = () -> {};
  private final int millis;

  FakeSynthesiser(int millis) {
    this.millis = millis;
  }

  @Override
  public String voice() {
    return "fake " + millis;
  }

  @Override
  public Pcm speak(String words) {
    asked.add(words);
    duringSpeak.run();
    return sound(words);
  }

  Pcm sound(String words) {
    short[] samples = new short[RATE / 1000 * millis];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) (1000 + (words.hashCode() + i) % 500);
    }
    return Pcm.of(RATE, samples);
  }
}
