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
import org.undercall.adapter.words.OwnWordsFault;
import org.undercall.adapter.words.OwnWordsFiles;
import org.undercall.core.intent.OwnWords;
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
  public OwnWords load() throws OwnWordsFault {
    return read().own();
  }

  private OwnWordsFiles read() throws OwnWordsFault {
    return OwnWordsFiles.read(files(files));
  }

  /**
   * Recognisers that also listen for the own words. They close the model, as a fault does.
   *
   * @throws OwnWordsFault WRD-006 if the model does not know one of them
   */
  public RecogniserMaker of(SpeechModel model, OwnWords own) throws OwnWordsFault {
    if (own.wordings().isEmpty()) {
      return model;
    }
    try {
      requireKnown(model, read());
    } catch (OwnWordsFault e) {
      model.close();
      throw e;
    }
    return new OwnWordsMaker(model, own);
  }

  /** Refuses wordings with words that the model does not know, each with its file. */
  public static void requireKnown(SpeechModel model, OwnWordsFiles all) throws OwnWordsFault {
    List<String> faults = new ArrayList<>();
    for (String wording : all.own().wordings().keySet()) {
      for (String word : model.unknownWords(List.of(wording.split(" ", -1)))) {
        String found = "found \"" + word + "\" in \"" + wording + "\"";
        String expected = ", expected words that the speech model knows";
        faults.add(
            OwnWordsFault.line(
                OwnWordsFault.Code.UNKNOWN_WORD, all.fileOf(wording), found + expected));
      }
    }
    if (!faults.isEmpty()) {
      throw new OwnWordsFault(faults);
    }
  }
}
