package org.undercall.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.files.OwnWordsFile;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.intent.OwnWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a file of own words and prints what each means. */
@Command(
    name = "words",
    description = "Check your own wordings, and print what each stands for.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {"0:they can be used", "1:they cannot; a line for each fault", "2:wrong usage"})
public final class WordsCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "FILE.json",
      arity = "0..1",
      description = "The file (default: undercall/words.json at home).")
  private Path file;

  @Mixin private ModelOption model;
  @Spec private CommandSpec spec;

  /** A command that picocli fills in. */
  public WordsCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    Optional<Path> found = OwnWordsOption.file(file);
    if (found.isEmpty()) {
      out.println("No own words: there is no undercall/words.json at home.");
      return 0;
    }
    OwnWords own = OwnWordsFile.read(found.get());
    try (SpeechModel loaded = model.load(spec.commandLine().getErr())) {
      OwnWordsOption.requireKnown(loaded, own, found.get());
    }
    own.wordings()
        .forEach(
            (wording, kind) ->
                out.printf(
                    "%-40s %s, as \"%s\"%n",
                    wording, OwnWordsFile.name(kind), own.inStandard(wording)));
    out.flush();
    return 0;
  }
}
