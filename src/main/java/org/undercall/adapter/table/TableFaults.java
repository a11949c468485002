package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Says that nothing can be made of a table, with every doubtful place. */
public final class TableFaults extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<TableFault> faults;

  TableFaults(List<TableFault> faults) {
    super(faults.stream().map(TableFault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** One fault alone. */
  public static TableFaults of(TableCode code, String place, String found, String expected) {
    return new TableFaults(List.of(new TableFault(code, place, found, expected)));
  }

  /** Faults that were collected, at least one. */
  public static TableFaults all(List<TableFault> faults) {
    return new TableFaults(faults);
  }

  /** The faults, at least one, row by row. */
  public List<TableFault> faults() {
    return faults;
  }

  /** Collects the faults of one table. */
  static final class Collected {
    private final String file;
    private final List<TableFault> all = new ArrayList<>();

    Collected(String file) {
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
      TableFault fault = new TableFault(code, place, found, expected);
      if (!all.contains(fault)) {
        all.add(fault);
      }
    }

    List<TableFault> all() {
      return all;
    }

    void throwIfAny() throws TableFaults {
      if (!all.isEmpty()) {
        throw new TableFaults(all);
      }
    }
  }
}
