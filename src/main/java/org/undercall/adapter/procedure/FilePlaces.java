package org.undercall.adapter.procedure;

import java.util.Map;
import org.undercall.port.Fault;

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
   * The place of a value of the procedure, in its file or in a block that it includes. A value that
   * is not written stands for the object that lacks it; the single variant of a fastener may be
   * written as {@code stages} alone.
   *
   * @param pointer JSON pointer as if every optional field were written
   */
  public Fault.Place of(String pointer) {
    return spot(pointer).where();
  }

  /**
   * What a value comes from in the procedure's own file: the value as it is written there, or the
   * include that brought it.
   *
   * @param pointer as for {@link #of}
   */
  public String source(String pointer) {
    Faults.Spot spot = spot(pointer);
    return spot.file().equals(file) ? spot.pointer() : spot.via();
  }

  private Faults.Spot spot(String pointer) {
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
    return values.getOrDefault(written, new Faults.Spot(file, written, Faults.Position.START));
  }
}
