package org.undercall.listen;

import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.port.Ear;

/** An ear for typed phrases that also takes the technician's own words. */
public final class OwnWordsEar implements Ear {
  private final Ear ear;
  private final OwnWords own;

  /** An ear, which this one closes, with own words. */
  public OwnWordsEar(Ear ear, OwnWords own) {
    this.ear = ear;
    this.own = own;
  }

  @Override
  public Optional<RecognisedPhrase> next(Set<IntentKind> allowed, long patienceMillis)
      throws EndOfInput {
    Optional<RecognisedPhrase> phrase = ear.next(allowed, patienceMillis);
    return allowed.contains(IntentKind.NOTE_TEXT)
        ? phrase
        : phrase.map(heard -> new RecognisedPhrase(own.inStandard(heard.words())));
  }

  @Override
  public void forget() {
    ear.forget();
  }

  @Override
  public Optional<SoundLevels> levels() {
    return ear.levels();
  }

  @Override
  public Optional<byte[]> sound() {
    return ear.sound();
  }

  @Override
  public String how() {
    return ear.how();
  }

  @Override
  public void close() {
    ear.close();
  }
}
