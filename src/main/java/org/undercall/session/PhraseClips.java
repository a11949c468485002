package org.undercall.session;

import java.util.Optional;
import org.undercall.core.decision.Decision;
import org.undercall.core.event.Recorded;
import org.undercall.core.intent.Intent;
import org.undercall.core.term.Kebab;
import org.undercall.port.Clips;
import org.undercall.port.Heard;

/** Keeps the sound of the phrases whose decision calls for it. One thread uses it. */
final class PhraseClips {
  private final Clips clips;

  PhraseClips(Clips clips) {
    this.clips = clips;
  }

  /**
   * What the log is to say of a phrase, with its clip if that is kept.
   *
   * @param seq the number the decision will have
   * @param intent what the phrase was taken for
   */
  Recorded.Heard keep(long seq, Heard heard, Intent intent, Decision decision) {
    double confidence = Math.round(heard.phrase().confidence() * 100) / 100.0;
    boolean kept = decision.isTaken() || clips.ofAll();
    return new Recorded.Heard(
        heard.text(),
        Kebab.of(intent.kind()),
        confidence,
        Kebab.of(heard.how()),
        heard.sound().filter(sound -> kept).flatMap(sound -> clips.keep(seq, sound)));
  }

  /** The decision could not be recorded: nothing names the clip. */
  void discard(Optional<Recorded.Heard> heard) {
    heard.flatMap(Recorded.Heard::clip).ifPresent(clips::discard);
  }
}
