package org.undercall.sound;

/** Speech output failed; the message starts with a stable code. */
public final class SpeakerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why speech output failed. The codes are permanent. */
  public enum Fault {
    NO_DEVICE("SPK-001"),
    DEVICE_GONE("SPK-002"),
    MARY_FAILED("SPK-003"),
    NO_SYSTEM_VOICE("SPK-004"),
    SYSTEM_VOICE_SLOW("SPK-005"),
    SYSTEM_VOICE_FAILED("SPK-006"),
    NO_SOUND("SPK-007"),
    BAD_WAV("SPK-008"),
    CANNOT_WRITE("SPK-009"),
    UNKNOWN_VOICE("SPK-010");

    private final String code;

    Fault(String code) {
      this.code = code;
    }

    /** The stable code, for example {@code SPK-001}. */
    public String code() {
      return code;
    }
  }

  private final Fault fault;

  /** A fault with what was found and what to do. */
  public SpeakerException(Fault fault, String message) {
    this(fault, message, null);
  }

  /** A fault with what was found and what caused it. */
  public SpeakerException(Fault fault, String message, Throwable cause) {
    super(fault.code() + " " + message, cause);
    this.fault = fault;
  }

  /** Which fault it was. */
  public Fault fault() {
    return fault;
  }
}
