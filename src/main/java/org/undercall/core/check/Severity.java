package org.undercall.core.check;

/** How much a finding weighs. */
public enum Severity {
  /** The procedure must not be used as it is. */
  ERROR,
  /** Somebody must look at it before the procedure is used. */
  WARNING,
  /** Worth knowing; the procedure may be right. */
  REMARK
}
