package org.undercall.adapter.speaker;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;
import org.undercall.sound.Playback;
import org.undercall.sound.SpeakerCode;

/** Makes voices by the names that the option {@code --voice} takes. */
public final class Voices {
  private static final long CACHE_BYTES = 200L << 20;

  private Voices() {}

  /** The names. */
  public static List<String> names() {
    return List.of("mary", "system", "none");
  }

  /**
   * A synthesiser with a cache before it.
   *
   * @throws UncheckedFault SPK-010 if there is no such voice, or it has no sound
   */
  public static SpokenCache synthesiser(String name, Path cache) {
    return cached(uncached(name), cache);
  }

  /** A synthesiser with a cache before it, of the same size for every voice. */
  public static SpokenCache cached(Synthesiser synthesiser, Path cache) {
    return new SpokenCache(synthesiser, cache, CACHE_BYTES);
  }

  /**
   * A voice for the loudspeaker; when that fails, the words are printed. With {@code none} they are
   * only printed.
   *
   * @throws UncheckedFault SPK-010 if there is no such voice
   */
  public static Voice aloud(String name, Path cache, Consumer<String> text) {
    PrintVoice print = new PrintVoice(text);
    if (name.equalsIgnoreCase("none")) {
      return print;
    }
    return new SteadyVoice(
        new SpeakerVoice(synthesiser(name, cache)), print, news -> text.accept(news.line()));
  }

  /**
   * A voice for the loudspeaker, for replies that are printed anyway; {@code none} stays silent.
   *
   * @param news is told when the loudspeaker starts to fail, and when it works again
   * @param playback is told what the loudspeaker plays
   * @throws UncheckedFault SPK-010 if there is no such voice
   */
  public static Voice spoken(
      String name,
      Path cache,
      SpeakerSettings settings,
      Consumer<SpeakerNews> news,
      Playback playback) {
    PrintVoice silent = new PrintVoice(words -> {});
    return name.equalsIgnoreCase("none")
        ? silent
        : new SteadyVoice(
            new SpeakerVoice(synthesiser(name, cache), settings, playback), silent, news);
  }

  private static Synthesiser uncached(String name) {
    if (name.equalsIgnoreCase("mary")) {
      return MarySynthesiser.plain(SpeakerTrial.RATE);
    }
    if (name.equalsIgnoreCase("system")) {
      return SystemSynthesiser.here();
    }
    throw new UncheckedFault(
        SpeakerCode.UNKNOWN_VOICE,
        "there is no voice with sound named \"" + name + "\", expected one of " + names());
  }
}
