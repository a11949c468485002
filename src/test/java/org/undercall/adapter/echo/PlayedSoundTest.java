package org.undercall.adapter.echo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.sound.Frames;

@DisplayName("What was played, beside what is heard")
class PlayedSoundTest {
  private static final int FRAME = Frames.FRAME_SAMPLES;
  private static final int FRAME_MILLIS = 30;

  private final AtomicLong millis = new AtomicLong(5_000);
  private final PlayedSound played = new PlayedSound(() -> millis.get() * 1_000_000);
  private long heard;

  /** Loud sound of so many milliseconds is given to the loudspeaker. */
  private void play(int length) {
    byte[] loud = new byte[2 * Frames.RATE * length / 1000];
    Arrays.fill(loud, (byte) 20);
    played.add(loud, 0, loud.length, Frames.RATE);
  }

  /** A frame is heard, late by so much; gives its first sample with sound beside it, or -1. */
  private long hear(int late) {
    millis.addAndGet(FRAME_MILLIS + late);
    played.comes(FRAME);
    byte[] beside = new byte[2 * FRAME];
    played.take(beside);
    millis.addAndGet(-late);
    heard += FRAME;
    for (int i = 0; i < FRAME; i++) {
      if (beside[2 * i + 1] != 0) {
        return heard - FRAME + i;
      }
    }
    return -1;
  }

  private long firstSound(int frames) {
    long first = -1;
    for (int i = 0; i < frames && first < 0; i++) {
      first = hear(0);
    }
    return first;
  }

  private void silence(int frames) {
    for (int i = 0; i < frames; i++) {
      hear(0);
    }
  }

  @Test
  @DisplayName("sound lies where the microphone was when it was given, wherever in a frame")
  void place() {
    silence(3);
    for (int later = 0; later < FRAME_MILLIS; later += 7) {
      millis.addAndGet(later);
      long there = heard + later * Frames.RATE / 1000;
      play(60);
      millis.addAndGet(-later);
      assertEquals(
          (double) there, (double) firstSound(4), 20, "given " + later + " ms after a frame");
      silence(20);
    }
  }

  @Test
  @DisplayName("frames that come late do not move it")
  void late() {
    silence(3);
    hear(25);
    hear(18);
    play(60);
    assertEquals((double) heard, (double) firstSound(4), 40);
  }

  @Test
  @DisplayName("what follows without a gap follows without one, however much waits")
  void follows() {
    silence(3);
    play(200);
    play(100);
    assertEquals((double) heard, (double) firstSound(2), 20);
    for (int i = 1; i < 10; i++) {
      assertTrue(hear(0) >= 0, "frame " + i);
    }
    assertEquals(-1, hear(0));
  }

  @Test
  @DisplayName("a loudspeaker that ran empty begins anew")
  void ranEmpty() {
    silence(3);
    play(60);
    silence(10);
    play(60);
    assertEquals((double) heard, (double) firstSound(2), 20);
  }

  @Test
  @DisplayName("what had not sounded when it was cut short never does")
  void cut() {
    silence(3);
    play(600);
    silence(2);
    played.clear();
    assertEquals(-1, hear(0));
    assertEquals(-1, hear(0));
  }

  @Test
  @DisplayName("after a microphone that was away it lies beside the new sound")
  void away() {
    silence(3);
    millis.addAndGet(4_000);
    silence(3);
    play(60);
    assertEquals((double) heard, (double) firstSound(2), 20);
  }

  @Test
  @DisplayName("before the microphone gave anything it lies at the beginning, and never too much")
  void before() {
    play(3_000);
    byte[] all = new byte[2 * 2 * Frames.RATE];
    assertTrue(played.take(all));
    assertFalse(played.take(all));
  }
}
