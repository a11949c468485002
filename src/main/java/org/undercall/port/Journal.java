package org.undercall.port;

import org.undercall.core.event.Recorded;

/** Where decisions are recorded before anything is said about them. */
public interface Journal {

  /**
   * Puts a decision on the disk; when this returns, it is there.
   *
   * @throws Fault if it could not be recorded; then nothing of it was
   */
  void append(Recorded decision) throws Fault;

  /** Where the sound of the phrases is kept; the journal names it. */
  default Clips clips() {
    return Clips.NONE;
  }
}
