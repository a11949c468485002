package org.undercall.command.procedure;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercall.adapter.procedure.FilePlaces;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.FindingsJson;
import org.undercall.adapter.report.FindingsText;
import org.undercall.adapter.report.PlacedFinding;
import org.undercall.command.option.SessionsOption;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import org.undercall.port.Fault;
import org.undercall.session.CountedUses;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges a procedure file before it is used. */
@Command(
    name = "check",
    description = {
      "Judge a procedure file before it is used.",
      "The uses of its tools are counted from the folder of sessions."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:no finding above a remark",
      "1:the file cannot be used, one line for each fault",
      "3:errors or warnings were found"
    })
public final class CheckCommand implements Callable<Integer> {
  /** Exit status: no finding above a remark. */
  public static final int CLEAN = 0;

  /** Exit status: the file cannot be used. */
  public static final int FAULT = 1;

  /** Exit status: there are errors or warnings. */
  public static final int FOUND = 3;

  private final Clock clock;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROCEDURE", description = "The procedure file.")
  private Path file;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "The day on which tools are used, such as 2026-03-31 (default: today).")
  private LocalDate on;

  @Mixin private SessionsOption sessions;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  /** Made by the command line reader. */
  public CheckCommand() {
    this(Clock.system(ZoneId.systemDefault()));
  }

  CheckCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws Fault {
    return report(ProcedureFile.load(file));
  }

  private int report(LoadedProcedure loaded) throws Fault {
    LocalDate day = on == null ? LocalDate.now(clock) : on;
    CountedUses counted = CountedUses.in(sessions.folder(), loaded.procedure().tools());
    PrintWriter err = spec.commandLine().getErr();
    counted.faults().forEach(fault -> err.println("Uses not counted: " + fault));
    err.flush();
    List<Finding> findings = ProcedureCheck.of(loaded.procedure(), day, counted.uses());
    List<PlacedFinding> placed = findings.stream().map(f -> placed(f, loaded.places())).toList();
    String name = String.valueOf(file.getFileName());
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        json
            ? FindingsJson.of(name, day, placed)
            : FindingsText.of(placed) + PartsText.of(loaded.assembled().parts()));
    out.flush();
    boolean clean = ProcedureCheck.heaviest(findings).filter(s -> s != Severity.REMARK).isEmpty();
    return clean ? CLEAN : FOUND;
  }

  private static PlacedFinding placed(Finding finding, FilePlaces places) {
    return new PlacedFinding(finding, places.of(finding.pointer()));
  }
}
