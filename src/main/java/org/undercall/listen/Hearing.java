package org.undercall.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * A recogniser at work on sound without gaps. It keeps the sound of the phrase at hand: should the
 * phrase turn out not to be over when it was ended early, the sound is heard again from its
 * beginning.
 */
final class Hearing implements AutoCloseable {
  /** No phrase. */
  static final RecognisedPhrase NONE = new RecognisedPhrase(List.of());

  private static final int BYTES_PER_SAMPLE = 2;

  /** Silence before the first word, without which that word gets lost: 0.4 s. */
  private static final byte[] LEAD = silence(400);

  /** Silence after the end of the source, so that the last word is decoded whole: 0.4 s. */
  private static final byte[] TAIL = silence(400);

  /** Frames that are kept, 9 s; a longer phrase is left to the recogniser. */
  private static final int MOST_FRAMES = 300;

  /** How long nothing must have been heard until the recogniser may rest. */
  private static final int REST_MILLIS = 1_000;

  /**
   * A quiet after which words are over in any case. The recogniser alone waits 2 s after words that
   * are no phrase, such as chatter, and would hear the next phrase as one with them.
   */
  private static final int MOST_QUIET_MILLIS = 1_200;

  private final DoubleFunction<Recogniser> maker;
  private final EndOfSpeech end;
  private final Set<IntentKind> allowed;
  private final List<Frame> kept = new ArrayList<>();
  private Recogniser recogniser;
  private boolean mayEndEarly;
  private boolean over;
  private int quietMillis;

  /**
   * Starts to hear.
   *
   * @param maker makes a recogniser whose sound starts at so many seconds of the source
   * @param firstSample where the first frame begins
   */
  Hearing(
      DoubleFunction<Recogniser> maker,
      long firstSample,
      EndOfSpeech end,
      Set<IntentKind> allowed) {
    this.maker = maker;
    this.end = end;
    this.allowed = allowed;
    start(firstSample);
    begin();
  }

  /**
   * Takes a frame.
   *
   * @return the phrase that ended with it; without words if none did
   */
  RecognisedPhrase take(Frame frame, boolean speech) {
    int millis = frame.samples() * 1000 / Frames.RATE;
    quietMillis = speech ? 0 : quietMillis + millis;
    if (recogniser.accept(frame.sound(), BYTES_PER_SAMPLE * frame.samples())) {
      RecognisedPhrase phrase = recogniser.result();
      begin();
      return phrase;
    }
    if (quietMillis >= MOST_QUIET_MILLIS && !recogniser.partial().isEmpty()) {
      over = true;
      return recogniser.finalResult();
    }
    keep(frame);
    return mayEndEarly && end.ended(millis, speech, recogniser::partial) ? early() : NONE;
  }

  /** Whether nothing is to be heard any more: the phrase was ended early, or all is quiet. */
  boolean mayRest() {
    return over || (quietMillis >= REST_MILLIS && recogniser.partial().isEmpty());
  }

  /** Whether words of a phrase that is not over were heard. */
  boolean hasWords() {
    return !recogniser.partial().isEmpty();
  }

  /** What is left when the source has ended. */
  RecognisedPhrase last() {
    return recogniser.accept(TAIL, TAIL.length) ? recogniser.result() : recogniser.finalResult();
  }

  @Override
  public void close() {
    recogniser.close();
  }

  private RecognisedPhrase early() {
    RecognisedPhrase phrase = recogniser.finalResult();
    over = end.holds(phrase.text());
    return over ? phrase : again();
  }

  /** Hears the phrase again from its beginning and leaves its end to the recogniser. */
  private RecognisedPhrase again() {
    mayEndEarly = false;
    recogniser.close();
    start(kept.get(0).firstSample());
    RecognisedPhrase phrase = NONE;
    for (Frame frame : kept) {
      if (recogniser.accept(frame.sound(), BYTES_PER_SAMPLE * frame.samples())) {
        phrase = recogniser.result();
      }
    }
    return phrase;
  }

  private void keep(Frame frame) {
    if (mayEndEarly && kept.size() < MOST_FRAMES) {
      kept.add(frame);
    } else {
      mayEndEarly = false;
      kept.clear();
    }
  }

  private void start(long sample) {
    recogniser = maker.apply((double) sample / Frames.RATE - lead());
    recogniser.accept(LEAD, LEAD.length);
  }

  private void begin() {
    kept.clear();
    mayEndEarly = true;
    end.begin(allowed);
  }

  private static double lead() {
    return (double) LEAD.length / BYTES_PER_SAMPLE / Frames.RATE;
  }

  private static byte[] silence(int millis) {
    return new byte[BYTES_PER_SAMPLE * Frames.RATE * millis / 1000];
  }
}
