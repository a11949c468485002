package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.speaker.SpeakerNews;
import org.undercall.core.board.DeviceNews;
import org.undercall.core.intent.IntentKind;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Voice;

class NoticingEarTest {
  private final List<String> log = new ArrayList<>();
  private final List<DeviceNews> shown = new ArrayList<>();
  private final DeviceNotices notices =
      new DeviceNotices(line -> log.add("print " + line), shown::add);
  private Runnable whileListening = () -> {};
  private int slices;
  private boolean missed;

  /** Hears a phrase in its fifth second. */
  private final class FakeEar implements Ear {
    private long millis;

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
      slices++;
      millis += patienceMillis;
      whileListening.run();
      return millis > 4_000 ? Optional.of(Heard.typed("say again")) : Optional.empty();
    }

    @Override
    public void forget() {
      log.add("forget");
    }

    @Override
    public void close() {
      log.add("close");
    }
  }

  private final class FakeVoice implements Voice {
    @Override
    public void say(String words) {
      log.add("say " + words);
    }

    @Override
    public boolean retry() {
      boolean said = missed;
      missed = false;
      return said;
    }

    @Override
    public void close() {}
  }

  private final NoticingEar ear = new NoticingEar(new FakeEar(), notices, new FakeVoice());

  private Optional<Heard> heard(long patience) throws Ear.EndOfInput {
    return ear.next(Set.of(), patience);
  }

  @Test
  void aPhraseComesThrough() throws Ear.EndOfInput {
    assertEquals("say again", heard(60_000).orElseThrow().text());
    assertEquals(21, slices);
    assertEquals(List.of(), log);
  }

  @Test
  void patienceIsKept() throws Ear.EndOfInput {
    assertEquals(Optional.empty(), heard(1_000));
    assertEquals(5, slices);
  }

  @Test
  void theLossIsPrintedAtOnceAndSaidFromTheThreadThatListens() throws Ear.EndOfInput {
    notices.lost("SND-023 desk: is gone");
    assertEquals(List.of("print SND-023 desk: is gone"), log);
    assertEquals(List.of(DeviceNews.MICROPHONE_GONE), shown);
    heard(400);
    assertEquals(
        List.of(
            "print SND-023 desk: is gone",
            "say The microphone is gone. I cannot hear you. Nothing is lost.",
            "forget"),
        log);
  }

  @Test
  void theReturnIsSaidWithinASlice() throws Ear.EndOfInput {
    whileListening = () -> tellBack();
    heard(1_000);
    assertEquals(List.of("say The microphone is back.", "forget"), log);
  }

  private void tellBack() {
    if (slices == 2) {
      notices.back();
    }
  }

  @Test
  void lostSoundIsPrintedWithItsLengthAndSaid() throws Ear.EndOfInput {
    notices.dropped(1_230);
    heard(200);
    assertEquals(
        List.of(
            "print The machine was too slow. Sound lost: 2 seconds.",
            "say I missed some sound. If you said something, say it again.",
            "forget"),
        log);
  }

  @Test
  void aSpeakerThatFailsIsPrintedAndShownAndNotSaid() throws Ear.EndOfInput {
    notices.speaker(new SpeakerNews(false, "SPK-002 gone"));
    notices.speaker(new SpeakerNews(true, "The speaker is back."));
    heard(400);
    assertEquals(List.of("print SPK-002 gone", "print The speaker is back."), log);
    assertEquals(List.of(DeviceNews.SPEAKER_GONE, DeviceNews.SPEAKER_BACK), shown);
  }

  @Test
  void ownWordsSaidAtLastAreForgotten() throws Ear.EndOfInput {
    missed = true;
    heard(400);
    assertEquals(List.of("forget"), log);
  }
}
