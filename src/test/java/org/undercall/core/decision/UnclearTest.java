package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.SoundLevels;
import org.undercall.core.term.MeasureUnit;

@DisplayName("A value")
class UnclearTest {
  @Nested
  @DisplayName("is not heard")
  class Unclear {
    @Test
    @DisplayName("from half phrases, turned phrases or phrases with a word too many")
    void halfPhrases() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
              .goes(
                  """
            > reached torque seven five
            < Say again.
            > torque reached seven five please
            < Call it digit by digit, with the unit.
            > torque reached seven five the
            < Say again.
            > torque reached seven five okay
            """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("from chatter, which gets no answer")
    void chatter() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
              .goes(
                  """
            > they finished tightening yesterday
            """);
      assertEquals("NOT_UNDERSTOOD", bay.last());
    }

    @Test
    @DisplayName("from words that were hardly understood")
    void lowConfidence() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("75")));
      assertEquals(List.of("Say again."), bay.mumble("torque reached seven five", 0.59));
      assertEquals("", bay.closed());
      bay.mumble("torque reached seven five", 0.6);
      assertEquals("nut", bay.closed());
    }
  }

  @Nested
  @DisplayName("of one word")
  class OneWord {
    @Test
    @DisplayName("is asked for with its unit if it could be the one")
    void couldBe() {
      Bay bay =
          Bay.working(Jobs.nut(Jobs.newtonMetres("15")))
              .goes(
                  """
            > fifty
            < Say it with the unit, or after: it reads.
            > it reads fifty
            < I heard five zero.
            < Spec is one five newton metres.
            > fifteen newton meters
            < I heard one five. Call it digit by digit.
            > one five
            < One five newton metres, matches. Say: torque reached.
            """);
      assertEquals("VALUE_CALLED", bay.last());
    }

    @Test
    @DisplayName("closes nothing after the value was called, and is not passed over")
    void afterTheValue() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("15"))).after("one five");
      assertEquals(List.of("Say it with the unit, or after: it reads."), bay.say("fifty"));
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("is left alone if it could not be the one")
    void couldNotBe() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("175")));
      for (String number : List.of("three", "eighteen", "zero", "forty")) {
        assertEquals(List.of(), bay.say(number), number);
        assertEquals("NOT_UNDERSTOOD", bay.last());
      }
    }

    @Test
    @DisplayName("is left alone where no value is waited for")
    void noValue() {
      Bay bay = Bay.working(Jobs.threeLooks());
      assertEquals(List.of(), bay.say("three"));
    }

    @Test
    @DisplayName("is asked for with its unit where it could be the one measured")
    void measured() {
      Bay bay = Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false));
      bay.goes(
          """
            > forty
            < Say it with the unit, or after: it reads.
            > forty millimeters
            < Four zero millimetres.
            < Say: that is correct.
            > forty
            < Say it with the unit, or after: it reads.
            """);
    }
  }

  @Nested
  @DisplayName("not understood")
  class InARow {
    private final SoundLevels overdriven = new SoundLevels(-6, -50, 0.02);
    private final SoundLevels quiet = new SoundLevels(-55, -60, 0);
    private final SoundLevels noisy = new SoundLevels(-20, -27, 0);
    private final SoundLevels fine = new SoundLevels(-20, -50, 0);

    private List<String> third(Bay bay, SoundLevels levels) {
      bay.unclear(Optional.of(levels));
      bay.unclear(Optional.of(levels));
      return bay.unclear(Optional.of(levels));
    }

    @Test
    @DisplayName("twice in a row is asked for digit by digit, never with the value as example")
    void digitByDigit() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("284")));
      assertEquals(List.of("Say again."), bay.unclear(Optional.empty()));
      assertEquals(
          List.of("Call it digit by digit, with the unit."), bay.unclear(Optional.empty()));
      assertEquals(List.of("Say again."), bay.unclear(Optional.empty()));
    }

    @Test
    @DisplayName("with something understood between is not in a row")
    void between() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("75")));
      bay.unclear(Optional.of(noisy));
      bay.unclear(Optional.of(noisy));
      bay.say("where am i");
      assertEquals(List.of("Say again."), bay.unclear(Optional.of(noisy)));
    }

    @Test
    @DisplayName("with chatter between is in a row")
    void chatterBetween() {
      Bay bay = Bay.working(Jobs.threeLooks());
      bay.unclear(Optional.of(noisy));
      bay.say("did you see the match");
      bay.unclear(Optional.of(noisy));
      bay.say("go");
      assertEquals(List.of("It is too loud here.", "Say again."), bay.unclear(Optional.of(noisy)));
    }

    @Test
    @DisplayName("three times says why, when the levels show it")
    void why() {
      assertEquals(
          List.of("It is too loud here.", "Say again."),
          third(Bay.working(Jobs.threeLooks()), noisy));
      assertEquals(
          List.of("Too quiet. Come closer.", "Say again."),
          third(Bay.working(Jobs.threeLooks()), quiet));
      assertEquals(
          List.of("The microphone is too loud. Move back a little.", "Say again."),
          third(Bay.working(Jobs.threeLooks()), overdriven));
      assertEquals(List.of("Say again."), third(Bay.working(Jobs.threeLooks()), fine));
    }

    @Test
    @DisplayName("does not say why again for five minutes, nor after a restart in that time")
    void noNagging() {
      Bay bay = Bay.working(Jobs.threeLooks());
      third(bay, noisy);
      assertEquals(List.of("Say again."), third(bay.sleep(100), noisy));
      bay.goes(
          """
            * restart
            < Back to work.
            < Step one. one title.
            """);
      assertEquals(List.of("Say again."), third(bay.sleep(199), noisy));
      assertEquals(
          List.of("It is too loud here.", "Say again."), bay.sleep(1).unclear(Optional.of(noisy)));
    }
  }
}
