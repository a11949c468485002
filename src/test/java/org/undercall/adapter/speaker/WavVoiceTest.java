package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;
import org.undercall.sound.SpeakerCode;
import org.undercall.sound.WavFile;
import org.undercall.sound.WavTimeline;

class WavVoiceTest {
  private static final int RATE = FakeSynthesiser.RATE;

  @TempDir private Path folder;
  private final AtomicLong now = new AtomicLong();
  private final FakeSynthesiser maker = new FakeSynthesiser(250);
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("run.wav");
  }

  private WavVoice voice(WavTimeline timeline) {
    return new WavVoice(maker, timeline, now::get);
  }

  private static boolean silent(Pcm sound, long fromMillis, long toMillis) {
    for (long i = fromMillis * RATE / 1000; i < toMillis * RATE / 1000; i++) {
      if (sound.at((int) i) != 0) {
        return false;
      }
    }
    return true;
  }

  @Test
  void speechStandsAtTheTimeOfTheClock() throws IOException {
    try (WavTimeline timeline = new WavTimeline(file, RATE);
        WavVoice voice = voice(timeline)) {
      now.set(500);
      voice.say("one");
      now.set(2000);
      voice.say("two");
      assertEquals(2250, voice.endMillis());
    }
    Pcm heard = WavFile.read(file);
    assertEquals(2250, heard.millis());
    assertTrue(silent(heard, 0, 500));
    assertTrue(silent(heard, 750, 2000));
    for (int i = 0; i < 250 * RATE / 1000; i++) {
      assertEquals(maker.sound("one").at(i), heard.at(i + RATE / 2));
      assertEquals(maker.sound("two").at(i), heard.at(i + 2 * RATE));
    }
  }

  @Test
  void speechThatWouldOverlapWaitsForItsTurn() {
    try (WavTimeline timeline = new WavTimeline(file, RATE);
        WavVoice voice = voice(timeline)) {
      voice.say("One. Two.");
      voice.say("three");
      assertEquals(750, voice.endMillis());
      assertEquals(750, timeline.millis());
    }
  }

  @Test
  void blankWordsAddNothing() {
    try (WavTimeline timeline = new WavTimeline(file, RATE);
        WavVoice voice = voice(timeline)) {
      voice.say(" ... ");
      assertEquals(0, timeline.millis());
    }
  }

  @Test
  void soundsAtTheSameTimeAreMixedAndClipped() throws IOException {
    try (WavTimeline timeline = new WavTimeline(file, RATE)) {
      timeline.add(0, Pcm.of(RATE, new short[] {100, 30_000, -30_000}));
      timeline.add(0, Pcm.of(RATE, new short[] {20, 10_000, -10_000}));
    }
    assertEquals(Pcm.of(RATE, new short[] {120, 32_767, -32_768}), WavFile.read(file));
  }

  @Test
  void anotherRateIsChangedToTheRateOfTheFile() {
    try (WavTimeline timeline = new WavTimeline(file, RATE)) {
      assertEquals(1000, timeline.add(0, Pcm.of(48_000, new short[48_000])));
    }
  }

  @Test
  void aFileThatCannotBeWrittenIsACodedError() {
    Path nowhere = folder.resolve("no").resolve("run.wav");
    UncheckedFault e = assertThrows(UncheckedFault.class, () -> new WavTimeline(nowhere, RATE));
    assertEquals(SpeakerCode.CANNOT_WRITE, e.fault().code());
    assertTrue(e.getMessage().startsWith("SPK-009 " + nowhere));
  }
}
