package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Interview;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks for a procedure, question by question, and writes it. */
@Command(
    name = "new",
    description = {
      "Ask for a procedure, question by question, and write it.",
      "Each answer is checked; what cannot be taken is asked again, nothing is guessed."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:written, and clean under check",
      "1:a fault, or broken off; the answers are kept as a table beside it",
      "3:written, and the check has found something"
    })
public final class NewCommand implements Callable<Integer> {
  private final Reader keyboard;
  private final Clock clock;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE.json", description = "The procedure file to write.")
  private Path file;

  @Option(names = "--force", description = "Overwrite a file that is there.")
  private boolean force;

  @Mixin private VoiceOptions byVoice;

  /** Made by the command line reader. */
  public NewCommand() {
    this(
        new InputStreamReader(System.in, Charset.defaultCharset()),
        Clock.system(ZoneId.systemDefault()));
  }

  NewCommand(Reader keyboard, Clock clock) {
    this.keyboard = keyboard;
    this.clock = clock;
  }

  @Override
  public Integer call() throws Exception {
    byVoice.check();
    NewFile.require(file, force);
    PrintWriter out = spec.commandLine().getOut();
    BufferedReader answers = new BufferedReader(keyboard);
    TableJudge judge = new TableJudge(clock);
    KeptAnswers kept = new KeptAnswers(file);
    out.println("The values are yours to answer for, from the maker's repair data.");
    try {
      Interview begun = new Interview(begun(kept, answers, out));
      Interview whole =
          byVoice.wanted()
              ? spoken(begun, answers, judge, kept)
              : new TypedInterview(answers, out, judge, kept).run(begun);
      return written(whole.draft(), kept, out);
    } catch (TypedInterview.BrokenOff e) {
      out.println();
      if (kept.areThere()) {
        out.println("Broken off. The answers are kept in " + kept.file() + ";");
        out.println("the same command takes them up, import makes a procedure of whole steps.");
      }
      out.flush();
      return 1;
    }
  }

  private Interview spoken(
      Interview begun, BufferedReader answers, TableJudge judge, KeptAnswers kept)
      throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    return byVoice.ask(
        spec.commandLine(),
        (ear, voice) -> {
          VoicedInterview.Ports ports = new VoicedInterview.Ports(ear, voice, answers, out);
          return new VoicedInterview(ports, judge, kept).run(begun);
        });
  }

  /** Nothing, or what was kept and is wanted. */
  private static Draft begun(KeptAnswers kept, BufferedReader answers, PrintWriter out)
      throws Fault, TypedInterview.BrokenOff {
    if (!kept.areThere()) {
      return Draft.EMPTY;
    }
    String answer =
        TypedInterview.line(
            answers, out, kept.file() + " holds answers. Take them up: yes or no [yes]: ");
    if (answer.toLowerCase(Locale.ROOT).startsWith("n")) {
      out.println("Put aside: " + kept.putAside());
      return Draft.EMPTY;
    }
    Draft draft = kept.takeUp();
    new Interview(draft).list().forEach(line -> out.println("  " + line));
    return draft;
  }

  private int written(Draft draft, KeptAnswers kept, PrintWriter out) throws Fault {
    TorqueTable read = TableJudge.read(draft);
    Procedure procedure = ProcedureFile.of(file, read.json()).procedure();
    NewFile.write(file, read.json(), force);
    kept.remove();
    out.println("Wrote " + file);
    out.flush();
    return ProcedureCheck.heaviest(new TableJudge(clock).findings(procedure))
            .filter(s -> s != Severity.REMARK)
            .isEmpty()
        ? 0
        : 3;
  }
}
