package org.undercall.adapter.speaker;

import org.undercall.sound.Pcm;
import org.undercall.sound.TimeStretch;

/** A synthesiser at another loudness and pace; what lies behind it may keep the plain sound. */
final class AdjustedSynthesiser implements Synthesiser {
  private final Synthesiser plain;
  private final SpeakerSettings settings;

  AdjustedSynthesiser(Synthesiser plain, SpeakerSettings settings) {
    this.plain = plain;
    this.settings = settings;
  }

  @Override
  public String voice() {
    return plain.voice() + " " + settings.volume() + " " + settings.pace();
  }

  @Override
  public Pcm speak(String words) {
    String said = settings.numbers().shaped(words);
    return TimeStretch.to(plain.speak(said), settings.pace()).scaled(settings.volume() / 100.0);
  }

  @Override
  public void close() {
    plain.close();
  }
}
