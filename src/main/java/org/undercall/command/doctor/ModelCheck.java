package org.undercall.command.doctor;

import java.util.List;
import java.util.Optional;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.intent.Phrasebook;
import org.undercall.port.Fault;

/**
 * The speech model: unpacked, as the checksum list says, loaded, and knowing every word.
 *
 * @param model does all that
 */
record ModelCheck(Model model) implements Check {
  private static final String BUILD =
      "delete the folder and build again: mvn process-resources; or name another with --model DIR";

  /** Verifies and loads the model. */
  interface Model {
    Loaded load() throws Fault;
  }

  /**
   * A model that was loaded.
   *
   * @param name of its folder and network
   * @param warning about its files, if any
   * @param unknown words that can be said and that it does not know
   */
  record Loaded(String name, Optional<String> warning, List<String> unknown) {}

  /** Where a model is checked. */
  interface Verified {
    ModelFolder get() throws Fault;
  }

  static ModelCheck of(Verified checked) {
    return new ModelCheck(
        () -> {
          ModelFolder verified = checked.get();
          try (SpeechModel model = SpeechModel.load(verified)) {
            return new Loaded(
                verified.name(), verified.warning(), model.unknownWords(Phrasebook.words()));
          }
        });
  }

  @Override
  public String name() {
    return "model";
  }

  @Override
  public Found look() {
    try {
      Loaded loaded = model.load();
      if (!loaded.unknown().isEmpty()) {
        return Found.note(
            SpeechModel.unknownWordsWarning(loaded.unknown()),
            "phrases with these words cannot be heard: use the model that comes with the program");
      }
      return loaded
          .warning()
          .map(line -> Found.note(line, "make the list with sha256sum if the model is your own"))
          .orElseGet(
              () -> Found.well(loaded.name() + ", checksums right, loads, knows every word"));
    } catch (Fault e) {
      return Found.fault(e.getMessage(), BUILD);
    }
  }
}
