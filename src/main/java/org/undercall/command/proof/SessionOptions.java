package org.undercall.command.proof;

import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.command.option.SessionsOption;
import org.undercall.port.Fault;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The sessions a command is about. */
final class SessionOptions {
  @Parameters(
      arity = "1..*",
      paramLabel = "SESSION",
      description = "Session folders, their names under the folder of sessions, or \"last\".")
  private List<String> names;

  @Mixin private SessionsOption sessions;

  List<SessionFolder> folders() throws Fault {
    List<SessionFolder> folders = new ArrayList<>();
    for (String name : names) {
      folders.add(SessionFolder.find(sessions.folder(), name));
    }
    return folders;
  }
}
