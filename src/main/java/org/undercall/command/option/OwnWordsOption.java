package org.undercall.command.option;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.undercall.adapter.recogniser.OwnWordsMaker;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.words.OwnWordsFile;
import org.undercall.adapter.words.OwnWordsFiles;
import org.undercall.adapter.words.WordsCode;
import org.undercall.core.intent.OwnWords;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** The option {@code --words}, for every command that hears phrases. */
public final class OwnWordsOption {
  @Option(
      names = "--words",
      paramLabel = "FILE",
      split = ",",
      description =
          "Your own wordings, or a pack of another language; repeatable"
              + " (default: words.json beside your settings, if it is there).")
  private List<Path> files = List.of();

  /** Made by the command line reader. */
  public OwnWordsOption() {}

  /** The named files, or the one beside the settings ({@code UNDERCALL_WORDS} names others). */
  public static List<Path> files(List<Path> named) {
    if (!named.isEmpty()) {
      return named;
    }
    String others = System.getenv("UNDERCALL_WORDS");
    if (others != null && !others.isBlank()) {
      return Pattern.compile(File.pathSeparator, Pattern.LITERAL)
          .splitAsStream(others)
          .map(Path::of)
          .toList();
    }
    return Stream.of(UserFolders.ofMachine().words().used()).filter(Files::exists).toList();
  }

  /** The own words; none if there is no file. */
  public OwnWords load() throws Fault {
    return read().own();
  }

  private OwnWordsFiles read() throws Fault {
    return OwnWordsFiles.read(files(files));
  }

  /**
   * Recognisers that also listen for the own words. They close the model, as a fault does.
   *
   * @throws Fault WRD-006 if the model does not know one of them
   */
  public RecogniserMaker of(SpeechModel model, OwnWords own) throws Fault {
    if (own.wordings().isEmpty()) {
      return model;
    }
    try {
      requireKnown(model, read());
    } catch (Fault e) {
      model.close();
      throw e;
    }
    return new OwnWordsMaker(model, own);
  }

  /** Refuses wordings with words that the model does not know, each with its file. */
  public static void requireKnown(SpeechModel model, OwnWordsFiles all) throws Fault {
    List<Fault.Finding> faults = new ArrayList<>();
    for (String wording : all.own().wordings().keySet()) {
      for (String word : model.unknownWords(List.of(wording.split(" ", -1)))) {
        String found = "\"" + word + "\" in \"" + wording + "\"";
        faults.add(
            OwnWordsFile.fault(
                WordsCode.UNKNOWN_WORD,
                all.fileOf(wording),
                found,
                "words that the speech model knows"));
      }
    }
    if (!faults.isEmpty()) {
      throw new Fault(faults);
    }
  }
}
