package org.undercall.session;

import java.util.Optional;
import org.undercall.core.decision.Decision;
import org.undercall.core.event.Recorded;
import org.undercall.port.Clips;
import org.undercall.port.Ear;

/** Keeps the sound of the phrases whose decision calls for it. One thread uses it. */
final class PhraseClips {
  private final Ear ear;
  private final Clips clips;

  PhraseClips(Ear ear, Clips clips) {
    this.ear = ear;
    this.clips = clips;
  }

  /**
   * What was heard, with its sound if that is kept.
   *
   * @param seq the number the decision will have
   */
  Optional<Recorded.Heard> keep(long seq, Optional<Recorded.Heard> heard, Decision decision) {
    return heard.isPresent() && (decision.isTaken() || clips.ofAll())
        ? heard.map(h -> h.with(ear.sound().flatMap(sound -> clips.keep(seq, sound))))
        : heard;
  }

  /** The decision could not be recorded: nothing names the clip. */
  void discard(Optional<Recorded.Heard> heard) {
    heard.flatMap(Recorded.Heard::clip).ifPresent(clips::discard);
  }
}
