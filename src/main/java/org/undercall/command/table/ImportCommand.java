package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.table.Answers;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.command.front.Terminal;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a procedure of a table, or names every cell that is doubtful. */
@Command(
    name = "import",
    description = {
      "Make a procedure of a table of torques (CSV, XLSX or ODS).",
      "Nothing is guessed: with one doubtful cell no procedure is written, and every one is named.",
      "What is doubtful is asked: at the keyboard, or in a file of answers beside the table."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:written, or with --preview nothing is doubtful",
      "1:doubtful cells or another fault, or the changes were not taken; nothing written",
      "3:the check of the procedure found errors or warnings; nothing written"
    })
public final class ImportCommand implements Callable<Integer> {
  /** Stands for the place of a finding, so that those alike are told once. */
  private static final String PLACE = "\u0000";

  private static final Pattern STEP = Pattern.compile("/phases/[0-9]+/steps/[0-9]+");

  private final Clock clock;
  private final BufferedReader keyboard;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "TABLE", description = "The table: .csv, .tsv, .txt, .xlsx or .ods.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The procedure file (default: name of the table with .json, here).")
  private Path out;

  @Option(
      names = "--map",
      paramLabel = "COLUMN=MEANING",
      description = "What a column means, by heading or letters; - for nothing. Repeatable.")
  private Map<String, String> map = new LinkedHashMap<>();

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "A value that has no column or line above the table. Repeatable.")
  private List<String> set = new ArrayList<>();

  @Option(names = "--source", paramLabel = "TEXT", description = "Where the values come from.")
  private String source;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet of a workbook; all for all that are alike.")
  private String sheet;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "What was answered about the table (default: beside it, .answers.csv).")
  private Path answersFile;

  @Option(
      names = "--ask",
      negatable = true,
      description = "Ask at the keyboard what is doubtful (default: at a terminal).")
  private Boolean ask;

  @Option(names = "--force", description = "Take all changes into a file that is there, unasked.")
  private boolean force;

  @Option(names = "--preview", description = "Read and check, but write nothing.")
  private boolean preview;

  @Option(
      names = "--despite-findings",
      description = "Write also if the check found errors or warnings.")
  private boolean despiteFindings;

  /** Made by the command line reader. */
  public ImportCommand() {
    this(
        Clock.system(ZoneId.systemDefault()),
        new InputStreamReader(System.in, Charset.defaultCharset()));
  }

  ImportCommand(Clock clock, Reader keyboard) {
    this.clock = clock;
    this.keyboard = new BufferedReader(keyboard);
  }

  @Override
  public Integer call() throws Fault {
    PrintWriter lines = spec.commandLine().getOut();
    ListAnswers kept =
        ListAnswers.in(
            Optional.ofNullable(answersFile).orElseGet(() -> Path.of(file + ".answers.csv")),
            lines);
    Answers answers = kept.read();
    TorqueTable table = TorqueTable.read(file, wishes(answers));
    table.preview().forEach(lines::println);
    lines.flush();
    if (!table.questions().isEmpty() && asks()) {
      List<String> shown = table.preview();
      TableInterview interview = new TableInterview(keyboard, lines, answers, kept.ofOthers());
      table = interview.ask(table, more -> TorqueTable.read(file, wishes(more)));
      answers = interview.answers();
      if (!table.preview().equals(shown)) {
        table.preview().forEach(lines::println);
      }
      if (!preview) {
        kept.keep(answers, table.questions());
        kept.keepForOthers(answers);
      }
    }
    if (!table.faults().isEmpty()) {
      if (!asks() && !preview) {
        kept.keep(answers, table.questions());
      }
      return faults(table.faults());
    }
    return judged(table, lines);
  }

  private boolean asks() {
    return ask == null ? !preview && Terminal.ofProgram().attended() : ask;
  }

  private int judged(TorqueTable table, PrintWriter lines) throws Fault {
    Path target = Optional.ofNullable(out).orElseGet(this::besideTable);
    Procedure procedure;
    try {
      procedure = ProcedureFile.of(target, table.json()).procedure();
    } catch (Fault e) {
      return faults(
          e.findings().stream()
              .map(
                  f ->
                      new Fault.Finding(
                          f.code(), place(f.place().pointer(), table), f.found(), f.expected()))
              .toList());
    }
    Replacing replacing = Replacing.told(target, procedure, lines);
    return written(replacing, judged(procedure, table, lines), table, lines);
  }

  private int written(Replacing replacing, boolean clean, TorqueTable table, PrintWriter lines)
      throws Fault {
    if (!clean && !despiteFindings && !isWantedAllTheSame(lines)) {
      lines.println("Nothing written; --despite-findings writes it all the same.");
      lines.flush();
      return 3;
    }
    if (!preview && !replacing.written(table.json(), keyboard, asks(), force)) {
      return 1;
    }
    lines.flush();
    return clean ? 0 : 3;
  }

  /** Asks, if somebody can be asked; whatever is no plain yes is none. */
  private boolean isWantedAllTheSame(PrintWriter lines) {
    return !preview
        && asks()
        && TypedInterview.saysYes(keyboard, lines, "Write it all the same? yes / no [no]: ");
  }

  private TorqueTable.Wishes wishes(Answers answers) {
    List<Map.Entry<String, String>> given = new ArrayList<>();
    for (String entry : set) {
      int cut = entry.indexOf('=');
      if (cut < 1) {
        throw new ParameterException(
            spec.commandLine(), "--set: found \"" + entry + "\", expected NAME=VALUE");
      }
      given.add(Map.entry(entry.substring(0, cut), entry.substring(cut + 1)));
    }
    Optional.ofNullable(source).ifPresent(text -> given.add(Map.entry("source", text)));
    return new TorqueTable.Wishes(given, map, Optional.ofNullable(sheet), answers);
  }

  private Path besideTable() {
    String name = String.valueOf(file.getFileName());
    return Path.of(name.substring(0, name.lastIndexOf('.')) + ".json");
  }

  private boolean judged(Procedure procedure, TorqueTable table, PrintWriter lines) {
    List<Finding> findings = ProcedureCheck.of(procedure, LocalDate.now(clock));
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (Finding finding : findings) {
      alike
          .computeIfAbsent(finding.at(PLACE), line -> new ArrayList<>())
          .add(place(finding.pointer(), table));
    }
    alike.forEach((line, places) -> lines.println(line.replace(PLACE, Rows.joined(places))));
    return ProcedureCheck.heaviest(findings).filter(s -> s != Severity.REMARK).isEmpty();
  }

  /** The row of a step, or the procedure. */
  private String place(String pointer, TorqueTable table) {
    Matcher step = STEP.matcher(pointer);
    String name = String.valueOf(file.getFileName());
    return step.lookingAt() && table.rows().containsKey(step.group())
        ? name + " " + table.rows().get(step.group())
        : name + " " + pointer;
  }

  private int faults(List<?> faults) {
    PrintWriter err = spec.commandLine().getErr();
    faults.forEach(err::println);
    err.println("Nothing written: " + faults.size() + " doubtful.");
    err.flush();
    return 1;
  }
}
