package org.undercall.listen;

import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Heard;

/** An ear for typed phrases that also takes the technician's own words. */
public final class OwnWordsEar extends EarAround {
  private final OwnWords own;

  /** An ear, which this one closes, with own words. */
  public OwnWordsEar(Ear ear, OwnWords own) {
    super(ear);
    this.own = own;
  }

  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    Optional<Heard> next = ear.next(allowed, patienceMillis);
    return allowed.contains(IntentKind.NOTE_TEXT) ? next : next.map(this::inStandard);
  }

  private Heard inStandard(Heard heard) {
    return heard.with(new RecognisedPhrase(own.inStandard(heard.phrase().words())));
  }
}
