package org.undercall.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import org.undercall.Dialogue;
import org.undercall.Work;
import org.undercall.adapter.files.LogFault;
import org.undercall.adapter.files.ProcedureFaults;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command that works on a procedure takes. */
public final class WorkOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

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

  @Option(
      names = "--remind",
      paramLabel = "MINUTES",
      defaultValue = "10",
      description = "Remind after so long a quiet; 0 for never (default: ${DEFAULT-VALUE}).")
  private int remindMinutes;

  /** Made by the command line reader. */
  public WorkOptions() {}

  /** Begins or takes up the session, and says which. */
  Work open(PrintWriter out) throws ProcedureFaults, LogFault, IOException {
    remindAfter();
    Work work = Work.on(procedure, sessions, fresh);
    String how = work.takenUp() ? "Session taken up: " : "New session: ";
    Dialogue dialogue = new Dialogue(out);
    dialogue.print(how + work.folder().path());
    work.dropped().ifPresent(line -> dialogue.print("A torn last line was dropped: " + line));
    return work;
  }

  /** The quiet before the first reminder; zero for none. */
  Duration remindAfter() {
    if (remindMinutes < 0) {
      throw new ParameterException(
          spec.commandLine(), "--remind takes 0 or more minutes, found " + remindMinutes);
    }
    return Duration.ofMinutes(remindMinutes);
  }
}
