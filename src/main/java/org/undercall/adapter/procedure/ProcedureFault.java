package org.undercall.adapter.procedure;

import org.undercall.text.Shown;

/**
 * One fault of a procedure file.
 *
 * @param code what kind of fault it is
 * @param file name of the file, without its folder
 * @param pointer JSON pointer (RFC 6901) to the faulty value; empty for the whole file
 * @param line line from 1; 0 if there is no text to point at
 * @param column column from 1, in UTF-16 units; 0 if there is no text to point at
 * @param found what the file has
 * @param expected what it should have
 */
public record ProcedureFault(
    FaultCode code,
    String file,
    String pointer,
    int line,
    int column,
    String found,
    String expected) {

  /** The fault as one line to be printed. */
  @Override
  public String toString() {
    String place = line == 0 ? file : file + ":" + line + ":" + column;
    String path = pointer.isEmpty() ? "" : " " + Shown.plain(pointer);
    return code.code() + " " + place + path + ": found " + found + ", expected " + expected;
  }
}
