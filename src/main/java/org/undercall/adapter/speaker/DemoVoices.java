package org.undercall.adapter.speaker;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.undercall.adapter.speaker.SpeakerException.Fault;

/**
 * Invented speakers for a spoken run without people: one voice, changed in pitch, throat and pace.
 * Their sound has 16,000 samples a second, as the recogniser wants it.
 */
public enum DemoVoices {
  ALTO(""),
  TENOR("TractScaler(amount:1.1)+F0Add(f0Add:-60.0)"),
  LOW("TractScaler(amount:1.15)+F0Add(f0Add:-80.0)+Rate(durScale:1.1)"),
  HIGH("TractScaler(amount:0.93)+F0Add(f0Add:40.0)"),
  SLOW("F0Add(f0Add:-20.0)+Rate(durScale:1.25)"),
  BRISK("F0Add(f0Add:15.0)+Rate(durScale:0.88)");

  /** Samples a second of every demo voice. */
  public static final int RATE = 16_000;

  private final String effects;

  DemoVoices(String effects) {
    this.effects = effects;
  }

  /** The names, lower case. */
  public static List<String> names() {
    return Arrays.stream(values()).map(voice -> voice.name().toLowerCase(Locale.ROOT)).toList();
  }

  /**
   * The speaker of a name.
   *
   * @throws SpeakerException SPK-010 if there is none
   */
  public static DemoVoices named(String name) {
    return Arrays.stream(values())
        .filter(voice -> voice.name().equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(
            () ->
                new SpeakerException(
                    Fault.UNKNOWN_VOICE,
                    "there is no speaker \"" + name + "\", expected one of " + names()));
  }

  /** A synthesiser that speaks with this voice. */
  public Synthesiser synthesiser() {
    return MarySynthesiser.withEffects(name().toLowerCase(Locale.ROOT), effects, RATE);
  }
}
