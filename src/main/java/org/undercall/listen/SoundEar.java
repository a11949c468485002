package org.undercall.listen;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Looks;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Hears phrases in sound: frames go to a recogniser that knows only what may be said now, as long
 * as somebody speaks. In silence there is no recogniser; the last half second is kept, so that the
 * first word is heard whole.
 *
 * <p>Time is the source's own, counted in samples, so a file needs no real time. One thread uses
 * it.
 */
public final class SoundEar implements Ear {
  /** Frames before the first one with speech that are heard with it: 0.51 s. */
  private static final int FRAMES_BEFORE = 17;

  /** Where there is always something to hear, memory is given back every half minute. */
  private static final long GIVE_BACK_SAMPLES = 30L * Frames.RATE;

  private final Frames frames;
  private final RecogniserMaker maker;
  private final Recognisers recognisers;
  private final Attention attention;
  private final Deque<Frame> before = new ArrayDeque<>();
  private final RecentSound recent;
  private Set<IntentKind> allowed = Set.of();
  private Hearing hearing;
  private long position;
  private long givenBack;
  private boolean silent;

  /**
   * An ear.
   *
   * @param frames the sound; the ear closes it
   * @param maker makes recognisers; the ear does not close it
   * @param phrases the phrases for what may be said
   * @param attention how it notices speech and its end; the ear closes its detector
   */
  public SoundEar(
      Frames frames,
      RecogniserMaker maker,
      Function<Set<IntentKind>, List<String>> phrases,
      Attention attention) {
    this(frames, maker, phrases, attention, Optional.empty());
  }

  /** An ear that looks at phrases again in another way than at work. */
  SoundEar(
      Frames frames,
      RecogniserMaker maker,
      Function<Set<IntentKind>, List<String>> phrases,
      Attention attention,
      Optional<Looks> looks) {
    this.frames = frames;
    this.maker = maker;
    this.recognisers = new Recognisers(maker, phrases);
    this.attention = attention;
    this.recent = new RecentSound(maker, looks);
  }

  /** The ear of the program: all phrases, the usual attention. */
  public static SoundEar standard(Frames frames, RecogniserMaker maker) {
    return new SoundEar(frames, maker, Phrasebook::wordList, Attention.standard());
  }

  /**
   * {@inheritDoc}
   *
   * <p>What was heard of a phrase is dropped when {@code allowed} is not what it was, and when the
   * source has a gap. Noise without words is no phrase.
   *
   * @throws UncheckedFault if the sound breaks off
   */
  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    if (!allowed.equals(this.allowed)) {
      drop();
    }
    this.allowed = Set.copyOf(allowed);
    long until = position + patienceMillis * Frames.RATE / 1000;
    while (position < until) {
      Optional<Frame> frame = frame();
      RecognisedPhrase phrase = frame.isPresent() ? heard(frame.get()) : last();
      if (!phrase.words().isEmpty()) {
        return Optional.of(recent.heard(phrase, this.allowed));
      }
    }
    return Optional.empty();
  }

  @Override
  public Optional<RecognisedPhrase> together(Heard first, Heard rest, Set<IntentKind> allowed) {
    return recent.together(first.phrase(), rest.phrase(), allowed);
  }

  @Override
  public boolean isHearing() {
    return hearing != null && hearing.hasWords();
  }

  /** Forgets the sound that waits and the phrase begun, such as the program's own voice. */
  @Override
  public void forget() {
    frames.discardWaiting();
    dropAll();
  }

  /** How much sound was heard so far, in seconds of the source. */
  public double seconds() {
    return (double) position / Frames.RATE;
  }

  @Override
  public void close() {
    drop();
    recent.close();
    frames.close();
    attention.activity().close();
  }

  private Optional<Frame> frame() {
    try {
      return silent ? Optional.empty() : frames.next();
    } catch (Fault e) {
      throw new UncheckedFault(e);
    }
  }

  private RecognisedPhrase heard(Frame frame) {
    if (frame.firstSample() != position) {
      dropAll();
    }
    recent.keep(frame);
    position = frame.firstSample() + frame.samples();
    boolean speech = attention.activity().isSpeech(frame.sound());
    RecognisedPhrase phrase = hearing == null ? waited(frame, speech) : hearing.take(frame, speech);
    boolean rests = hearing != null && hearing.mayRest();
    if (rests) {
      drop();
    }
    if (rests || position - givenBack >= GIVE_BACK_SAMPLES) {
      maker.giveBack();
      givenBack = position;
    }
    return phrase;
  }

  /** Waits for speech; when it comes, hears it with what came just before. */
  private RecognisedPhrase waited(Frame frame, boolean speech) {
    before.add(frame);
    if (!speech) {
      if (before.size() > FRAMES_BEFORE) {
        before.remove();
      }
      return Hearing.NONE;
    }
    hearing =
        new Hearing(
            start -> recognisers.of(allowed, start),
            before.peek().firstSample(),
            attention.end(),
            allowed);
    RecognisedPhrase phrase = Hearing.NONE;
    while (phrase.words().isEmpty() && !before.isEmpty()) {
      phrase = hearing.take(before.remove(), true);
    }
    before.clear();
    return phrase;
  }

  private RecognisedPhrase last() throws EndOfInput {
    silent = true;
    if (hearing == null) {
      throw new EndOfInput();
    }
    RecognisedPhrase phrase = hearing.last();
    drop();
    return phrase;
  }

  private void dropAll() {
    drop();
    before.clear();
    recent.clear();
  }

  private void drop() {
    if (hearing != null) {
      hearing.close();
      hearing = null;
    }
  }
}
