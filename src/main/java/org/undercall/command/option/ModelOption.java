package org.undercall.command.option;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.intent.Phrasebook;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** The option {@code --model}, for every command that listens. */
public final class ModelOption {
  private static final String PLAIN = "plain";

  @Option(
      names = "--model",
      paramLabel = "DIR",
      description =
          "Folder of another speech model; its checksum list is DIR.sha256."
              + " plain: the model of the program without its adaptation to noise.")
  private String named;

  /** Made by the command line reader. */
  public ModelOption() {}

  /**
   * The model, checked.
   *
   * @throws Fault MOD-001 to MOD-007 or MOD-012
   */
  public ModelFolder verified() throws Fault {
    if (named == null) {
      return ModelFolder.verify(ModelFolder.standard());
    }
    return named.equals(PLAIN)
        ? ModelFolder.plain(ModelFolder.standard())
        : ModelFolder.verify(Path.of(named));
  }

  /**
   * Checks and loads the model.
   *
   * @param err takes the warnings, one line each
   */
  public SpeechModel load(PrintWriter err) throws Fault {
    ModelFolder verified = verified();
    verified.warning().ifPresent(err::println);
    SpeechModel model = SpeechModel.load(verified);
    List<String> unknown = model.unknownWords(Phrasebook.words());
    if (!unknown.isEmpty()) {
      err.println(SpeechModel.unknownWordsWarning(unknown));
    }
    err.flush();
    return model;
  }
}
