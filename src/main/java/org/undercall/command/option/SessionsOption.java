package org.undercall.command.option;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option {@code --sessions}, for every command that reads or writes sessions. */
public final class SessionsOption {
  @Option(
      names = "--sessions",
      paramLabel = "FOLDER",
      defaultValue = "sessions",
      description = "The folder of sessions (default: ${DEFAULT-VALUE}).")
  private Path folder;

  /** Made by the command line reader. */
  public SessionsOption() {}

  /** The folder of sessions. */
  public Path folder() {
    return folder;
  }
}
