package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Signal;
import org.undercall.sound.Pcm;
import org.undercall.sound.TimeStretch;

/** The sound of tones, and of a voice at another loudness, pace and number style. */
class MadeSoundTest {
  private static final int RATE = 16_000;

  /** How many times a second the sound goes up through zero, between two shares of its length. */
  private static double hertz(Pcm sound, double from, double to) {
    int first = (int) (from * sound.length());
    int last = (int) (to * sound.length());
    int crossings = 0;
    for (int i = first + 1; i < last; i++) {
      crossings += sound.at(i - 1) < 0 && sound.at(i) >= 0 ? 1 : 0;
    }
    return crossings * (double) sound.rate() / (last - first);
  }

  private static double rms(Pcm sound) {
    double squares = 0;
    for (short sample : sound.samples()) {
      squares += (double) sample * sample;
    }
    return Math.sqrt(squares / sound.length());
  }

  @Nested
  class ATone {
    @Test
    void hasItsPitchLengthAndLoudness() {
      Pcm tone = Tones.tone(RATE, 880, 70);
      assertEquals(70, tone.millis());
      assertEquals(880, hertz(tone, 0, 1), 15);
      assertEquals(0.25 * Short.MAX_VALUE, tone.peak(), 60);
    }

    @Test
    void swellsAndFadesSoThatItDoesNotClick() {
      Pcm tone = Tones.tone(RATE, 880, 70);
      int steepest = 0;
      for (int i = 1; i < tone.length(); i++) {
        steepest = Math.max(steepest, Math.abs(tone.at(i) - tone.at(i - 1)));
      }
      assertEquals(0, tone.at(0));
      assertEquals(0, tone.at(tone.length() - 1));
      assertTrue(Math.abs(tone.at(1)) < 20, "starts with " + tone.at(1));
      assertTrue(steepest <= 2 * Math.PI * 880 / RATE * 0.26 * Short.MAX_VALUE, "" + steepest);
    }

    @Test
    void forARefusalFalls() {
      Pcm tone = Tones.REFUSED.of(Signal.NOT_ACCEPTED, RATE).orElseThrow();
      assertEquals(290, tone.millis());
      assertEquals(440, hertz(tone, 0, 0.3), 20);
      assertEquals(294, hertz(tone, 0.33, 0.75), 20);
    }

    @Test
    void soundsOnlyWhenWanted() {
      assertTrue(Tones.NONE.of(Signal.NOT_ACCEPTED, RATE).isEmpty());
      assertTrue(Tones.REFUSED.of(Signal.HEARD, RATE).isEmpty());
      assertTrue(Tones.ALL.of(Signal.HEARD, RATE).isPresent());
    }
  }

  @Nested
  class Pace {
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 1.25, 2})
    void changesTheLengthButNeitherPitchNorLoudness(double pace) {
      Pcm plain = Tones.tone(RATE, 300, 1000);
      Pcm made = TimeStretch.to(plain, pace);
      assertEquals(1000 / pace, (double) made.millis(), 2);
      assertEquals(300, hertz(made, 0.1, 0.9), 9);
      assertEquals(1, rms(made) / rms(plain), 0.08);
    }

    @Test
    void ofOneChangesNothing() {
      Pcm plain = Tones.tone(RATE, 300, 100);
      assertEquals(plain, TimeStretch.to(plain, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 2.1, Double.NaN})
    void outsideItsLimitsIsAFault(double pace) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new SpeakerSettings(100, pace, Tones.NONE, NumberStyle.APART));
    }
  }

  @Nested
  class Volume {
    @Test
    void scalesTheSound() {
      Pcm half = Tones.tone(RATE, 300, 100).scaled(0.5);
      assertEquals(0.125 * Short.MAX_VALUE, half.peak(), 60);
      assertEquals(0, half.scaled(0).peak());
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 101})
    void outsideItsLimitsIsAFault(int volume) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new SpeakerSettings(volume, 1, Tones.NONE, NumberStyle.APART));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Torque one one zero.|Torque one, one, zero.|Torque one one zero.|Torque one ten.",
        "I heard seven point five.|I heard seven, point, five.|I heard seven point five.|"
            + "I heard seven point five.",
        "It is one two three four.|It is one, two, three, four.|It is one, two three four.|"
            + "It is one, two three four.",
        "Left, step one of two.|Left, step one of two.|Left, step one of two.|"
            + "Left, step one of two.",
        "One seven five degrees.|One, seven, five degrees.|One seven five degrees.|"
            + "One seventy-five degrees.",
        "One five zero.|One, five, zero.|One five zero.|One five zero.",
        "One one five.|One, one, five.|One one five.|One one five.",
        "Six two.|Six, two.|Six two.|Sixty-two.",
        "Two zero five.|Two, zero, five.|Two zero five.|Two zero five.",
        "Two zero zero.|Two, zero, zero.|Two zero zero.|Two hundred.",
        "Three five point five bar.|Three, five, point, five bar.|Three five point five bar.|"
            + "Thirty-five point five bar.",
        "In the order one, three, five.|In the order one, three, five.|In the order one, three, five.|"
            + "In the order one, three, five."
      })
  void digitsAreReadApartGroupedOrAsPeopleSayThem(
      String text, String apart, String grouped, String natural) {
    assertEquals(apart, NumberStyle.APART.shaped(text));
    assertEquals(grouped, NumberStyle.GROUPED.shaped(text));
    assertEquals(natural, NumberStyle.NATURAL.shaped(text));
  }
}
