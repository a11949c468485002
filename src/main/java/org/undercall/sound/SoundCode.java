package org.undercall.sound;

import org.undercall.port.Fault;

/** What can be wrong with a sound file or a microphone. The codes are permanent. */
public enum SoundCode implements Fault.Code {
  UNREADABLE("SND-001", "The sound file is not there or cannot be read."),
  NOT_WAV("SND-002", "The file is no WAV file."),
  NO_FORMAT("SND-003", "The part of the header that describes the format is missing or damaged."),
  NO_DATA("SND-004", "The file has no sound in it."),
  ENCODING("SND-005", "The samples are coded in a way that is not supported."),
  SAMPLE_SIZE("SND-006", "The sample size is not supported."),
  CHANNELS("SND-007", "The number of channels is not supported."),
  RATE("SND-008", "The sample rate is not supported."),
  TRUNCATED("SND-009", "The file is shorter than its header says."),
  CONTRADICTION("SND-010", "Two statements in the header contradict each other."),
  NOT_A_NUMBER("SND-011", "A sample is no number."),
  NO_MICROPHONE("SND-020", "There is no microphone."),
  UNKNOWN_MICROPHONE("SND-021", "There is no microphone of that name."),
  MICROPHONE_REFUSED("SND-022", "The microphone is there but cannot be opened."),
  MICROPHONE_LOST("SND-023", "The microphone went away while it was in use.");

  private final String id;
  private final String meaning;

  SoundCode(String id, String meaning) {
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
