package org.undercall.core.term;

/** What a session was begun for. Only work makes a record of work. */
public enum Occasion {
  /** Work on a car, heard by a microphone; some answers may be typed or pressed. */
  WORK,
  /** Typed phrases, or sound from a file, in place of a microphone: nobody need have worked. */
  REHEARSAL,
  /** Invented technicians speak: nobody worked. */
  DEMONSTRATION
}
