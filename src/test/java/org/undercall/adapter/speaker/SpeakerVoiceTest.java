package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.port.Signal;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.SpeakerCode;

class SpeakerVoiceTest {
  private static final int MILLI = FakeSynthesiser.RATE / 1000 * 2;

  private final FakeLine line = new FakeLine();
  private final FakeSynthesiser maker = new FakeSynthesiser(1000);
  private final SpeakerVoice voice = new SpeakerVoice(maker, line);

  @Test
  void silenceGoesBeforeTheFirstWordsOnly() {
    voice.say("one");
    assertEquals(1600 * MILLI, line.written);
    voice.say("two");
    assertEquals(2600 * MILLI, line.written);
    assertEquals(List.of("open 16000", "drain", "drain"), line.calls);
  }

  @Test
  void blankWordsDoNotOpenTheDevice() {
    voice.say("  ");
    assertEquals(List.of(), line.calls);
  }

  @Nested
  class Stop {
    @Test
    void theRestOfTheSentenceAndTheNextOnesAreNotSaid() {
      line.duringWrite = () -> stopAfter(800);
      voice.say("One. Two. Three.");
      assertTrue(line.written <= 820L * MILLI, "written " + line.written);
      assertEquals(List.of("One."), maker.asked);
      assertTrue(line.calls.contains("silence"));
      assertTrue(!line.calls.contains("drain"));
    }

    @Test
    void theNextWordsAreSaid() {
      line.duringWrite = () -> stopAfter(800);
      voice.say("one");
      long before = line.written;
      line.duringWrite = () -> {};
      voice.say("two");
      assertEquals(1000 * MILLI, line.written - before);
    }

    @Test
    void stoppingASilentVoiceDoesNotStopTheNextWords() {
      voice.say("one");
      voice.stop();
      voice.say("two");
      assertEquals(2600 * MILLI, line.written);
    }

    private void stopAfter(int millis) {
      if (line.written == (long) millis * MILLI) {
        voice.stop();
      }
    }
  }

  @Nested
  class Held {
    @Test
    void theSentenceIsSaidOnceMoreFromItsBeginning() throws InterruptedException {
      line.duringWrite = () -> holdAfter(800);
      Thread goesOn = new Thread(this::goOnSoon);
      goesOn.start();
      voice.say("One. Two.");
      goesOn.join();
      assertEquals(List.of("One.", "Two."), maker.asked);
      assertTrue(line.written >= 2800 * MILLI, "written " + line.written);
      assertTrue(line.calls.contains("silence"));
      assertTrue(line.calls.contains("resume"));
    }

    @Test
    void itIsSaidThoughItWasLetGoBeforeTheNextWrite() {
      line.duringWrite =
          () -> {
            holdAfter(800);
            voice.goOn();
          };
      voice.say("One. Two.");
      assertTrue(line.written >= 2800 * MILLI, "written " + line.written);
      assertEquals("drain", line.calls.get(line.calls.size() - 1));
    }

    @Test
    void itIsSaidThoughItWasHeldAndLetGoWhileItWasMade() {
      voice.say("One.");
      long first = line.written;
      maker.duringSpeak =
          () -> {
            voice.hold();
            voice.goOn();
          };
      voice.say("Two.");
      assertEquals(first + 1000 * MILLI, line.written);
      assertEquals("drain", line.calls.get(line.calls.size() - 1));
    }

    @Test
    void aStopEndsIt() throws InterruptedException {
      line.duringWrite = () -> holdAfter(800);
      Thread stops = new Thread(this::stopSoon);
      stops.start();
      voice.say("One. Two.");
      stops.join();
      assertEquals(List.of("One."), maker.asked);
      assertTrue(line.written <= 820L * MILLI, "written " + line.written);
    }

    @Test
    void aSilentVoiceIsNotHeld() {
      voice.hold();
      voice.say("one");
      assertEquals(1600 * MILLI, line.written);
    }

