package org.undercall.port;

/** A fault that comes through a method which cannot throw one, such as that of a voice. */
public final class UncheckedFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Fault fault;

  /** Carries a fault; the message is the fault's. */
  public UncheckedFault(Fault fault) {
    super(fault.getMessage(), fault);
    this.fault = fault;
  }

  /** A fault in a sentence that says it all. */
  public UncheckedFault(Fault.Code code, String sentence) {
    this(new Fault(code, "", sentence));
  }

  /** A fault in a sentence that says it all, with what caused it. */
  public UncheckedFault(Fault.Code code, String sentence, Throwable cause) {
    this(code, sentence);
    fault.initCause(cause);
  }

  /** What is wrong. */
  public Fault fault() {
    return fault;
  }
}
