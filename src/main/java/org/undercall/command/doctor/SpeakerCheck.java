package org.undercall.command.doctor;

import org.undercall.adapter.speaker.SpeakerTrial;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.SpeakerCode;

/**
 * The loudspeaker: opens and takes sound. Whether it can be heard, only a person can say.
 *
 * @param trial plays a moment of silence
 */
record SpeakerCheck(Runnable trial) implements Check {
  static SpeakerCheck ofMachine() {
    return new SpeakerCheck(SpeakerTrial::play);
  }

  @Override
  public String name() {
    return "speaker";
  }

  @Override
  public Found look() {
    try {
      trial.run();
      return Found.well("opens and takes sound; to hear it: undercall say \"torque reached\"");
    } catch (UncheckedFault e) {
      String remedy =
          e.fault().code() == SpeakerCode.NO_DEVICE
              ? "plug one in; if one is plugged in, see that the system's sound settings list it"
                  + " and that you may use it (under Linux: the group audio)"
              : "restart the system's sound service, or plug the device in again";
      return Found.fault(e.getMessage(), remedy + "; until then, replies are only printed");
    }
  }
}
