package org.undercall.sound;

import org.undercall.port.Fault;

/** Why speech output failed. The codes are permanent. */
public enum SpeakerCode implements Fault.Code {
  NO_DEVICE("SPK-001", "There is no speaker."),
  DEVICE_GONE("SPK-002", "The speaker hangs or went away."),
  MARY_FAILED("SPK-003", "The voice that comes with the program failed."),
  NO_SYSTEM_VOICE("SPK-004", "The system's voice is not installed."),
  SYSTEM_VOICE_SLOW("SPK-005", "The system's voice took too long."),
  SYSTEM_VOICE_FAILED("SPK-006", "The system's voice failed."),
  NO_SOUND("SPK-007", "The voice made no sound."),
  BAD_WAV("SPK-008", "A sound file of the voice is damaged or has another format."),
  CANNOT_WRITE("SPK-009", "A sound file cannot be written."),
  UNKNOWN_VOICE("SPK-010", "There is no such voice.");

  private final String id;
  private final String meaning;

  SpeakerCode(String id, String meaning) {
    this.id = id;
    this.meaning = meaning;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String meaning() {
    return meaning;
  }
}
