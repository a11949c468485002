package org.undercall.command;

import java.io.PrintWriter;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that lets a shell complete commands and options. */
@Command(
    name = "completion",
    description = {
      "Print a script for bash or zsh that completes commands and options with the tab key.",
      "For one shell: source <(undercall completion)"
    },
    mixinStandardHelpOptions = true)
public final class CompletionCommand implements Runnable {
  @Spec private CommandSpec spec;

  /** A command that picocli fills in. */
  public CompletionCommand() {}

  @Override
  public void run() {
    CommandLine root = spec.root().commandLine();
    PrintWriter out = spec.commandLine().getOut();
    out.print(AutoComplete.bash(root.getCommandName(), root));
    out.println();
    out.flush();
  }
}
