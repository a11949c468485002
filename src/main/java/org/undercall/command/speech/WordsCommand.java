package org.undercall.command.speech;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.words.OwnWordsBlank;
import org.undercall.adapter.words.OwnWordsFile;
import org.undercall.adapter.words.OwnWordsFiles;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.OwnWordsOption;
import org.undercall.command.option.UserFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks files of own words and prints what each means, or prints one to fill in. */
@Command(
    name = "words",
    description = "Check your own wordings, and print what each stands for.",
    mixinStandardHelpOptions = true,
    exitCodeList = {"0:they can be used", "1:they cannot; a line for each fault"})
public final class WordsCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description = "The files, JSON or YAML (default: words.json beside your settings).")
  private List<Path> files = List.of();

  @Option(
      names = "--typed",
      description = "Do not hold them against the speech model: they are for typed phrases only.")
  private boolean typed;

  @Option(
      names = "--blank",
      paramLabel = "LANGUAGE",
      description = "Print a file to fill in for a language, such as de or pt-BR.")
  private String blank;

  @Mixin private ModelOption model;
  @Spec private CommandSpec spec;

  /** A command that picocli fills in. */
  public WordsCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    List<Path> found = OwnWordsOption.files(files);
    if (blank != null) {
      out.print(OwnWordsBlank.text(blank));
    } else if (found.isEmpty()) {
      out.println("No own words: there is no \"" + UserFolders.ofMachine().words().used() + "\".");
    } else {
      OwnWordsFiles all = OwnWordsFiles.read(found);
      if (!typed) {
        try (SpeechModel loaded = model.load(spec.commandLine().getErr())) {
          OwnWordsOption.requireKnown(loaded, all);
        }
      }
      all.packs().forEach(pack -> print(pack, all, out));
    }
    out.flush();
    return 0;
  }

  private static void print(OwnWordsFiles.Pack pack, OwnWordsFiles all, PrintWriter out) {
    String language = pack.language().map(Locale::toLanguageTag).orElse("no language stated");
    out.printf("%s, %s, wordings: %d%n", pack.file(), language, pack.wordings().size());
    pack.wordings()
        .forEach(
            (wording, kind) ->
                out.printf(
                    "%-40s %s, as \"%s\"%n",
                    wording, OwnWordsFile.name(kind), all.own().inStandard(wording)));
  }
}
