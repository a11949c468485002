package org.undercall.command.option;

import java.util.function.Consumer;
import org.undercall.adapter.speaker.NumberStyle;
import org.undercall.adapter.speaker.SpeakerNews;
import org.undercall.adapter.speaker.SpeakerSettings;
import org.undercall.adapter.speaker.Tones;
import org.undercall.adapter.speaker.Voices;
import org.undercall.port.Voice;
import org.undercall.sound.Playback;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a command speaks. */
public final class SpeakerOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--voice",
      paramLabel = "NAME",
      defaultValue = "mary",
      description = "mary, system, or none to print only (default: ${DEFAULT-VALUE}).")
  private String voice;

  @Option(
      names = "--volume",
      paramLabel = "PERCENT",
      defaultValue = "100",
      description = "Loudness of the voice, 0 to 100 (default: ${DEFAULT-VALUE}).")
  private int volume;

  @Option(
      names = "--rate",
      paramLabel = "FACTOR",
      defaultValue = "1.0",
      description = "How fast it speaks, 0.5 to 2.0 (default: ${DEFAULT-VALUE}).")
  private double rate;

  @Option(
      names = "--tones",
      paramLabel = "WHICH",
      defaultValue = "refused",
      description =
          "A short tone before a reply: none, refused, or all (default: ${DEFAULT-VALUE}).")
  private Tones tones;

  @Option(
      names = "--digits",
      paramLabel = "HOW",
      defaultValue = "grouped",
      description =
          "Digits of values apart, with a pause after each, grouped, or natural: one seventy-five,"
              + " where it sounds like no other number (default: ${DEFAULT-VALUE}).")
  private NumberStyle digits;

  /** Made by the command line reader. */
  public SpeakerOptions() {}

  /** Finds settings out of their limits before anything is opened. */
  public void check() {
    settings();
  }

  /** The voice; it tells when the speaker fails and when it works again. */
  public Voice open(Consumer<SpeakerNews> news) {
    return open(news, Playback.NONE);
  }

  /** The voice; it also tells what it plays. */
  public Voice open(Consumer<SpeakerNews> news, Playback playback) {
    return Voices.spoken(
        voice, UserFolders.ofMachine().speech().used(), settings(), news, playback);
  }

  /** Whether there is sound at all. */
  public boolean isAudible() {
    return !voice.equalsIgnoreCase("none");
  }

  private SpeakerSettings settings() {
    try {
      return new SpeakerSettings(volume, rate, tones, digits);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }
}
