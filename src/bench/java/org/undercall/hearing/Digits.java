package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.undercall.core.intent.SpokenSamples;

/** Real people's digits, each speaker's apart. */
final class Digits {
  private static final int LEAST_CLIPS = 3;

  private final List<Speaker> speakers = new ArrayList<>();
  private int files;

  /** What one person said: clips by digit. */
  private record Speaker(String name, List<Clip> clips) {}

  private record Clip(int digit, Speech speech) {}

  /** A value as one person said it. */
  record Said(String digits, String speaker, Speech speech) {}

  private Digits() {}

  /** The speakers with at least three clips. */
  static Digits of(List<Recordings.Recording> recordings) {
    Map<String, List<Clip>> bySpeaker = new TreeMap<>();
    for (Recordings.Recording recording : recordings) {
      int digit = SpokenSamples.digit(recording.spoken());
      if (digit >= 0) {
        bySpeaker
            .computeIfAbsent(recording.speaker(), s -> new ArrayList<>())
            .add(new Clip(digit, Speech.word(recording.sound())));
      }
    }
    Digits digits = new Digits();
    bySpeaker.forEach(
        (name, clips) -> {
          boolean mayBegin = clips.stream().anyMatch(clip -> clip.digit() > 0);
          if (clips.size() >= LEAST_CLIPS && mayBegin) {
            digits.speakers.add(new Speaker(name, clips));
            digits.files += clips.size();
          }
        });
    return digits;
  }

  boolean isEmpty() {
    return speakers.isEmpty();
  }

  /** How many speakers and files there are, in words. */
  String counted() {
    return speakers.size() + " speakers, " + files + " files";
  }

  /** A value of three digits, the first not zero, different clips of one speaker. */
  Said threeDigits(Random random) {
    return threeDigits(speakers.get(random.nextInt(speakers.size())), random, 0, 0);
  }

  /** The same with a pause before the second digit or the third, counted from 0. */
  Said threeDigits(Random random, int late, int pauseMillis) {
    return threeDigits(speakers.get(random.nextInt(speakers.size())), random, late, pauseMillis);
  }

  /** The same by the speaker of a number from 0. */
  Said threeDigits(Random random, int speaker) {
    return threeDigits(speakers.get(speaker), random, 0, 0);
  }

  /** How many speakers there are. */
  int size() {
    return speakers.size();
  }

  /** One value said so many times by one speaker, with any of his clips of each digit. */
  List<Said> repeated(Random random, int times) {
    Speaker speaker = speakers.get(random.nextInt(speakers.size()));
    String digits = threeDigits(speaker, random, 0, 0).digits();
    List<Said> all = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      List<Speech> words = new ArrayList<>();
      for (int place = 0; place < digits.length(); place++) {
        int digit = digits.charAt(place) - '0';
        List<Clip> clips = speaker.clips().stream().filter(c -> c.digit() == digit).toList();
        words.add(clips.get(random.nextInt(clips.size())).speech());
      }
      all.add(new Said(digits, speaker.name(), Splicing.spoken(words, random)));
    }
    return all;
  }

  private static Said threeDigits(Speaker speaker, Random random, int late, int pauseMillis) {
    List<Clip> left = new ArrayList<>(speaker.clips());
    StringBuilder digits = new StringBuilder();
    List<Speech> words = new ArrayList<>();
    while (words.size() < LEAST_CLIPS) {
      Clip clip = left.get(random.nextInt(left.size()));
      if (!words.isEmpty() || clip.digit() > 0) {
        left.remove(clip);
        digits.append(clip.digit());
        words.add(clip.speech());
      }
    }
    return new Said(
        digits.toString(), speaker.name(), Splicing.spoken(words, random, late, pauseMillis));
  }
}
