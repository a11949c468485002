package org.undercall.adapter.fleet;

import org.undercall.core.review.Facts;

/** Looks at single sessions; several threads ask it at once. */
public interface Examiner {

  /**
   * What was found out about a session.
   *
   * @param vehicle what its procedure is for; blank if that is not known
   * @param damage what is wrong with it, with its code; blank if it is whole
   * @param facts what it comes to
   */
  record Examined(String vehicle, String damage, Facts facts) {}

  /** Looks at the session with this name. */
  Examined examine(String session);
}
