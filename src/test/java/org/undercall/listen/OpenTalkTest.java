package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.activity.Activity;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.RecognisedPhrase.Word;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Signal;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;
import org.undercall.sound.SpeakerCode;

@DisplayName("Voice and ear at once")
class OpenTalkTest {
  private static final String PROMPT = "Torque, eight, zero newton metres. Say: torque reached.";
  private static final Set<IntentKind> ALLOWED =
      Set.of(
          IntentKind.TORQUE_COMPLETED,
          IntentKind.STEP_COMPLETED,
          IntentKind.JACK_MOVED,
          IntentKind.DENIED);

  private final List<String> log = Collections.synchronizedList(new ArrayList<>());
  private final AtomicLong now = new AtomicLong(10_000);
  private final OpenTalk talk = new OpenTalk(OwnVoice.unheard(), new Loud(), log::add, now::get);
  private final Speaking speaking = new Speaking();
  private final Scripted ear = new Scripted();
  private final Source source = new Source();
  private Voice voice;
  private Ear open;
  private Frames frames;

  /** Takes for speech what is not silent. */
  private static final class Loud implements Activity {
    @Override
    public boolean isSpeech(byte[] frame) {
      return frame[1] != 0;
    }

    @Override
    public void close() {}
  }

  /** Speaks until it is stopped or has been told to end; tells its sentences as a speaker does. */
  private final class Speaking implements Voice {
    private CountDownLatch begun = new CountDownLatch(1);
    private CountDownLatch end = new CountDownLatch(1);
    private boolean lost;
    private int wentOn;

    @Override
    public void goOn() {
      wentOn++;
    }

    @Override
    public void say(String words) {
      if (lost) {
        begun.countDown();
        throw new UncheckedFault(SpeakerCode.DEVICE_GONE, "gone");
      }
      log.add("say " + words);
      talk.begins(words, 2_000);
      begun.countDown();
      await(end);
      talk.ends(false);
    }

    @Override
    public void stop() {
      log.add("stop");
      end.countDown();
    }

    @Override
    public void signal(Signal signal) {
      log.add(signal.name());
    }

    @Override
    public void close() {
      log.add("close");
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      assertTrue(latch.await(20, TimeUnit.SECONDS), "nothing happened");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static final class Scripted implements Ear {
    private Optional<Heard> next = Optional.empty();
    private Set<IntentKind> asked = Set.of();

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
      asked = allowed;
      Optional<Heard> given = next;
      next = Optional.empty();
      return given;
    }

    @Override
    public void close() {}
  }

  /** Frames of one loudness; each takes as long as it is. */
  private final class Source implements Frames {
    private long at;
    private boolean loud;

    @Override
    public Optional<Frame> next() {
      byte[] sound = new byte[FRAME_BYTES];
      for (int i = 1; loud && i < sound.length; i += 2) {
        sound[i] = (byte) (i % 4 == 1 ? 20 : -20);
      }
      at += FRAME_SAMPLES;
      now.addAndGet(30);
      return Optional.of(new Frame(at - FRAME_SAMPLES, sound));
    }

    @Override
    public void close() {}
  }

  @BeforeEach
  void begin() throws Fault {
    voice = talk.of(speaking);
    open = talk.of(ear);
    frames = talk.of(source);
    pass(false, 300);
  }

  @AfterEach
  void end() {
    speaking.end.countDown();
    voice.close();
  }

  private void pass(boolean loud, int millis) throws Fault {
    source.loud = loud;
    for (int done = 0; done < millis; done += 30) {
      frames.next();
    }
  }

  private void say(String words) {
    voice.say(words);
    await(speaking.begun);
  }

  /** What comes of words said during the last second of sound. */
  private Optional<String> hear(String words, double confidence) throws Exception {
    double end = (double) source.at / Frames.RATE;
    List<Word> list = new ArrayList<>();
    for (String word : words.split(" ", -1)) {
      list.add(new Word(word, confidence, end - 0.9, end - 0.1));
    }
    ear.next =
        Optional.of(
            new Heard(
                new RecognisedPhrase(list), Heard.How.SPOKEN, Optional.empty(), Optional.empty()));
    return open.next(ALLOWED, 1_000).map(Heard::text);
  }

  @Test
  @DisplayName("the caller goes on while the voice speaks")
  void apart() {
    say(PROMPT);
    assertEquals(List.of("say " + PROMPT), log);
  }

  @Test
  @DisplayName("an answer over a prompt counts and stops the voice")
  void answer() throws Exception {
    say("Look at the boot.");
    pass(true, 1_200);
    assertEquals(Optional.of("step completed"), hear("step completed", 1));
    assertTrue(log.contains("stop"));
    assertFalse(log.contains("NOT_HEARD"));
  }

  @Test
  @DisplayName(
      "a closing phrase that is being spoken never counts: the voice goes on, a tone sounds")
  void ownWords() throws Exception {
    say(PROMPT);
    pass(true, 1_200);
    assertEquals(Optional.empty(), hear("torque reached", 1));
    assertEquals(List.of("say " + PROMPT, "NOT_HEARD"), log);
  }

