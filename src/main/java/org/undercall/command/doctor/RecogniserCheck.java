package org.undercall.command.doctor;

import java.util.function.BooleanSupplier;
import org.undercall.adapter.activity.Activities;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.port.Fault;

/**
 * The native libraries of the recogniser and of the detector of speech.
 *
 * @param library loads the first
 * @param detector whether the second is there
 */
record RecogniserCheck(Library library, BooleanSupplier detector) implements Check {

  /** Loads the library. */
  interface Library {
    void load() throws Fault;
  }

  static RecogniserCheck ofMachine() {
    return new RecogniserCheck(SpeechModel::requireLibrary, Activities::nativeIsThere);
  }

  @Override
  public String name() {
    return "recogniser";
  }

  @Override
  public Found look() {
    try {
      library.load();
    } catch (Fault e) {
      return Found.fault(
          e.getMessage(),
          "use Linux, Windows or macOS on x64; typed phrases work: undercall rehearse");
    }
    return detector.getAsBoolean()
        ? Found.well("its library and the detector of speech load")
        : Found.note(
            DoctorCode.NO_DETECTOR.line("no native detector of speech", "one for this system"),
            "nothing: one that compares loudness takes its place, and answers come a little later");
  }
}
