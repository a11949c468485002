package org.undercall.adapter.table;

/**
 * One doubtful place of a table.
 *
 * @param code what kind of doubt it is
 * @param place the file with the address of a cell, such as {@code bolts.csv C7}, or an option
 * @param found what is there
 * @param expected what should be there
 */
public record TableFault(TableCode code, String place, String found, String expected) {

  /** The fault as one line to be printed. */
  @Override
  public String toString() {
    return code.code() + " " + place + ": found " + found + ", expected " + expected;
  }
}
