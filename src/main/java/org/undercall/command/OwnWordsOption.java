package org.undercall.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.files.OwnWordsFault;
import org.undercall.adapter.files.OwnWordsFile;
import org.undercall.adapter.recogniser.OwnWordsMaker;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.intent.OwnWords;
import picocli.CommandLine.Option;

/** The option {@code --words}, for every command that hears phrases. */
public final class OwnWordsOption {
  @Option(
      names = "--words",
      paramLabel = "FILE.json",
      description = "Your own wordings (default: undercall/words.json at home, if it is there).")
  private Path file;

  /** Made by the command line reader. */
  public OwnWordsOption() {}

  /** The named file, or the one at home ({@code UNDERCALL_WORDS} names another); empty if none. */
  static Optional<Path> file(Path named) {
    if (named != null) {
      return Optional.of(named);
    }
    String other = System.getenv("UNDERCALL_WORDS");
    return other != null && !other.isBlank()
        ? Optional.of(Path.of(other))
        : Optional.of(Path.of(System.getProperty("user.home"), "undercall", "words.json"))
            .filter(Files::exists);
  }

  /** The own words; none if there is no file. */
  public OwnWords load() throws OwnWordsFault {
    Optional<Path> found = file(file);
    return found.isPresent() ? OwnWordsFile.read(found.get()) : OwnWords.none();
  }

  /**
   * Recognisers that also listen for the own words.
   *
   * @throws OwnWordsFault WRD-006 if the model does not know one of them
   */
  public RecogniserMaker of(SpeechModel model, OwnWords own) throws OwnWordsFault {
    if (own.wordings().isEmpty()) {
      return model;
    }
    requireKnown(model, own, file(file).orElseThrow());
    return new OwnWordsMaker(model, own);
  }

  /** Refuses wordings with words that the model does not know. */
  static void requireKnown(SpeechModel model, OwnWords own, Path file) throws OwnWordsFault {
    List<String> faults = new ArrayList<>();
    for (String wording : own.wordings().keySet()) {
      for (String word : model.unknownWords(List.of(wording.split(" ", -1)))) {
        String found = "found \"" + word + "\" in \"" + wording + "\"";
        String expected = ", expected words that the speech model knows";
        faults.add(OwnWordsFault.line(OwnWordsFault.Code.UNKNOWN_WORD, file, found + expected));
      }
    }
    if (!faults.isEmpty()) {
      throw new OwnWordsFault(faults);
    }
  }
}
