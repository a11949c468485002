package org.undercall.listen;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.undercall.adapter.activity.Activity;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.OwnSpeech;
import org.undercall.core.intent.RecognisedPhrase.Word;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Signal;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;
import org.undercall.port.VoiceAround;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.LevelMeter;
import org.undercall.sound.OwnVoice;
import org.undercall.sound.Playback;

/**
 * Voice and ear at once, where the microphone does not hear the loudspeaker or that is taken out.
 * The voice speaks on a thread of its own, and what is said over it counts as after it; it stops as
 * soon as a phrase is understood.
 *
 * <p>A phrase that the voice itself may have said never counts. For that, and for speech in which
 * no phrase is heard, a low tone sounds, once a reply.
 */
public final class OpenTalk implements Playback {
  /** What a reply may take to its end when the program ends. */
  private static final long LAST_SECONDS = 60;

  /** The clocks of sound and machine may drift apart so far, of what has passed. */
  private static final double DRIFT = 0.001;

  private final OwnVoice own;
  private final Residue residue;
  private final Consumer<String> stopped;
  private final LongSupplier nowMillis;
  private final SpokenNow spoken;
  private final TalkedOver over = new TalkedOver();
  private final AtomicInteger toSay = new AtomicInteger();
  private final AtomicBoolean toneDue = new AtomicBoolean();
  private volatile Optional<Voice> speaking = Optional.empty();
  private double sourceBegan = Double.POSITIVE_INFINITY;
  private long lastFrame;

  /** Sound that waited while the ear was made has been heard: from now on it is told when. */
  private boolean live;

  /**
   * Voice and ear at once.
   *
   * @param own takes the voice out of the sound; not closed
   * @param activity tells what of that sound is speech; closed with the frames
   * @param stopped gets the phrase that stopped the voice and did nothing else
   */
  public OpenTalk(OwnVoice own, Activity activity, Consumer<String> stopped) {
    this(own, activity, stopped, () -> System.nanoTime() / 1_000_000);
  }

  OpenTalk(OwnVoice own, Activity activity, Consumer<String> stopped, LongSupplier nowMillis) {
    this.own = own;
    this.residue = new Residue(activity);
    this.stopped = stopped;
    this.nowMillis = nowMillis;
    this.spoken = new SpokenNow(nowMillis);
  }

  @Override
  public void begins(String sentence, int millis) {
    spoken.begins(sentence, millis);
    own.begins(sentence, millis);
  }

  @Override
  public void plays(byte[] samples, int offset, int length, int rate) {
    over.plays(level(samples, offset, length));
    own.plays(samples, offset, length, rate);
  }

  @Override
  public void ends(boolean cutShort) {
    spoken.ends(cutShort);
    own.ends(cutShort);
  }

  private static double level(byte[] samples, int offset, int length) {
    LevelMeter meter = new LevelMeter();
    meter.add(Frame.of(0, Arrays.copyOfRange(samples, offset, offset + length)));
    return meter.level().rms();
  }

  /** The sound, with an eye on what is said in it and not heard. */
  public Frames of(Frames frames) {
    return new Watched(frames);
  }

  /** The ear, which counts nothing that the voice may have said. */
  public Ear of(Ear ear) {
    return new Open(ear);
  }

  /** The voice, which speaks while the caller goes on. What is said meanwhile is said after it. */
  public Voice of(Voice voice) {
    speaking = Optional.of(voice);
    return new Apart(voice);
  }

  /** Says that something was not heard; once a reply. */
  private void notHeard() {
    if (toneDue.getAndSet(false)) {
      speaking.ifPresent(voice -> voice.signal(Signal.NOT_HEARD));
    }
  }

  private final class Watched implements Frames {
    private final Frames frames;

    Watched(Frames frames) {
      this.frames = frames;
    }

    @Override
    public Optional<Frame> next() throws Fault {
      Optional<Frame> frame = frames.next();
      frame.ifPresent(this::look);
      return frame;
    }

