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
  @Option(
      names = "--model",
      paramLabel = "DIR",
      description = "Folder of another speech model; its checksum list is DIR.sha256.")
  private Path folder;

  /** Made by the command line reader. */
  public ModelOption() {}

  /** The folder of the model, as named or the standard one. */
  public Path folder() {
    return folder == null ? ModelFolder.standard() : folder;
  }

  /**
   * Checks and loads the model.
   *
   * @param err takes the warnings, one line each
   */
  public SpeechModel load(PrintWriter err) throws Fault {
    ModelFolder verified = ModelFolder.verify(folder());
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
