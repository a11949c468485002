package org.undercall.adapter.table;

import java.util.List;
import org.undercall.port.Fault;

/**
 * One sheet of a workbook.
 *
 * @param name as on its tab
 * @param hidden whether it is not shown
 * @param grid its cells; empty if it cannot be read
 * @param faults why it cannot be read; none if it can
 */
record Sheet(String name, boolean hidden, Grid grid, List<Fault.Finding> faults) {
  Sheet {
    faults = List.copyOf(faults);
  }

  /** A sheet that was read; too much beside its cells is a fault of it. */
  static Sheet of(String name, boolean hidden, Grid grid, TableFaults faults) {
    int joined = grid.merges().size();
    int said = grid.comments().size();
    if (Math.max(joined, said) > Grid.MOST_ROWS) {
      faults.file(
          TableCode.TOO_LARGE,
          joined + " joined cells, " + said + " comments",
          "at most " + Grid.MOST_ROWS + " of each in a sheet");
    }
    return new Sheet(name, hidden, grid, faults.all());
  }
}
