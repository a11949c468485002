package org.undercall.command.doctor;

import java.util.Optional;
import java.util.function.Supplier;
import org.undercall.adapter.echo.EchoCanceller;
import org.undercall.sound.OwnVoice;

/**
 * Whether the program's own voice can be taken out of what the microphone hears.
 *
 * @param loaded makes what takes it out
 */
record EchoCheck(Supplier<Optional<OwnVoice>> loaded) implements Check {

  static EchoCheck ofMachine() {
    return new EchoCheck(EchoCanceller::load);
  }

  @Override
  public String name() {
    return "own voice";
  }

  @Override
  public Found look() {
    Optional<OwnVoice> own = loaded.get();
    own.ifPresent(OwnVoice::close);
    return own.isPresent()
        ? Found.well("it is taken out of the microphone (AEC3); answers over it are heard")
        : Found.note(
            DoctorCode.NO_CANCELLER.line(
                "the native library that takes the own voice out does not load",
                "one for this system"),
            "wear a headset and begin the work with --headset; without, only stop phrases are heard"
                + " while the voice speaks");
  }
}
