package org.undercall.command.front;

import java.nio.file.Path;
import org.undercall.adapter.log.SessionFolder;

/** What to work on. */
public sealed interface Chosen {

  /** A procedure file, for a new session or an open one of the very same procedure. */
  record Procedure(Path file) implements Chosen {}

  /** A procedure file, for a new session. */
  record Fresh(Path file) implements Chosen {}

  /**
   * A visit to re-torque what a session tightened.
   *
   * @param session that session, as it was named
   * @param fresh whether a new visit begins even if one is open
   */
  record Visit(String session, boolean fresh) implements Chosen {}

  /** A session to take up. */
  record Session(SessionFolder folder) implements Chosen {}
}
