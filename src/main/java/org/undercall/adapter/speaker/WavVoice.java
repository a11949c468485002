package org.undercall.adapter.speaker;

import java.util.List;
import java.util.function.LongSupplier;
import org.undercall.port.Voice;
import org.undercall.sound.WavTimeline;

/**
 * Speaks into a WAV file at the time of a clock that the caller keeps, so that a run can be
 * listened to afterwards. Nothing is waited for.
 */
public final class WavVoice implements Voice {
  private final Synthesiser synthesiser;
  private final WavTimeline timeline;
  private final LongSupplier nowMillis;
  private long freeFrom;

  /**
   * A voice on a timeline, which it does not close.
   *
   * @param nowMillis the time of the run, in milliseconds from the start of the timeline; speech
   *     starts then, or when the speech before it has ended
   */
  public WavVoice(Synthesiser synthesiser, WavTimeline timeline, LongSupplier nowMillis) {
    this.synthesiser = synthesiser;
    this.timeline = timeline;
    this.nowMillis = nowMillis;
  }

  @Override
  public void say(String words) {
    List<String> sentences = SpokenText.sentences(words);
    if (sentences.isEmpty()) {
      return;
    }
    freeFrom = Math.max(freeFrom, nowMillis.getAsLong());
    for (String sentence : sentences) {
      freeFrom = timeline.add(freeFrom, synthesiser.speak(sentence));
    }
  }

  /** When the last speech ends, in milliseconds from the start of the timeline. */
  public long endMillis() {
    return freeFrom;
  }

  @Override
  public void close() {
    synthesiser.close();
  }
}
