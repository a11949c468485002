package org.undercall.command;

import java.nio.file.Path;
import org.undercall.adapter.files.LogFault;
import org.undercall.adapter.files.SessionFolder;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The one session a command is about. */
public final class SessionOption {
  @Parameters(
      paramLabel = "SESSION",
      description = "A session folder, its name under the folder of sessions, or \"last\".")
  private String session;

  @Option(
      names = "--sessions",
      paramLabel = "FOLDER",
      defaultValue = "sessions",
      description = "The folder of sessions (default: ${DEFAULT-VALUE}).")
  private Path sessions;

  /** Made by the command line reader. */
  public SessionOption() {}

  /**
   * The folder of the session.
   *
   * @throws LogFault if there is none
   */
  public SessionFolder folder() throws LogFault {
    return SessionFolder.find(sessions, session);
  }
}
