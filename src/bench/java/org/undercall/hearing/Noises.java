package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.undercall.sound.Frames;

/** Noise by kind. */
final class Noises {
  /** How much noise the recordings hold together, beside this: the part of a file's name. */
  private static final Map<String, String> KINDS =
      Map.of(
          "power tools", "powered-tools",
          "chainsaw", "esc10-008",
          "helicopter", "esc10-007",
          "rain", "esc10-002",
          "clatter", "dishes");

  private static final int VOICES = 4;
  private static final int BABBLE_SECONDS = 60;
  private static final int WHITE_SECONDS = 30;
  private static final double WHITE_RMS = 3_000;

  private final Map<String, List<Sound>> byKind = new TreeMap<>();

  /**
   * Sorts the recordings, makes white noise, and makes babble of four voices from the chatter.
   *
   * <p>Recordings named after a number word are speech, not noise, and are left out.
   */
  static Noises of(Recordings recordings) {
    Noises noises = new Noises();
    for (Recordings.Recording recording : recordings.of("noise")) {
      KINDS.forEach(
          (kind, part) -> {
            if (recording.name().contains(part)) {
              noises.byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(recording.sound());
            }
          });
    }
    noises.byKind.put("white", List.of(white()));
    List<Recordings.Recording> chatter =
        recordings.of("chatter").stream().filter(r -> !r.name().startsWith("gsc")).toList();
    if (chatter.size() >= VOICES) {
      noises.byKind.put("babble", List.of(babble(chatter)));
    }
    return noises;
  }

  private Noises() {}

  /** Whether a recording is noise: the number words among them, by a person, are not. */
  static boolean isNoise(Recordings.Recording recording) {
    return !recording.name().startsWith("allison");
  }

  List<String> kinds() {
    return List.copyOf(byKind.keySet());
  }

  Sound any(String kind, Random random) {
    List<Sound> sounds = byKind.get(kind);
    return sounds.get(random.nextInt(sounds.size()));
  }

  /** How many files of each kind there are, in words. */
  String counted() {
    List<String> counts = new ArrayList<>();
    byKind.forEach((kind, sounds) -> counts.add(kind + " " + sounds.size()));
    return String.join(", ", counts) + " (white and babble are made)";
  }

  private static Sound white() {
    Random random = new Random(7);
    short[] samples = new short[WHITE_SECONDS * Frames.RATE];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) (WHITE_RMS * random.nextGaussian());
    }
    return new Sound(samples);
  }

  private static Sound babble(List<Recordings.Recording> chatter) {
    Random random = new Random(8);
    double[] sum = new double[BABBLE_SECONDS * Frames.RATE];
    for (int voice = 0; voice < VOICES; voice++) {
      int at = 0;
      while (at < sum.length) {
        Speech speech = Speech.in(chatter.get(random.nextInt(chatter.size())).sound());
        double gain = WHITE_RMS / Math.max(1, speech.activeRms()) / Math.sqrt(VOICES);
        for (int i = 0; i < speech.sound().length() && at < sum.length; i++, at++) {
          sum[at] += gain * speech.sound().samples()[i];
        }
      }
    }
    short[] samples = new short[sum.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, sum[i]));
    }
    return new Sound(samples);
  }
}
