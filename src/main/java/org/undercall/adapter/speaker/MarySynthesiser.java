package org.undercall.adapter.speaker;

import org.undercall.sound.Pcm;
import org.undercall.sound.Resampler;

/**
 * A voice in pure Java, made by MaryTTS; it works on every machine without a download.
 *
 * <p>The engine starts at the first use, on a thread of its own, and is shared by all voices.
 * Starting takes one to three seconds and needs about 60 MB of heap, so a program whose sentences
 * are all in a {@link SpokenCache} never starts it.
 */
public final class MarySynthesiser implements Synthesiser {
  private final String name;
  private final String effects;
  private final double speed;
  private final int rate;

  private MarySynthesiser(String name, String effects, double speed, int rate) {
    this.name = name;
    this.effects = effects;
    this.speed = speed;
    this.rate = rate;
  }

  /**
   * The voice as it is.
   *
   * @param rate samples a second of the sound it makes
   */
  public static MarySynthesiser plain(int rate) {
    return new MarySynthesiser("mary", "", 1, rate);
  }

  /**
   * The voice with audio effects, for another speaker.
   *
   * @param name the speaker's name
   * @param effects MaryTTS audio effects, for example {@code F0Add(f0Add:-40.0)}; the effect Rate
   *     does nothing to this voice
   * @param speed 1 as it is; above 1 faster, higher and with a shorter throat
   * @param rate samples a second of the sound it makes
   */
  public static MarySynthesiser withEffects(String name, String effects, double speed, int rate) {
    return new MarySynthesiser(name, effects, speed, rate);
  }

  @Override
  public String voice() {
    return name + " " + MaryEngine.VOICE + " " + effects + " " + speed + " " + rate;
  }

  @Override
  public Pcm speak(String words) {
    return Resampler.to(MaryEngine.started().speak(words, effects).sped(speed), rate);
  }
}
