package org.undercall.adapter.log;

import java.io.IOException;
import java.util.Optional;
import org.undercall.port.Fault;

/**
 * Keeps the sum file of an open log. The log comes first: when the file cannot be written, the log
 * goes on without it and the file stays behind.
 */
final class SumKeeper {
  private final RunningSum sum;
  private final Place place;
  private Optional<String> trouble = Optional.empty();

  /** Where the text of the file goes. */
  interface Place {
    void replace(String text) throws IOException;
  }

  SumKeeper(RunningSum sum, Place place) {
    this.sum = sum;
    this.place = place;
  }

  /** Brings the file up to the log that was found. */
  void repair() {
    try {
      place.replace(SumFile.text(sum));
      trouble = Optional.empty();
    } catch (IOException e) {
      trouble = Optional.of(Fault.reason(e));
    }
  }

  /** A line is on the disk. */
  void appended(byte[] line) {
    sum.add(line);
    repair();
  }

  /** Why the file was last not written; empty if it is up to date. */
  Optional<String> trouble() {
    return trouble;
  }
}
