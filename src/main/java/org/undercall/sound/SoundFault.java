package org.undercall.sound;

/** A fault of a sound file or a device, with a stable code; the message starts with it. */
public final class SoundFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong. The code is stable; the number is never reused. */
  public enum Code {
    /** The file is not there or cannot be read. */
    UNREADABLE("SND-001"),
    /** The file is no WAV file. */
    NOT_WAV("SND-002"),
    /** The part of the header that describes the format is missing or damaged. */
    NO_FORMAT("SND-003"),
    /** The file has no sound in it. */
    NO_DATA("SND-004"),
    /** The samples are coded in a way that is not supported. */
    ENCODING("SND-005"),
    /** The sample size is not supported. */
    SAMPLE_SIZE("SND-006"),
    /** The number of channels is not supported. */
    CHANNELS("SND-007"),
    /** The sample rate is not supported. */
    RATE("SND-008"),
    /** The file is shorter than its header says. */
    TRUNCATED("SND-009"),
    /** Two statements in the header contradict each other. */
    CONTRADICTION("SND-010"),
    /** A sample is no number. */
    NOT_A_NUMBER("SND-011"),
    /** There is no microphone. */
    NO_MICROPHONE("SND-020"),
    /** There is no microphone of that name. */
    UNKNOWN_MICROPHONE("SND-021"),
    /** The microphone is there but cannot be opened. */
    MICROPHONE_REFUSED("SND-022"),
    /** The microphone went away while it was in use. */
    MICROPHONE_LOST("SND-023");

    private final String id;

    Code(String id) {
      this.id = id;
    }

    /** The code as printed, such as SND-009. */
    public String id() {
      return id;
    }
  }

  private final Code code;

  public SoundFault(Code code, String where, String what) {
    super(code.id() + " " + where + ": " + what);
    this.code = code;
  }

  /** What is wrong. */
  public Code code() {
    return code;
  }
}
