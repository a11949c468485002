package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.demo.DemoVoices;
import org.undercall.sound.Pcm;

class MarySynthesiserTest {
  private final Synthesiser mary = MarySynthesiser.plain(24_000);

  /**
   * How long the sound is above a hundredth of full scale, from the first such place to the last.
   */
  private static long soundingMillis(Pcm sound) {
    int first = sound.length();
    int last = 0;
    for (int i = 0; i < sound.length(); i++) {
      if (Math.abs((int) sound.at(i)) > 327) {
        first = Math.min(first, i);
        last = i;
      }
    }
    return Math.max(0, last - first) * 1000L / sound.rate();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "point"
      })
  void everyDigitIsHeard(String digit) {
    Pcm sound = mary.speak(digit);
    assertTrue(sound.peak() > 3000, "peak " + sound.peak());
    long millis = soundingMillis(sound);
    assertTrue(millis > 150 && millis < 1200, millis + " ms");
  }

  @Test
  void aSentenceHasAPlausibleLength() {
    long millis = soundingMillis(mary.speak("Tighten to one one zero newton meters."));
    assertTrue(millis > 1500 && millis < 5000, millis + " ms");
  }

  @Test
  void twoSentencesAreBothSaid() {
    long one = soundingMillis(mary.speak("Step completed."));
    long both = soundingMillis(mary.speak("Step completed. Step completed."));
    assertTrue(both > 1.7 * one, both + " ms against " + one);
  }

  @Test
  void wordsWithoutAnEndMarkAreNotSaidSlowly() {
    long ended = soundingMillis(mary.speak("step completed."));
    assertEquals((double) ended, (double) soundingMillis(mary.speak("step completed")), 10.0);
    assertTrue(ended < 1500, ended + " ms");
  }

  @ParameterizedTest
  @EnumSource(DemoVoices.class)
  void everyDemoVoiceIsHeardAndDiffersFromThePlainOne(DemoVoices voice) {
    Pcm sound = voice.synthesiser().speak("step completed");
    assertEquals(DemoVoices.RATE, sound.rate());
    long millis = soundingMillis(sound);
    assertTrue(millis > 500 && millis < 2500, millis + " ms");
    assertNotEquals(MarySynthesiser.plain(DemoVoices.RATE).speak("step completed"), sound);
  }

  @Test
  void voicesUsedAtOnceDoNotMixTheirSettings() throws Exception {
    Synthesiser low = DemoVoices.TENOR.synthesiser();
    Pcm plain = mary.speak("ready");
    Pcm other = low.speak("ready");
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<Pcm>> sounds = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        Synthesiser who = i % 2 == 0 ? mary : low;
        sounds.add(threads.submit(() -> who.speak("ready")));
      }
      for (int i = 0; i < sounds.size(); i++) {
        Pcm expected = i % 2 == 0 ? plain : other;
        assertEquals(expected.length(), sounds.get(i).get().length());
        assertEquals(expected.rate(), sounds.get(i).get().rate());
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
