package org.undercall.adapter.procedure;

import java.util.List;
import java.util.stream.Collectors;

/** Says that a procedure file cannot be used, with all its faults in the order of the file. */
public final class ProcedureFaults extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<ProcedureFault> faults;

  ProcedureFaults(List<ProcedureFault> faults) {
    super(faults.stream().map(ProcedureFault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** The faults, at least one; at most the first 200 of the file. */
  public List<ProcedureFault> faults() {
    return faults;
  }
}
