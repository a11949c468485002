package org.undercall.command;

import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.undercall.command.clips.ClipsCommand;
import org.undercall.command.desk.DeskCommand;
import org.undercall.command.doctor.DoctorCommand;
import org.undercall.command.ear.EarCommand;
import org.undercall.command.ear.ListenCommand;
import org.undercall.command.ear.MicrophonesCommand;
import org.undercall.command.figure.FigureCommand;
import org.undercall.command.fleet.CompareCommand;
import org.undercall.command.fleet.SessionsCommand;
import org.undercall.command.front.FrontPage;
import org.undercall.command.option.UseCode;
import org.undercall.command.option.UserFolders;
import org.undercall.command.procedure.CheckCommand;
import org.undercall.command.procedure.DiffCommand;
import org.undercall.command.procedure.ShowCommand;
import org.undercall.command.proof.KeyCommand;
import org.undercall.command.proof.SignCommand;
import org.undercall.command.proof.VerifyCommand;
import org.undercall.command.record.ReportCommand;
import org.undercall.command.record.ReviewCommand;
import org.undercall.command.speech.PrepareCommand;
import org.undercall.command.speech.SayCommand;
import org.undercall.command.speech.WordsCommand;
import org.undercall.command.table.AssembleCommand;
import org.undercall.command.table.ExportCommand;
import org.undercall.command.table.ImportCommand;
import org.undercall.command.table.NewCommand;
import org.undercall.command.work.DemoCommand;
import org.undercall.command.work.RehearseCommand;
import org.undercall.command.work.WorkCommand;
import org.undercall.core.term.Refused;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.UncheckedFault;
import org.undercall.session.OpenSessions;
import org.undercall.text.ProgramVersion;
import org.undercall.text.Shown;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.PropertiesDefaultProvider;
import picocli.CommandLine.Spec;

/** The command line entry. */
@Command(
    name = "undercall",
    description = "Offline, hands-free torque assistant.",
    mixinStandardHelpOptions = true,
    exitCodeList = "0:all is well",
    subcommands = {
      DemoCommand.class,
      WorkCommand.class,
      RehearseCommand.class,
      ReviewCommand.class,
      SessionsCommand.class,
      CompareCommand.class,
      ClipsCommand.class,
      VerifyCommand.class,
      SignCommand.class,
      KeyCommand.class,
      ReportCommand.class,
      CheckCommand.class,
      ShowCommand.class,
      DiffCommand.class,
      DeskCommand.class,
      NewCommand.class,
      ImportCommand.class,
      ExportCommand.class,
      AssembleCommand.class,
      FigureCommand.class,
      SayCommand.class,
      ListenCommand.class,
      MicrophonesCommand.class,
      EarCommand.class,
      PrepareCommand.class,
      DoctorCommand.class,
      WordsCommand.class,
      CompletionCommand.class
    })
public final class App implements Runnable {
  /** What an exit code means if a command does not say otherwise. */
  private static final Map<String, String> FAULTS =
      Map.of("1", "a fault, one line with its code", "2", "wrong usage");

  @Spec private CommandSpec spec;

  /** Made by the command line reader. */
  public App() {}

  /**
   * Starts the program.
   *
   * @param args the command and its options
   */
  public static void main(String[] args) {
    CommandLine line = withSettings(commandLine(), UserFolders.ofMachine().settings().used());
    System.exit(new StillWorking(System.err).during(args, () -> line.execute(args)));
  }

  /** The command line with all commands; a test may set where it prints to. */
  public static CommandLine commandLine() {
    CommandLine line = new CommandLine(new App());
    completed(line, "undercall " + ProgramVersion.TEXT);
    return Examples.addTo(line)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(App::fault)
        .setParameterExceptionHandler(App::wrongUsage);
  }

  /** Every command tells the program's version, and what all exit codes have in common. */
  private static void completed(CommandLine line, String version) {
    CommandSpec spec = line.getCommandSpec().version(version);
    Map<String, String> own = spec.usageMessage().exitCodeList();
    if (!own.isEmpty()) {
      Map<String, String> all = new TreeMap<>(FAULTS);
      all.putAll(own);
      spec.usageMessage().exitCodeListHeading("%nExit status:%n").exitCodeList(all);
    }
    line.getSubcommands().values().forEach(below -> completed(below, version));
  }

  /** Takes defaults for options from a file, if it is there. */
  public static CommandLine withSettings(CommandLine line, Path file) {
    return Files.exists(file)
        ? line.setDefaultValueProvider(new PropertiesDefaultProvider(file.toFile()))
        : line;
  }

  @Override
  public void run() {
    PrintWriter out = spec.commandLine().getOut();
    OpenSessions sessions = OpenSessions.in(UserFolders.ofMachine().sessions().used());
    FrontPage.lines(sessions, Time.ofMachine().now().wall()).forEach(out::println);
    out.flush();
  }

  /** A fault with a code is one line; anything else is a fault of the program and shows where. */
  private static int fault(Exception fault, CommandLine line, ParseResult parsed) {
    PrintWriter err = line.getErr();
    if (fault instanceof Fault || fault instanceof UncheckedFault || fault instanceof Refused) {
      err.println(fault.getMessage());
    } else if (fault instanceof FileSystemException place) {
      err.println(
          new Fault.Finding(
              UseCode.NO_ACCESS,
              Shown.plain(String.valueOf(place.getFile())),
              Fault.kind(place),
              "a place that can be read and written"));
    } else {
      err.println("BUG-001 " + fault);
      fault.printStackTrace(err);
    }
    err.flush();
    return CommandLine.ExitCode.SOFTWARE;
  }

  private static int wrongUsage(ParameterException fault, String[] args) {
    CommandLine line = fault.getCommandLine();
    String name = line.getCommandSpec().qualifiedName();
    line.getErr()
        .println(UseCode.WRONG_USAGE.id() + " " + fault.getMessage() + "; see " + name + " --help");
    line.getErr().flush();
    return CommandLine.ExitCode.USAGE;
  }
}