    /** Frames come late or at once, never early: the earliest tells when the source began. */
    private void look(Frame frame) {
      long now = nowMillis.getAsLong();
      double millis = 1000.0 * frame.samples() / Frames.RATE;
      double end = 1000.0 * frame.firstSample() / Frames.RATE + millis;
      sourceBegan = Math.min(sourceBegan + DRIFT * millis, now - end);
      live |= now - lastFrame >= millis / 2 && lastFrame > 0;
      lastFrame = now;
      long at = Math.round(sourceBegan + end);
      boolean sounds = spoken.during(at - Math.round(millis), at).isPresent();
      if (residue.take(frame, sounds)) {
        notHeard();
      }
      turn(over.take((int) Math.round(millis), residue.isSpeech(), residue.level(), sounds));
    }

    private void turn(TalkedOver.Turn turn) {
      switch (turn) {
        case HOLD -> speaking.ifPresent(Voice::hold);
        case GO_ON -> speaking.ifPresent(Voice::goOn);
        case NOTHING -> {}
      }
    }

    @Override
    public void discardWaiting() {
      residue.forget();
      frames.discardWaiting();
    }

    @Override
    public long droppedMillis() {
      return frames.droppedMillis();
    }

    @Override
    public void close() {
      residue.close();
      frames.close();
    }
  }

  private final class Open extends EarAround {
    Open(Ear ear) {
      super(ear);
    }

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
      Set<IntentKind> kinds = EnumSet.copyOf(allowed);
      if (!allowed.contains(IntentKind.NOTE_TEXT)) {
        kinds.add(IntentKind.BE_QUIET);
      }
      return ear.next(kinds, patienceMillis).filter(heard -> counts(heard, kinds));
    }

    /** {@inheritDoc} What was said while the ear was made is kept. */
    @Override
    public void forget() {
      if (live) {
        ear.forget();
      }
    }

    private boolean counts(Heard heard, Set<IntentKind> kinds) {
      if (heard.how() != Heard.How.SPOKEN) {
        speaking.ifPresent(Voice::stop);
        return true;
      }
      residue.forget();
      over.answered();
      Intent intent = Interpreter.interpret(heard.phrase(), kinds, Interpreter.LEAST_CONFIDENCE);
      Optional<Set<String>> said = during(heard);
      boolean doubtful =
          said.filter(
                  words ->
                      intent instanceof Intent.Unclear
                          || OwnSpeech.mayBe(heard.phrase(), intent, words))
              .isPresent();
      if (doubtful) {
        notHeard();
        speaking.ifPresent(Voice::goOn);
        return false;
      }
      if (intent instanceof Intent.Unclear) {
        speaking.ifPresent(Voice::goOn);
        return true;
      }
      speaking.ifPresent(Voice::stop);
      if (intent.kind() == IntentKind.BE_QUIET) {
        stopped.accept(heard.text());
        return false;
      }
      return true;
    }

    private Optional<Set<String>> during(Heard heard) {
      if (!live) {
        return Optional.of(spoken.all()).filter(words -> !words.isEmpty());
      }
      Word first = heard.phrase().words().get(0);
      Word last = heard.phrase().words().get(heard.phrase().words().size() - 1);
      return spoken.during(
          Math.round(sourceBegan + 1000 * first.start()),
          Math.round(sourceBegan + 1000 * last.end()));
    }
  }

  private final class Apart extends VoiceAround {
    private final ExecutorService thread =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread made = new Thread(work, "voice");
              made.setDaemon(true);
              return made;
            });

    Apart(Voice voice) {
      super(voice);
    }

    @Override
    public void say(String words) {
      toneDue.set(true);
      over.replies();
      later(() -> voice.say(words));
    }

    @Override
    public void signal(Signal signal) {
      later(() -> voice.signal(signal));
    }

    /** {@inheritDoc} While something is being said nothing is tried. */
    @Override
    public boolean retry() {
      return toSay.get() == 0 && voice.retry();
    }

    private void later(Runnable act) {
      toSay.incrementAndGet();
      thread.execute(
          () -> {
            try {
              act.run();
            } catch (UncheckedFault e) {
              // The voice tells of its own faults; the ear goes on.
            } finally {
              toSay.decrementAndGet();
            }
          });
    }

    /** {@inheritDoc} What is still to be said is said before. */
    @Override
    public void close() {
      thread.shutdown();
      try {
        if (!thread.awaitTermination(LAST_SECONDS, TimeUnit.SECONDS)) {
          voice.stop();
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      voice.close();
    }
  }
}
