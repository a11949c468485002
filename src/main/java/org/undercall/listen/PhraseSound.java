package org.undercall.listen;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Keeps the latest sound, without gaps, and cuts phrases out of it, from a little before the first
 * word to a little after the last. One thread uses it.
 */
final class PhraseSound {
  /** What is kept: the last 30 s; the recogniser ends every phrase after 20 s. */
  private static final int MOST = 30 * Frames.RATE / Frames.FRAME_SAMPLES;

  /** Around a phrase: 0.4 s. */
  static final Margin PHRASE = new Margin(0.4, 0.4);

  /** Around a note, whose first and last words the recogniser may have missed. */
  static final Margin NOTE = new Margin(2.5, 1);

  private final Deque<Frame> recent = new ArrayDeque<>();

  /**
   * What is kept of the sound around the words.
   *
   * @param before seconds before the first word
   * @param after seconds after the last word, as far as it was heard
   */
  record Margin(double before, double after) {}

  void keep(Frame frame) {
    recent.add(frame);
    if (recent.size() > MOST) {
      recent.remove();
    }
  }

  void clear() {
    recent.clear();
  }

  /**
   * The sound of a phrase: as {@link Frames} gives it.
   *
   * @param hearings the phrase as it was heard, once or twice; each has a word
   * @return whole frames; empty if there is no sound of it
   */
  Optional<byte[]> of(List<RecognisedPhrase> hearings, Margin margin) {
    double from = Double.POSITIVE_INFINITY;
    double to = 0;
    for (RecognisedPhrase phrase : hearings) {
      from = Math.min(from, phrase.words().get(0).start() - margin.before());
      to = Math.max(to, phrase.words().get(phrase.words().size() - 1).end() + margin.after());
    }
    ByteArrayOutputStream sound = new ByteArrayOutputStream();
    for (Frame frame : recent) {
      double start = (double) frame.firstSample() / Frames.RATE;
      double end = start + (double) frame.samples() / Frames.RATE;
      if (end > from && start < to) {
        sound.writeBytes(frame.sound());
      }
    }
    return sound.size() == 0 ? Optional.empty() : Optional.of(sound.toByteArray());
  }
}
