package org.undercall.core.decision;

import java.util.Set;
import org.undercall.core.intent.IntentKind;

/** Tells measurements what is listened for in a phase. */
public final class PhaseWords {
  private PhaseWords() {}

  /** The intents that may be heard in the phase. */
  public static Set<IntentKind> heard(Phase phase) {
    return Table.heard(phase);
  }
}
