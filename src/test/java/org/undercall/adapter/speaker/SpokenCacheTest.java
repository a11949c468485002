package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavFile;

class SpokenCacheTest {
  private static final long MUCH = 1L << 30;

  @TempDir private Path folder;
  private final FakeSynthesiser maker = new FakeSynthesiser(100);

  private SpokenCache cache() {
    return new SpokenCache(maker, folder, MUCH);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  @Nested
  class Hits {
    @Test
    void aSecondCallGivesTheSameSamplesWithoutTheSynthesiser() {
      SpokenCache cache = cache();
      Pcm first = cache.speak("ready");
      assertEquals(first, cache.speak("ready"));
      assertEquals(List.of("ready"), maker.asked);
    }

    @Test
    void aLaterRunReadsTheFile() {
      Pcm first = cache().speak("ready");
      assertEquals(first, cache().speak("ready"));
      assertEquals(List.of("ready"), maker.asked);
    }

    @Test
    void anotherVoiceDoesNotGetTheSound() {
      cache().speak("ready");
      FakeSynthesiser other = new FakeSynthesiser(120);
      Pcm sound = new SpokenCache(other, folder, MUCH).speak("ready");
      assertEquals(List.of("ready"), other.asked);
      assertEquals(120, sound.millis());
    }

    @Test
    void warmingMakesEachSentenceOnce() {
      SpokenCache cache = cache();
      assertEquals(2, cache.warm(List.of("Ready. Go on.", "Ready.", " ")));
      assertEquals(0, cache.warm(List.of("Go on.")));
      assertTrue(cache.has("Ready."));
      assertFalse(cache.has("Never."));
    }
  }

  @Nested
  class Damage {
    @Test
    void everyFlippedByteIsNoticedOrHarmless() throws IOException {
      Pcm sound = cache().speak("ready");
      Path file = files().get(0);
      byte[] good = Files.readAllBytes(file);
      for (int i = 0; i < good.length; i += 7) {
        byte[] bad = good.clone();
        bad[i] ^= 0x5a;
        Files.write(file, bad);
        Pcm again = cache().speak("ready");
        assertTrue(again.equals(sound) || i < WavFile.HEADER, "byte " + i);
      }
    }

    @Test
    void aCutFileIsMadeAgain() throws IOException {
      Pcm sound = cache().speak("ready");
      Path file = files().get(0);
      byte[] good = Files.readAllBytes(file);
      for (int length : new int[] {0, 5, 12, 43, 44, 100, good.length - 13, good.length - 1}) {
        Files.write(file, java.util.Arrays.copyOf(good, length));
        maker.asked.clear();
        assertEquals(sound, cache().speak("ready"));
        assertEquals(List.of("ready"), maker.asked, "cut at " + length);
        assertEquals(good.length, Files.size(file));
      }
    }

    @Test
    void aFolderThatCannotBeWrittenDoesNotStopSpeech() throws IOException {
      Path blocked = Files.createFile(folder.resolve("file"));
      SpokenCache cache = new SpokenCache(maker, blocked, MUCH);
      assertEquals(maker.sound("ready"), cache.speak("ready"));
    }
  }

  @Nested
  class Bounds {
    @Test
    void theFolderStaysWithinItsSizeAndKeepsTheNewest() throws IOException {
      long one = WavFile.HEADER + 2L * maker.sound("x").length() + 12;
      SpokenCache cache = new SpokenCache(maker, folder, 3 * one);
      for (int i = 0; i < 20; i++) {
        cache.speak("words " + i);
      }
      assertEquals(3, files().size());
      maker.asked.clear();
      cache().speak("words 0");
      assertEquals(List.of("words 0"), maker.asked);
    }

    @Test
    void noFileIsLeftAside() throws IOException {
      cache().speak("ready");
      assertTrue(files().stream().allMatch(file -> file.toString().endsWith(".wav")));
    }
  }

  @Test
  void manyThreadsGetTheRightSoundAndEachSentenceIsMadeOnce() throws Exception {
    SpokenCache cache = cache();
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Future<Pcm>> sounds = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        String words = "words " + i % 10;
        sounds.add(threads.submit(() -> cache.speak(words)));
      }
      for (int i = 0; i < sounds.size(); i++) {
        assertEquals(maker.sound("words " + i % 10), sounds.get(i).get());
      }
    } finally {
      threads.shutdownNow();
    }
    assertEquals(10, maker.asked.size());
    assertNotEquals(cache.speak("words 1"), cache.speak("words 2"));
  }
}
