package org.undercall.command.doctor;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercall.command.front.ProcedureShelf;
import org.undercall.command.option.BoardOptions;
import org.undercall.command.option.MicrophoneOption;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.SessionsOption;
import org.undercall.command.option.UserFolders;
import org.undercall.command.work.DemoCommand;
import org.undercall.session.OpenSessions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks whether everything is there that the work needs. */
@Command(
    name = "doctor",
    description = "Look whether everything is there that the work needs, and say what to do.",
    mixinStandardHelpOptions = true,
    exitCodeList = {"0:it can work", "1:it cannot; what is a fault says why"})
public final class DoctorCommand implements Callable<Integer> {
  private static final long LIMIT_MILLIS = 15_000;

  @Spec private CommandSpec spec;
  @Mixin private ModelOption model;

  @Mixin private SessionsOption sessions;

  @Mixin private MicrophoneOption microphone;

  @Option(
      names = "--board-port",
      paramLabel = "PORT",
      defaultValue = "7390",
      description = "The port of the board; 0 for any free one (default: ${DEFAULT-VALUE}).")
  private int port;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  /** Made by the command line reader. */
  public DoctorCommand() {}

  @Override
  public Integer call() throws InterruptedException {
    BoardOptions.requirePort("--board-port", port, spec);
    PrintWriter out = spec.commandLine().getOut();
    Doctor doctor = new Doctor(checks(), LIMIT_MILLIS);
    List<Doctor.Result> results =
        doctor.run(
            result -> {
              if (!json) {
                out.println(DoctorText.line(result));
                out.flush();
              }
            });
    out.print(json ? DoctorJson.of(results) : DoctorText.verdict(results) + "\n");
    out.flush();
    return Doctor.ready(results) ? 0 : 1;
  }

  private List<Check> checks() {
    Path demonstrations = DemoCommand.shared().resolve("procedures");
    return List.of(
        JavaCheck.ofMachine(),
        RecogniserCheck.ofMachine(),
        ModelCheck.of(model::verified),
        MicrophoneCheck.named(microphone.name()),
        SpeakerCheck.ofMachine(),
        VoiceCheck.standard(),
        EchoCheck.ofMachine(),
        DiskCheck.of(sessions.folder()),
        BoardCheck.ofMachine(port),
        new ProceduresCheck(
            () -> ProcedureShelf.standard(demonstrations), LocalDate.now(ZoneId.systemDefault())),
        new SessionsCheck(() -> OpenSessions.in(sessions.folder())),
        new PlacesCheck(UserFolders.ofMachine()));
  }
}
