package org.undercall.port;

/** What a short tone tells before the reply, or in it. */
public enum Signal {
  /** A phrase was understood. */
  HEARD,
  /** A phrase was refused, or is to be said again. */
  NOT_ACCEPTED,
  /** Something was said over the voice, and no phrase was heard in it. */
  NOT_HEARD
}
