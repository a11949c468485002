package org.undercall.command.doctor;

/** Looks at one thing that the work needs. */
interface Check {
  /** What it looks at, in one word. */
  String name();

  /**
   * Looks.
   *
   * @throws Exception whatever goes wrong; a fault is shown as it is
   */
  Found look() throws Exception;
}
