package org.undercall.adapter.log;

import java.util.OptionalLong;
import org.undercall.port.Fault;

/**
 * One thing about a session that is not as it was written.
 *
 * @param code what is wrong
 * @param file the file it is in
 * @param line the line of the log, from 1; empty if it is about a whole file
 * @param seq the number of the decision in that line, as far as it can be read
 * @param found what is there
 * @param expected what should be there
 */
public record LogFinding(
    Fault.Code code,
    String file,
    OptionalLong line,
    OptionalLong seq,
    String found,
    String expected) {

  LogFinding(Fault.Code code, String file, String found, String expected) {
    this(code, file, OptionalLong.empty(), OptionalLong.empty(), found, expected);
  }

  /** The finding in one line, with its place. */
  public String message() {
    String where = line.isPresent() ? " line " + line.getAsLong() : "";
    String decision = seq.isPresent() ? " (seq " + seq.getAsLong() + ")" : "";
    return new Fault.Finding(code, file + where + decision, found, expected).toString();
  }
}
