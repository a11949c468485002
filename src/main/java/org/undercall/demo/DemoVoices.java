package org.undercall.demo;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.undercall.adapter.speaker.MarySynthesiser;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.adapter.speaker.Synthesiser;
import org.undercall.adapter.speaker.Voices;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Frames;
import org.undercall.sound.SpeakerCode;

/**
 * Invented speakers for a spoken run without people: one voice, changed in pitch, throat and pace.
 * Their sound has the rate that the recogniser wants.
 */
public enum DemoVoices {
  ALTO("F0Scale(f0Scale:0.7)", 1.0),
  TENOR("F0Scale(f0Scale:0.7)", 0.9),
  LOW("TractScaler(amount:0.92)+F0Scale(f0Scale:0.7)", 0.85),
  HIGH("TractScaler(amount:0.92)", 1.0),
  BRISK("F0Scale(f0Scale:0.7)", 1.1),
  LIVELY("F0Scale(f0Scale:1.3)", 0.95);

  /** Samples a second of every demo voice. */
  public static final int RATE = Frames.RATE;

  private final String effects;
  private final double speed;

  DemoVoices(String effects, double speed) {
    this.effects = effects;
    this.speed = speed;
  }

  /** The names, lower case. */
  public static List<String> names() {
    return Arrays.stream(values()).map(voice -> voice.name().toLowerCase(Locale.ROOT)).toList();
  }

  /**
   * The speaker of a name.
   *
   * @throws UncheckedFault SPK-010 if there is none
   */
  public static DemoVoices named(String name) {
    return Arrays.stream(values())
        .filter(voice -> voice.name().equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(
            () ->
                new UncheckedFault(
                    SpeakerCode.UNKNOWN_VOICE,
                    "there is no speaker \"" + name + "\", expected one of " + names()));
  }

  /**
   * The speaker of a script with a cache before it: a demo voice, or the program's own.
   *
   * @throws UncheckedFault SPK-010 if there is neither
   */
  public static SpokenCache speaker(String name, Path cache) {
    return names().contains(name)
        ? Voices.cached(named(name).synthesiser(), cache)
        : Voices.synthesiser(name, cache);
  }

  /** A synthesiser that speaks with this voice. */
  public Synthesiser synthesiser() {
    return MarySynthesiser.withEffects(name().toLowerCase(Locale.ROOT), effects, speed, RATE);
  }
}
