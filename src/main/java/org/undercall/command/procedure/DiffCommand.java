package org.undercall.command.procedure;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.DifferencesText;
import org.undercall.core.difference.Difference;
import org.undercall.core.difference.Differences;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what differs between two procedures. */
@Command(
    name = "diff",
    description = {
      "Tell what differs between two procedures, by fastener and step.",
      "What is tightened otherwise comes before what is only worded otherwise."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:no difference",
      "1:a file cannot be used, one line for each fault",
      "3:they differ"
    })
public final class DiffCommand implements Callable<Integer> {
  /** Exit status: they differ. */
  static final int DIFFERENT = 3;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "BEFORE", description = "The older procedure file.")
  private Path before;

  @Parameters(index = "1", paramLabel = "AFTER", description = "The newer procedure file.")
  private Path after;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  /** Made by the command line reader. */
  public DiffCommand() {}

  @Override
  public Integer call() throws Fault {
    Procedure older = ProcedureFile.load(before).procedure();
    Procedure newer = ProcedureFile.load(after).procedure();
    List<Difference> differences = Differences.of(older, newer);
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        json
            ? DifferencesText.json(before.toString(), after.toString(), differences)
            : DifferencesText.of(differences));
    out.flush();
    return differences.isEmpty() ? 0 : DIFFERENT;
  }
}
