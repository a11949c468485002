package org.undercall.adapter.speaker;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.undercall.Voice;
import org.undercall.adapter.speaker.SpeakerException.Fault;

/** Makes voices by the names that the option {@code --voice} takes. */
public final class Voices {
  private static final long CACHE_BYTES = 200L << 20;
  private static final int RATE = 24_000;

  private Voices() {}

  /** The names: {@code mary}, {@code system}, {@code none} and the demo speakers. */
  public static List<String> names() {
    return Stream.concat(Stream.of("mary", "system", "none"), DemoVoices.names().stream()).toList();
  }

  /** Where sound is kept for this user: {@code UNDERCALL_SPEECH_CACHE} or a folder at home. */
  public static Path cacheFolder() {
    return Optional.ofNullable(System.getenv("UNDERCALL_SPEECH_CACHE"))
        .map(Path::of)
        .orElseGet(() -> Path.of(System.getProperty("user.home"), ".cache", "undercall", "speech"));
  }

  /**
   * A synthesiser with a cache before it.
   *
   * @throws SpeakerException SPK-010 if there is no such voice, or it has no sound
   */
  public static SpokenCache synthesiser(String name, Path cache) {
    return new SpokenCache(uncached(name), cache, CACHE_BYTES);
  }

  /**
   * A voice for the loudspeaker; when that fails, the words are printed. With {@code none} they are
   * only printed.
   *
   * @throws SpeakerException SPK-010 if there is no such voice
   */
  public static Voice aloud(String name, Path cache, Consumer<String> text) {
    PrintVoice print = new PrintVoice(text);
    if (name.equalsIgnoreCase("none")) {
      return print;
    }
    return new SteadyVoice(new SpeakerVoice(synthesiser(name, cache)), print, text);
  }

  /**
   * A voice for the loudspeaker, for replies that are printed anyway; {@code none} stays silent.
   *
   * @param trouble gets one line when the loudspeaker starts to fail, and one when it works again
   * @throws SpeakerException SPK-010 if there is no such voice
   */
  public static Voice spoken(
      String name, Path cache, SpeakerSettings settings, Consumer<String> trouble) {
    PrintVoice silent = new PrintVoice(words -> {});
    return name.equalsIgnoreCase("none")
        ? silent
        : new SteadyVoice(new SpeakerVoice(synthesiser(name, cache), settings), silent, trouble);
  }

  private static Synthesiser uncached(String name) {
    if (DemoVoices.names().contains(name.toLowerCase(Locale.ROOT))) {
      return DemoVoices.named(name).synthesiser();
    }
    if (name.equalsIgnoreCase("mary")) {
      return MarySynthesiser.plain(RATE);
    }
    if (name.equalsIgnoreCase("system")) {
      return SystemSynthesiser.here();
    }
    throw new SpeakerException(
        Fault.UNKNOWN_VOICE,
        "there is no voice with sound named \"" + name + "\", expected one of " + names());
  }
}