    private void holdAfter(int millis) {
      if (line.written == (long) millis * MILLI && line.silenced.get() == 0) {
        voice.hold();
      }
    }

    private void goOnSoon() {
      awaitSilence();
      voice.goOn();
    }

    private void stopSoon() {
      awaitSilence();
      voice.stop();
    }

    /** The line is silenced twice: by the hold, and when nothing is written any more. */
    private void awaitSilence() {
      for (int i = 0; i < 500 && line.silenced.get() < 2; i++) {
        try {
          Thread.sleep(10);
        } catch (InterruptedException e) {
          return;
        }
      }
    }
  }

  @Nested
  class Tone {
    @Test
    void aRefusalIsHeardBeforeTheWords() {
      voice.say("one");
      long before = line.written;
      voice.signal(Signal.NOT_ACCEPTED);
      assertEquals(290 * MILLI, line.written - before);
      voice.signal(Signal.HEARD);
      assertEquals(290 * MILLI, line.written - before);
    }

    @Test
    void aLostDeviceIsNoFaultForATone() {
      voice.say("one");
      line.lost = true;
      voice.signal(Signal.NOT_ACCEPTED);
      line.lost = false;
      voice.say("two");
      assertEquals(3200 * MILLI, line.written);
    }
  }

  @Nested
  class Retry {
    private final List<String> printed = new ArrayList<>();
    private long now;
    private final SteadyVoice steady =
        new SteadyVoice(voice, new PrintVoice(w -> {}), n -> printed.add(n.line()), () -> now);

    @Test
    void whatWasMissedLastIsSaidWhenTheDeviceIsBackAndASecondHasPassed() {
      line.absent = true;
      steady.say("one");
      steady.say("two");
      line.absent = false;
      now = 999;
      assertFalse(steady.retry());
      now = 1000;
      assertTrue(steady.retry());
      assertEquals("two", maker.asked.get(maker.asked.size() - 1));
      assertFalse(steady.retry());
      assertEquals(List.of("SPK-001 no sound device", "The speaker is back."), printed);
    }

    @Test
    void aTryThatHangsIsNotRepeatedSoon() {
      line.lost = true;
      line.duringWrite = () -> now += 100;
      steady.say("one");
      long failed = now;
      now = failed + 10 * failed - 1;
      assertFalse(steady.retry());
      assertEquals(1, line.calls.stream().filter("open 16000"::equals).count());
      now++;
      assertFalse(steady.retry());
      assertEquals(2, line.calls.stream().filter("open 16000"::equals).count());
    }
  }

  @Nested
  class Trouble {
    @Test
    void noDeviceIsACodedError() {
      line.absent = true;
      UncheckedFault e = assertThrows(UncheckedFault.class, () -> voice.say("one"));
      assertEquals(SpeakerCode.NO_DEVICE, e.fault().code());
    }

    @Test
    void aLostDeviceIsACodedErrorAndIsOpenedAgain() {
      voice.say("one");
      line.lost = true;
      UncheckedFault e = assertThrows(UncheckedFault.class, () -> voice.say("two"));
      assertEquals(SpeakerCode.DEVICE_GONE, e.fault().code());
      line.lost = false;
      long before = line.written;
      voice.say("three");
      assertEquals(1600 * MILLI, line.written - before);
    }

    @Test
    void theSecondVoiceSaysWhatTheFirstCannot() {
      List<String> printed = new ArrayList<>();
      SteadyVoice steady =
          new SteadyVoice(voice, new PrintVoice(printed::add), n -> printed.add(n.line()));
      line.absent = true;
      steady.say("one");
      steady.say("two");
      line.absent = false;
      steady.say("three");
      assertEquals(
          List.of("SPK-001 no sound device", "one", "two", "The speaker is back."), printed);
      assertEquals(1600 * MILLI, line.written);
    }
  }
}
