package org.undercall.adapter.activity;

/** Finds the best detector of speech that this machine can run. */
public final class Activities {
  private Activities() {}

  /** A new detector: the native one, or where that cannot load, one that compares loudness. */
  public static Activity best() {
    return FvadActivity.isThere() ? new FvadActivity() : new EnergyActivity();
  }

  /** Whether the native detector can run here. */
  public static boolean nativeIsThere() {
    return FvadActivity.isThere();
  }

  /** A new detector that compares loudness; runs anywhere. */
  public static Activity byLoudness() {
    return new EnergyActivity();
  }
}
