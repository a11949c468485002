package org.undercall.command.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.undercall.adapter.desk.DeskActs;
import org.undercall.adapter.desk.DeskServer;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.procedure.SourceText;
import org.undercall.command.front.Choosing;
import org.undercall.command.front.Chosen;
import org.undercall.command.front.Offer;
import org.undercall.command.front.ProcedureShelf;
import org.undercall.command.front.Terminal;
import org.undercall.command.option.BoardOptions;
import org.undercall.command.work.DemoCommand;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.session.OpenSessions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Serves the page at which a procedure is written. */
@Command(
    name = "desk",
    description = {
      "Write, check and rehearse a procedure on a page in the browser, on this machine only.",
      "It ends with Ctrl-C."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = "0:ended")
public final class DeskCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "PROCEDURE",
      arity = "0..1",
      description =
          "The procedure file, JSON or YAML; one that is not there yet is written when it is saved."
              + " Without one, choose from what is found.")
  private Path file;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      defaultValue = "7391",
      description = "The port of the page; 0 for any free one (default: ${DEFAULT-VALUE}).")
  private int port;

  /** Made by the command line reader. */
  public DeskCommand() {}

  @Override
  public Integer call() throws Fault, IOException, InterruptedException {
    BoardOptions.requirePort("--port", port, spec);
    PrintWriter out = spec.commandLine().getOut();
    Path chosen = file == null ? asked(out) : file;
    if (!ProcedureFile.named(chosen)) {
      throw wrong("found " + chosen + ", expected a name that ends in .json, .yaml or .yml");
    }
    DeskFile desk = new DeskFile(chosen, Clock.system(ZoneId.systemDefault()));
    SourceText source = desk.source();
    try (DeskServer server = DeskServer.start(port, acts(desk))) {
      out.println((source.sha256().isEmpty() ? "New file: " : "File: ") + chosen);
      out.println("Desk: " + server.address());
      out.println("It is for this machine and this browser only. Ctrl-C ends it.");
      out.flush();
      new CountDownLatch(1).await();
    }
    return 0;
  }

  private Path asked(PrintWriter out) throws IOException {
    ProcedureShelf shelf = ProcedureShelf.standard(DemoCommand.shared().resolve("procedures"));
    Offer offer = new Offer(new OpenSessions(List.of(), 0, List.of()), shelf);
    return new Choosing(Terminal.ofProgram(), out)
        .choose(offer, Time.ofMachine().now().wall())
        .filter(Chosen.Fresh.class::isInstance)
        .map(found -> ((Chosen.Fresh) found).file())
        .orElseThrow(() -> wrong("found no PROCEDURE and no choice, expected one"));
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  /** What the page can ask of a file. */
  static DeskActs acts(DeskFile desk) {
    DeskPractice practice = new DeskPractice();
    return new DeskActs(
        Map.of(
            "/read", asked -> desk.read(),
            "/judge", asked -> desk.judged(asked).json(),
            "/text", desk::text,
            "/save", desk::save,
            "/beside", desk::beside,
            "/begin", asked -> practice.begin(desk.judged(asked).procedure()),
            "/say", practice::say,
            "/heard", practice::heard));
  }
}
