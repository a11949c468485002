package org.undercall.command.option;

import org.undercall.adapter.log.SessionFolder;
import org.undercall.port.Fault;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The one session a command is about. */
public final class SessionOption {
  @Parameters(
      paramLabel = "SESSION",
      description = "A session folder, its name under the folder of sessions, or \"last\".")
  private String session;

  @Mixin private SessionsOption sessions;

  /** Made by the command line reader. */
  public SessionOption() {}

  /**
   * The folder of the session.
   *
   * @throws Fault if there is none
   */
  public SessionFolder folder() throws Fault {
    return SessionFolder.find(sessions.folder(), session);
  }
}
