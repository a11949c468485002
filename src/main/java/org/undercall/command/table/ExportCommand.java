package org.undercall.command.table;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.table.TableText;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a procedure as a table. */
@Command(
    name = "export",
    description = {
      "Write a procedure as a table (CSV), as import reads it.",
      "The table is read again at once; what it does not hold is said."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:written, and the table gives the same procedure",
      "3:written, but the table does not hold everything"
    })
public final class ExportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROCEDURE", description = "The procedure file.")
  private Path file;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      arity = "0..1",
      fallbackValue = "",
      required = true,
      description = "Write to this file; without a name, to the output.")
  private String csv;

  @Option(names = "--force", description = "Overwrite a file that is there.")
  private boolean force;

  /** Made by the command line reader. */
  public ExportCommand() {}

  @Override
  public Integer call() throws Fault {
    Procedure procedure = ProcedureFile.load(file).procedure();
    String table = TableText.of(procedure);
    PrintWriter out = spec.commandLine().getOut();
    if (csv.isEmpty()) {
      out.print(table);
    } else {
      NewFile.write(Path.of(csv), "\uFEFF" + table, force);
      out.println("Wrote " + csv);
    }
    out.flush();
    if (sameAgain(procedure, table)) {
      return 0;
    }
    PrintWriter err = spec.commandLine().getErr();
    err.println("Not in the table: a word or blank that a table has another meaning for");
    err.flush();
    return 3;
  }

  private static boolean sameAgain(Procedure procedure, String table) {
    try {
      TorqueTable again = TorqueTable.readAgain(table);
      return again.faults().isEmpty()
          && ProcedureFile.of(Path.of("again.json"), again.json()).procedure().equals(procedure);
    } catch (Fault e) {
      return false;
    }
  }
}
