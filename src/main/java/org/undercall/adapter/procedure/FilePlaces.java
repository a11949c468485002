package org.undercall.adapter.procedure;

import java.util.Map;

/** Knows where the values of a procedure are written. */
public final class FilePlaces {
  private static final String SINGLE_VARIANT = "/variants/0/stages";

  private final String file;
  private final Map<String, Faults.Spot> values;

  FilePlaces(String file, Map<String, Faults.Spot> values) {
    this.file = file;
    this.values = Map.copyOf(values);
  }

  /**
   * A place in the file, or in a block that it includes.
   *
   * @param file name of the file; of a block, its path from the folder of the procedure
   * @param pointer JSON pointer (RFC 6901) to a value of the file; empty for the whole file
   * @param line line from 1
   * @param column column from 1, in UTF-16 units
   */
  public record FilePlace(String file, String pointer, int line, int column) {}

  /**
   * The place of a value of the procedure. A value that is not written stands for the object that
   * lacks it; the single variant of a fastener may be written as {@code stages} alone.
   *
   * @param pointer JSON pointer as if every optional field were written
   */
  public FilePlace of(String pointer) {
    String written = pointer;
    if (!values.containsKey(pointer) && pointer.contains(SINGLE_VARIANT)) {
      String list = pointer.substring(0, pointer.indexOf(SINGLE_VARIANT));
      if (!values.containsKey(list + "/variants")) {
        written = pointer.replace(SINGLE_VARIANT, "/stages");
      }
    }
    while (!values.containsKey(written) && !written.isEmpty()) {
      written = written.substring(0, written.lastIndexOf('/'));
    }
    Faults.Spot spot =
        values.getOrDefault(written, new Faults.Spot(file, written, Faults.Place.START, ""));
    return new FilePlace(spot.file(), spot.pointer(), spot.place().line(), spot.place().column());
  }
}
