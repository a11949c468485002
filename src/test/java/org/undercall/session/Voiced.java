package org.undercall.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.demo.DemoVoices;
import org.undercall.sound.Pcm;

/** Phrases spoken by an invented speaker, with quiet around them: 16,000 samples a second. */
public final class Voiced {
  /** What is said, in order: all of it may be said at a torque stage. */
  public static final List<String> PHRASES =
      List.of(
          "torque reached six two",
          "what is left",
          "it reads six two newton meters",
          "put this off tool missing");

  private static final int QUIET = 24_000;
  private static final double PEAK = 0.5;

  private Voiced() {}

  /** The phrases with 1.5 s of a quiet room around each; the loudest sample is a half. */
  public static double[] phrases() {
    DoubleStream all = quiet();
    for (String words : PHRASES) {
      all = DoubleStream.concat(all, DoubleStream.concat(DoubleStream.of(said(words)), quiet()));
    }
    Random room = new Random(1);
    return all.map(v -> v + 0.0005 * room.nextGaussian()).toArray();
  }

  /** One phrase, without anything around it. */
  public static double[] said(String words) {
    try (SpokenCache speaker = DemoVoices.speaker("tenor", Path.of("target", "speech-cache"))) {
      Pcm said = speaker.speak(words);
      double scale = PEAK / said.peak();
      return IntStream.range(0, said.length()).mapToDouble(i -> said.at(i) * scale).toArray();
    }
  }

  private static DoubleStream quiet() {
    return DoubleStream.generate(() -> 0).limit(QUIET);
  }
}
