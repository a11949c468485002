package org.undercall.port;

import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;

/** An ear around another one, which it closes and to which it passes on what it does not do. */
public abstract class EarAround implements Ear {
  /** The ear inside. */
  protected final Ear ear;

  /** An ear around {@code ear}. */
  protected EarAround(Ear ear) {
    this.ear = ear;
  }

  @Override
  public Optional<RecognisedPhrase> together(Heard first, Heard rest, Set<IntentKind> allowed) {
    return ear.together(first, rest, allowed);
  }

  @Override
  public boolean isHearing() {
    return ear.isHearing();
  }

  @Override
  public void forget() {
    ear.forget();
  }

  @Override
  public void close() {
    ear.close();
  }
}
