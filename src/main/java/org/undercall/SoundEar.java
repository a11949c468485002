package org.undercall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.undercall.adapter.microphone.Frame;
import org.undercall.adapter.microphone.Frames;
import org.undercall.adapter.microphone.SoundFault;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;

/**
 * Hears phrases in sound: frames go to a recogniser that knows only what may be said now.
 *
 * <p>Time is the source's own, counted in samples, so a file needs no real time. One thread uses
 * it.
 */
public final class SoundEar implements Ear {
  private static final int BYTES_PER_SAMPLE = 2;

  /** Silence before the first word, without which that word gets lost: 0.4 s. */
  private static final byte[] LEAD = silence(400);

  /** Silence after the end of the source, so that the last word is decoded whole: 0.4 s. */
  private static final byte[] TAIL = silence(400);

  private final Frames frames;
  private final RecogniserMaker maker;
  private final Function<Set<IntentKind>, List<String>> phrases;
  private final EndOfSpeech end;
  private final Map<Set<IntentKind>, List<String>> lists = new HashMap<>();
  private Set<IntentKind> allowed = Set.of();
  private Recogniser recogniser;
  private long position;
  private boolean silent;

  /**
   * An ear.
   *
   * @param frames the sound; the ear closes it
   * @param maker makes recognisers; the ear does not close it
   * @param phrases the phrases for what may be said
   * @param end decides when a phrase has ended
   */
  public SoundEar(
      Frames frames,
      RecogniserMaker maker,
      Function<Set<IntentKind>, List<String>> phrases,
      EndOfSpeech end) {
    this.frames = frames;
    this.maker = maker;
    this.phrases = phrases;
    this.end = end;
  }

  /**
   * {@inheritDoc}
   *
   * <p>What was heard of a phrase is dropped when {@code allowed} is not what it was, and when the
   * source has a gap. Noise without words is no phrase.
   *
   * @throws EarFault if the sound breaks off
   */
  @Override
  public Optional<RecognisedPhrase> next(Set<IntentKind> allowed, long patienceMillis)
      throws EndOfInput {
    if (recogniser != null && !allowed.equals(this.allowed)) {
      drop();
    }
    this.allowed = Set.copyOf(allowed);
    long until = position + patienceMillis * Frames.RATE / 1000;
    while (position < until) {
      Optional<Frame> frame = frame();
      RecognisedPhrase phrase = frame.isPresent() ? heard(frame.get()) : last();
      if (!phrase.words().isEmpty()) {
        return Optional.of(phrase);
      }
    }
    return Optional.empty();
  }

  /** Forgets the sound that waits and the phrase begun, such as the program's own voice. */
  @Override
  public void forget() {
    frames.discardWaiting();
    drop();
  }

  /** How much sound was heard so far, in seconds of the source. */
  public double seconds() {
    return seconds(position);
  }

  @Override
  public void close() {
    drop();
    frames.close();
  }

  private Optional<Frame> frame() {
    try {
      return silent ? Optional.empty() : frames.next();
    } catch (SoundFault e) {
      throw new EarFault(e);
    }
  }

  private RecognisedPhrase heard(Frame frame) {
    if (frame.firstSample() != position) {
      drop();
    }
    if (recogniser == null) {
      start(frame.firstSample());
    }
    byte[] sound = frame.sound();
    boolean recogniserSays = recogniser.accept(sound, sound.length);
    position = frame.firstSample() + frame.samples();
    boolean ended = end.ended(frame, recogniser);
    if (!recogniserSays && !ended) {
      return new RecognisedPhrase(List.of());
    }
    end.begin();
    return recogniserSays ? recogniser.result() : recogniser.finalResult();
  }

  private RecognisedPhrase last() throws EndOfInput {
    silent = true;
    if (recogniser == null) {
      throw new EndOfInput();
    }
    RecognisedPhrase phrase =
        recogniser.accept(TAIL, TAIL.length) ? recogniser.result() : recogniser.finalResult();
    recogniser.close();
    recogniser = null;
    return phrase;
  }

  private void start(long sample) {
    double startSeconds = seconds(sample) - seconds(LEAD.length / BYTES_PER_SAMPLE);
    recogniser =
        allowed.contains(IntentKind.NOTE_TEXT)
            ? maker.free(startSeconds)
            : maker.withWordList(listed(), startSeconds);
    recogniser.accept(LEAD, LEAD.length);
    end.begin();
  }

  private List<String> listed() {
    return lists.computeIfAbsent(
        allowed,
        kinds -> {
          List<String> list = new ArrayList<>(phrases.apply(kinds));
          list.add(RecognisedPhrase.UNKNOWN);
          return List.copyOf(list);
        });
  }

  private void drop() {
    if (recogniser != null) {
      recogniser.close();
      recogniser = null;
    }
  }

  private static double seconds(long samples) {
    return (double) samples / Frames.RATE;
  }

  private static byte[] silence(int millis) {
    return new byte[BYTES_PER_SAMPLE * Frames.RATE * millis / 1000];
  }
}
