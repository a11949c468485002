package org.undercall.command.procedure;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.PartsFirst;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.FetchSheet;
import org.undercall.adapter.report.JobSheet;
import org.undercall.adapter.report.WalkText;
import org.undercall.command.fleet.LearnedTime;
import org.undercall.command.option.SessionsOption;
import org.undercall.command.option.SheetFile;
import org.undercall.core.decision.WalkThrough;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a procedure before it is used. */
@Command(
    name = "show",
    description = {
      "Print what to lay out for a procedure, and its walk as the technician will hear it.",
      "With --sheet also a sheet of paper to fill in by hand, as HTML or PDF; with --fetch one for"
          + " the wall of what to fetch."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = "0:shown")
public final class ShowCommand implements Callable<Integer> {
  /** What paper the sheet is for. */
  enum Paper {
    A4,
    LETTER
  }

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROCEDURE", description = "The procedure file.")
  private Path file;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Write the job sheet to a file that ends in .html or .pdf.")
  private Path sheet;

  @Option(
      names = "--fetch",
      paramLabel = "FILE",
      description = "Write what to fetch, one page for the wall, to a .html or .pdf file.")
  private Path fetch;

  @Mixin private SessionsOption sessions;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "a4 or letter (default: ${DEFAULT-VALUE}).")
  private Paper paper;

  /** Made by the command line reader. */
  public ShowCommand() {}

  @Override
  public Integer call() throws Fault {
    PrintWriter out = spec.commandLine().getOut();
    Optional<SheetFile> wanted = file("--sheet", sheet);
    Optional<SheetFile> wall = file("--fetch", fetch);
    LoadedProcedure loaded = ProcedureFile.load(file);
    Walk walk = Walk.of(loaded.procedure());
    Set<String> sums = new HashSet<>(List.of(loaded.sha256(), PartsFirst.of(loaded).sha256()));
    Optional<String> took = LearnedTime.of(sessions.folder(), sums).map(LearnedTime::words);
    out.print(WalkText.of(walk, WalkThrough.of(walk), took));
    out.print(PartsText.of(loaded.assembled().parts()));
    if (wanted.isPresent()) {
      wanted.get().write(JobSheet.of(walk, paper == Paper.LETTER));
      out.println("Wrote " + sheet);
    }
    if (wall.isPresent()) {
      wall.get().write(FetchSheet.of(loaded.procedure(), took, paper == Paper.LETTER));
      out.println("Wrote " + fetch);
    }
    out.flush();
    return 0;
  }

  private Optional<SheetFile> file(String option, Path named) {
    return Optional.ofNullable(named).map(path -> SheetFile.of(option, path, spec.commandLine()));
  }
}
