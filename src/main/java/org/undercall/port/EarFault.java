package org.undercall.port;

/** The ear cannot go on: its sound broke off. The message is one line and starts with a code. */
public final class EarFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** The ear cannot go on because of {@code cause}, whose message starts with a code. */
  public EarFault(Exception cause) {
    super(cause.getMessage(), cause);
  }
}