  @Test
  @DisplayName("nor one of whose words only the number was not spoken")
  void ownWordsWithNumber() throws Exception {
    say("Say: torque reached.");
    pass(true, 1_200);
    assertEquals(Optional.empty(), hear("torque reached eight zero", 1));
    assertFalse(log.contains("stop"));
  }

  @Test
  @DisplayName("nor one whose number was spoken, which may belong to no call")
  void ownNumber() throws Exception {
    say("Torque, eight, zero newton metres.");
    pass(true, 1_200);
    assertEquals(Optional.empty(), hear("torque reached eight zero", 1));
    assertEquals(Optional.of("torque reached"), hear("torque reached", 1));
  }

  @Test
  @DisplayName("nor one that the voice had just said when it ended")
  void justSaid() throws Exception {
    say(PROMPT);
    pass(true, 600);
    talk.ends(false);
    pass(false, 600);
    assertEquals(Optional.empty(), hear("torque reached", 1));
  }

  @Test
  @DisplayName("the same phrase counts once it was begun after the voice")
  void after() throws Exception {
    say(PROMPT);
    pass(false, 600);
    talk.ends(false);
    pass(true, 1_200);
    assertEquals(Optional.of("torque reached"), hear("torque reached", 1));
  }

  @Test
  @DisplayName("what cancels a load counts, even if it is being spoken")
  void cancels() throws Exception {
    say("Say: jack moved.");
    pass(true, 1_200);
    assertEquals(Optional.of("jack moved"), hear("jack moved", 1));
    assertTrue(log.contains("stop"));
  }

  @Test
  @DisplayName("a denial counts, even if it is being spoken")
  void denied() throws Exception {
    say("Torque not reached?");
    pass(true, 1_200);
    assertEquals(Optional.of("torque not reached"), hear("torque not reached", 1));
  }

  @Test
  @DisplayName("what is unclear over the voice gives a low tone, once a reply, and no reply")
  void unclear() throws Exception {
    say(PROMPT);
    pass(true, 1_200);
    assertEquals(Optional.empty(), hear("step completed", 0.2));
    assertEquals(Optional.empty(), hear("step completed", 0.2));
    assertEquals(List.of("say " + PROMPT, "NOT_HEARD"), log);
  }

  @Test
  @DisplayName("what is unclear after the voice is passed on, to be asked for again")
  void unclearAfter() throws Exception {
    pass(true, 1_200);
    assertEquals(Optional.of("step completed"), hear("step completed", 0.2));
  }

  @Test
  @DisplayName(
      "after what is unclear a voice that was held for it goes on, so that the reply is said")
  void unclearHeld() throws Exception {
    say(PROMPT);
    pass(true, 300);
    talk.ends(true);
    pass(true, 2_400);
    assertEquals(Optional.of("step completed"), hear("step completed", 0.2));
    assertEquals(1, speaking.wentOn);
  }

  @Test
  @DisplayName("speech over the voice of which no phrase comes gives a low tone")
  void noPhrase() throws Exception {
    say(PROMPT);
    pass(true, 600);
    pass(false, 1_000);
    assertEquals(List.of("say " + PROMPT, "NOT_HEARD"), log);
  }

  @Test
  @DisplayName("a bang over the voice, and speech in silence, give none")
  void noTone() throws Exception {
    pass(true, 900);
    pass(false, 1_200);
    say(PROMPT);
    pass(true, 150);
    pass(false, 1_200);
    assertEquals(List.of("say " + PROMPT), log);
  }

  @Test
  @DisplayName("a call for quiet stops the voice and does nothing else")
  void quiet() throws Exception {
    say(PROMPT);
    pass(true, 1_200);
    assertEquals(Optional.empty(), hear("stop talking", 1));
    assertEquals(List.of("say " + PROMPT, "stop", "stop talking"), log);
    assertTrue(ear.asked.contains(IntentKind.BE_QUIET));
  }

  @Test
  @DisplayName("a notice during a prompt is said after it")
  void queued() {
    say(PROMPT);
    voice.say("The microphone is back.");
    assertEquals(List.of("say " + PROMPT), log);
    speaking.end.countDown();
    voice.close();
    assertEquals(List.of("say " + PROMPT, "say The microphone is back.", "close"), log);
  }

  @Test
  @DisplayName(
      "a loudspeaker that is lost meanwhile leaves the ear open, and the next words are said")
  void lost() throws Exception {
    speaking.lost = true;
    say(PROMPT);
    pass(true, 1_200);
    assertEquals(Optional.of("torque reached"), hear("torque reached", 1));
    speaking.lost = false;
    speaking.begun = new CountDownLatch(1);
    say("Back.");
    assertTrue(log.contains("say Back."));
  }

  @Test
  @DisplayName("a typed phrase counts, whatever is being spoken")
  void typed() throws Exception {
    say(PROMPT);
    ear.next = Optional.of(Heard.typed("torque reached"));
    assertEquals(Optional.of("torque reached"), open.next(ALLOWED, 1).map(Heard::text));
    assertTrue(log.contains("stop"));
  }
}
