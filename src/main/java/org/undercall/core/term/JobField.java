package org.undercall.core.term;

/** What can be told of a job by voice. */
public enum JobField {
  REGISTRATION,
  /** The vehicle identification number; it may be told in parts. */
  VIN,
  /** The odometer in whole kilometres. */
  ODOMETER,
  JOB_NUMBER,
  TECHNICIAN
}
