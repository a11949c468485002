package org.undercall.core.decision;

/** What became of an intent. */
public enum Outcome {
  /** It changed the session. */
  ACCEPTED,
  /** It waits for a read-back, or was asked again. */
  ASKED,
  /** It was refused. */
  REFUSED,
  /** It was a question and was answered. */
  ANSWERED,
  /** Nothing came of it and nothing is said. */
  IGNORED
}
