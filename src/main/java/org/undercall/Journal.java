package org.undercall;

import org.undercall.adapter.files.LogFault;
import org.undercall.core.event.Recorded;

/** Where decisions are recorded before anything is said about them. */
public interface Journal {

  /**
   * Puts a decision on the disk; when this returns, it is there.
   *
   * @throws LogFault if it could not be recorded; then nothing of it was
   */
  void append(Recorded decision) throws LogFault;

  /** Where the sound of the phrases is kept; the journal names it. */
  default Clips clips() {
    return Clips.NONE;
  }
}
