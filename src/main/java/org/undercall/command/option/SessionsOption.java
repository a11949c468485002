package org.undercall.command.option;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option {@code --sessions}, for every command that reads or writes sessions. */
public final class SessionsOption {
  @Option(
      names = "--sessions",
      paramLabel = "FOLDER",
      description =
          "The folder of sessions (default: the folder sessions here, if it is there, otherwise one"
              + " among your data; undercall doctor says where).")
  private Path named;

  /** Made by the command line reader. */
  public SessionsOption() {}

  /** The folder of sessions, as named or the usual one; it may be absent. */
  public Path folder() {
    return named == null ? UserFolders.ofMachine().sessions().used() : named;
  }
}
