package org.undercall.port;

/** What a short tone tells before the reply. */
public enum Signal {
  /** A phrase was understood. */
  HEARD,
  /** A phrase was refused, or is to be said again. */
  NOT_ACCEPTED
}
