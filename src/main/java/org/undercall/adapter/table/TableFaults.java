package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.List;
import org.undercall.port.Fault;

/** Collects the doubtful places of one table. */
final class TableFaults {
  private final String file;
  private final List<Fault.Finding> all = new ArrayList<>();

  TableFaults(String file) {
    this.file = file;
  }

  void at(Cell cell, TableCode code, String found, String expected) {
    if (cell.kind() == Cell.Kind.REPORTED) {
      return;
    }
    String place = cell.row() < 0 ? cell.text() : file + " " + cell.address();
    add(code, place, found, expected);
  }

  void file(TableCode code, String found, String expected) {
    add(code, file, found, expected);
  }

  void add(TableCode code, String place, String found, String expected) {
    Fault.Finding fault = new Fault.Finding(code, place, found, expected);
    if (!all.contains(fault)) {
      all.add(fault);
    }
  }

  List<Fault.Finding> all() {
    return all;
  }

  void throwIfAny() throws Fault {
    if (!all.isEmpty()) {
      throw new Fault(all);
    }
  }
}
