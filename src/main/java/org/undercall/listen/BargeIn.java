package org.undercall.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.StopPhrases;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Voice;
import org.undercall.port.VoiceAround;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Lets a voice be stopped by a call while it speaks. Meanwhile a thread of its own takes the sound
 * of the microphone, which nobody else takes then, and listens for a few stop phrases only.
 *
 * <p>What is called over the voice stops it, is no answer and closes nothing. What cancels a load
 * also goes on to the ear, which gives it out before anything else.
 */
public final class BargeIn {
  /** How much of the sound after a call is left out: 0.51 s. */
  private static final int REST_FRAMES = 17;

  private final Queue<Heard> calls = new ConcurrentLinkedQueue<>();
  private final Frames frames;
  private final Supplier<Optional<RecogniserMaker>> maker;
  private final Consumer<String> stopped;

  /**
   * Listens to this sound while a voice speaks.
   *
   * @param frames the sound; used only while the voice speaks
   * @param maker empty as long as there is no recogniser yet; then nothing is listened for
   * @param stopped gets the phrase that stopped the voice
   */
  public BargeIn(
      Frames frames, Supplier<Optional<RecogniserMaker>> maker, Consumer<String> stopped) {
    this.frames = frames;
    this.maker = maker;
    this.stopped = stopped;
  }

  /** An ear that gives out what was called over the voice and cancels a load. */
  public Ear of(Ear ear) {
    return new EarAround(ear) {
      @Override
      public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
        Optional<Heard> call = Optional.ofNullable(calls.poll());
        return call.isPresent() ? call : ear.next(allowed, patienceMillis);
      }
    };
  }

  /** The voice, which can be stopped by a call. */
  public Voice of(Voice voice) {
    return new Interruptible(voice);
  }

  private final class Interruptible extends VoiceAround {
    Interruptible(Voice voice) {
      super(voice);
    }

    @Override
    public void say(String words) {
      List<String> phrases = StopPhrases.over(words);
      Optional<RecogniserMaker> ready = phrases.isEmpty() ? Optional.empty() : maker.get();
      if (ready.isEmpty()) {
        voice.say(words);
        return;
      }
      Listening listening = new Listening(voice, ready.get(), phrases);
      Thread thread = new Thread(listening, "barge-in");
      thread.setDaemon(true);
      thread.start();
      try {
        voice.say(words);
      } finally {
        listening.over = true;
        join(thread);
      }
    }
  }

  /** Waits until nobody else takes the sound; the microphone never holds a taker up for long. */
  private static void join(Thread thread) {
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private final class Listening implements Runnable {
    private final Voice voice;
    private final RecogniserMaker recognisers;
    private final List<String> phrases;
    private volatile boolean over;

    Listening(Voice voice, RecogniserMaker recognisers, List<String> phrases) {
      this.voice = voice;
      this.recognisers = recognisers;
      this.phrases = phrases;
    }

    @Override
    public void run() {
      List<String> listed = new ArrayList<>(phrases);
      listed.add(RecognisedPhrase.UNKNOWN);
      frames.discardWaiting();
      try (Overheard overheard = new Overheard(recognisers.withWordList(listed, 0), phrases)) {
        Optional<String> call = Optional.empty();
        while (!over && call.isEmpty()) {
          Optional<Frame> frame = frames.next();
          if (frame.isEmpty()) {
            return;
          }
          call = overheard.take(frame.get());
        }
        if (call.isPresent() && !over) {
          voice.stop();
          stopped.accept(call.get());
          if (StopPhrases.cancels(call.get())) {
            calls.add(
                new Heard(
                    RecognisedPhrase.typed(call.get()),
                    Heard.How.SPOKEN,
                    Optional.empty(),
                    Optional.empty()));
          }
          leaveOut();
        }
      } catch (Fault e) {
        // The ear meets the same fault at its next frame and reports it.
      }
    }

    /** The end of the call may still sound when the voice has stopped: nobody is to hear it. */
    private void leaveOut() throws Fault {
      int left = REST_FRAMES;
      while (left > 0 && frames.next().isPresent()) {
        left--;
      }
    }
  }
}
