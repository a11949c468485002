package org.undercall.listen;

import java.util.List;
import java.util.Optional;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.StopPhrases;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Finds a stop phrase in sound that also has the program's own voice in it. The words around the
 * phrase do not matter, so the end of an utterance is not waited for: it is enough that the phrase
 * stays the same for a short while and the recogniser is sure of it. The thread that made it uses
 * it.
 */
public final class Overheard implements AutoCloseable {
  /** How long a phrase must stay the same: 90 ms. */
  private static final int SAME_SAMPLES = 90 * Frames.RATE / 1000;

  private static final byte[] LEAD = new byte[2 * Frames.RATE * 400 / 1000];

  private final Recogniser recogniser;
  private final List<String> phrases;
  private String before = "";
  private int same;

  /**
   * Starts to listen.
   *
   * @param recogniser knows these phrases; closed with this
   */
  public Overheard(Recogniser recogniser, List<String> phrases) {
    this.recogniser = recogniser;
    this.phrases = phrases;
    recogniser.accept(LEAD, LEAD.length);
  }

  /** Takes a frame and gives the stop phrase that was heard with it. */
  public Optional<String> take(Frame frame) {
    if (recogniser.accept(frame.sound(), 2 * frame.samples())) {
      return sure(recogniser.result());
    }
    String now = StopPhrases.in(recogniser.partial(), phrases).orElse("");
    same = now.equals(before) ? same + frame.samples() : 0;
    before = now;
    return now.isEmpty() || same < SAME_SAMPLES ? Optional.empty() : sure(recogniser.finalResult());
  }

  @Override
  public void close() {
    recogniser.close();
  }

  private Optional<String> sure(RecognisedPhrase heard) {
    before = "";
    same = 0;
    return StopPhrases.in(heard.text(), phrases)
        .filter(p -> StopPhrases.confidence(heard, p) >= Interpreter.LEAST_CONFIDENCE);
  }
}
