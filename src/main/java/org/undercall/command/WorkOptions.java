package org.undercall.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.undercall.Dialogue;
import org.undercall.Work;
import org.undercall.adapter.files.LogFault;
import org.undercall.adapter.files.ProcedureFaults;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command that works on a procedure takes. */
public final class WorkOptions {
  @Parameters(paramLabel = "PROCEDURE", description = "The procedure file (JSON).")
  private Path procedure;

  @Option(
      names = "--sessions",
      paramLabel = "FOLDER",
      defaultValue = "sessions",
      description = "The folder of sessions (default: ${DEFAULT-VALUE}).")
  private Path sessions;

  @Option(names = "--new", description = "Begin a new session even if one is open.")
  private boolean fresh;

  /** Made by the command line reader. */
  public WorkOptions() {}

  /** Begins or takes up the session, and says which. */
  Work open(PrintWriter out) throws ProcedureFaults, LogFault, IOException {
    Work work = Work.on(procedure, sessions, fresh);
    String how = work.takenUp() ? "Session taken up: " : "New session: ";
    Dialogue dialogue = new Dialogue(out);
    dialogue.print(how + work.folder().path());
    work.dropped().ifPresent(line -> dialogue.print("A torn last line was dropped: " + line));
    return work;
  }
}
