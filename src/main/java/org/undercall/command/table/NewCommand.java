package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.files.ProcedureFaults;
import org.undercall.adapter.files.ProcedureFile;
import org.undercall.adapter.table.TableFaults;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.command.table.TypedTable.Doubt;
import org.undercall.command.table.TypedTable.Question;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks for a procedure, fastener by fastener, and writes it. */
@Command(
    name = "new",
    description = {
      "Ask for a procedure at the keyboard, fastener by fastener, and write it.",
      "Each answer is checked; what cannot be taken is asked again, nothing is guessed."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:written, and clean under check",
      "1:a fault, or broken off; what was typed is kept as a table beside it",
      "2:wrong usage",
      "3:written, and the check has found something"
    })
public final class NewCommand implements Callable<Integer> {
  private final Reader keyboard;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE.json", description = "The procedure file to write.")
  private Path file;

  @Option(names = "--force", description = "Overwrite a file that is there.")
  private boolean force;

  private final TypedTable table = new TypedTable();
  private BufferedReader answers;
  private PrintWriter out;

  /** Nothing more can be typed. */
  private static final class BrokenOff extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /** Made by the command line reader. */
  public NewCommand() {
    this(new InputStreamReader(System.in, Charset.defaultCharset()));
  }

  NewCommand(Reader keyboard) {
    this.keyboard = keyboard;
  }

  @Override
  public Integer call() throws TableFaults, ProcedureFaults {
    NewFile.require(file, force);
    answers = new BufferedReader(keyboard);
    out = spec.commandLine().getOut();
    out.println("The values are yours to answer for, from the maker's repair data.");
    try {
      head();
      while (fastener()) {
        out.println("Taken. The next one, or Enter alone if that was the last.");
      }
    } catch (BrokenOff e) {
      return brokenOff();
    }
    return table.isEmpty() ? nothing() : written(table.read());
  }

  private void head() throws BrokenOff, TableFaults {
    table.head("title", needed("Title of the procedure"));
    table.head("vehicle", needed("Vehicle"));
    table.head("author", needed("Who writes it"));
    table.head("revision", asked("Revision", "1"));
    table.head("source", needed("Where the values come from"));
    table.head("caution", asked("Caution", "Stands carry the car. Never work under a jack alone."));
    List<Doubt> doubts;
    do {
      table.head("tool", needed("Torque wrench: name; least; most; Nm; calibrated on"));
      doubts = table.doubtsOfHead();
      doubts.forEach(doubt -> out.println("  " + doubt.told()));
    } while (!doubts.isEmpty());
  }

  /** One fastener; no if it was the last. */
  private boolean fastener() throws BrokenOff, TableFaults {
    Map<Question, String> row = new EnumMap<>(Question.class);
    String name = asked(Question.FASTENER.text() + " (Enter alone: done)", "");
    if (name.isBlank()) {
      return false;
    }
    row.put(Question.FASTENER, name);
    for (Question question : Question.values()) {
      if (question != Question.FASTENER) {
        row.put(question, answer(question));
      }
    }
    for (List<Doubt> doubts = table.doubts(row); !doubts.isEmpty(); doubts = table.doubts(row)) {
      Doubt first = doubts.get(0);
      out.println("  " + first.told());
      if (first.question().isEmpty()) {
        out.println("  This fastener is left out.");
        return true;
      }
      row.put(first.question().get(), answer(first.question().get()));
    }
    table.add(row);
    return true;
  }

  private String answer(Question question) throws BrokenOff {
    return question.otherwise().isEmpty()
        ? needed(question.text())
        : asked(question.text(), question.otherwise());
  }

  private String needed(String question) throws BrokenOff {
    String answer = asked(question, "");
    while (answer.isBlank()) {
      out.println("  found nothing, expected an answer");
      answer = asked(question, "");
    }
    return answer;
  }

  private String asked(String question, String otherwise) throws BrokenOff {
    out.print(question + (otherwise.isEmpty() ? ": " : " [" + otherwise + "]: "));
    out.flush();
    try {
      String line = Optional.ofNullable(answers.readLine()).orElseThrow(BrokenOff::new).strip();
      return line.isEmpty() ? otherwise : line;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int nothing() {
    spec.commandLine().getErr().println("USE-001 found no fastener, expected at least one");
    return 1;
  }

  private int brokenOff() throws TableFaults {
    out.println();
    if (!table.isEmpty()) {
      Path kept = Path.of(file + ".csv");
      NewFile.write(kept, table.csv(), force);
      out.println("Broken off. What was typed is kept for import: " + kept);
    }
    out.flush();
    return 1;
  }

  private int written(TorqueTable read) throws ProcedureFaults, TableFaults {
    List<Finding> findings =
        ProcedureCheck.of(
            ProcedureFile.of(file, read.json()).procedure(), LocalDate.now(ZoneId.systemDefault()));
    for (Finding finding : findings) {
      out.println(
          finding.rule().code()
              + " "
              + finding.pointer()
              + ": found "
              + finding.found()
              + ", expected "
              + finding.expected());
    }
    NewFile.write(file, read.json(), force);
    out.println("Wrote " + file);
    out.flush();
    return ProcedureCheck.heaviest(findings).filter(s -> s != Severity.REMARK).isEmpty() ? 0 : 3;
  }
}
