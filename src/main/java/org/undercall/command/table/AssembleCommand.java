package org.undercall.command.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a procedure as one file that needs no block. */
@Command(
    name = "assemble",
    description = {
      "Write a procedure with its blocks and given values as one file, as a session keeps it.",
      "It states each file it was put together from, with its SHA-256."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = "0:written")
public final class AssembleCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROCEDURE", description = "The procedure file.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write to this file (default: to the output).")
  private Path out;

  @Option(names = "--force", description = "Overwrite a file that is there.")
  private boolean force;

  /** Made by the command line reader. */
  public AssembleCommand() {}

  @Override
  public Integer call() throws Fault, IOException {
    LoadedProcedure loaded = ProcedureFile.load(file);
    String text = new String(loaded.wholeBytes(), StandardCharsets.UTF_8);
    PrintWriter lines = spec.commandLine().getOut();
    if (out == null) {
      lines.print(text);
    } else {
      NewFile.write(out, text, force);
      lines.println("Wrote " + out);
    }
    lines.flush();
    return 0;
  }
}
