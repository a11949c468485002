package org.undercall.adapter.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects the faults of one file and knows where each of its values stands. */
final class Faults {
  private static final int MOST_REPORTED = 200;

  /** A place in the text, line and column from 1. */
  record Place(int line, int column) {
    static final Place NONE = new Place(0, 0);
    static final Place START = new Place(1, 1);
  }

  private final String file;
  private final Map<String, Place> values = new HashMap<>();
  private final Map<String, Place> keys = new HashMap<>();
  private final Set<ProcedureFault> found = new LinkedHashSet<>();
  private final Set<String> unusable = new LinkedHashSet<>();

  Faults(String file) {
    this.file = file;
  }

  void valueAt(String pointer, Place place) {
    values.putIfAbsent(pointer, place);
  }

  void keyAt(String pointer, Place place) {
    keys.putIfAbsent(pointer, place);
  }

  /** A fault of a value. */
  void value(FaultCode code, String pointer, String seen, String expected) {
    at(code, pointer, values.getOrDefault(pointer, Place.START), seen, expected);
  }

  /** A fault of a field's name. */
  void key(FaultCode code, String pointer, String seen, String expected) {
    at(code, pointer, keys.getOrDefault(pointer, Place.START), seen, expected);
  }

  /** A fault at a place of its own. */
  void at(FaultCode code, String pointer, Place place, String seen, String expected) {
    found.add(
        new ProcedureFault(code, file, pointer, place.line(), place.column(), seen, expected));
  }

  /** Says that a value was not kept, so that no other fault is reported for it. */
  void ignore(String pointer) {
    unusable.add(pointer);
  }

  boolean ignored(String pointer) {
    return unusable.contains(pointer);
  }

  /** Where the values of the file stand. */
  FilePlaces places() {
    return new FilePlaces(values);
  }

  /** Ends the reading if there is any fault. */
  void throwIfAny() throws ProcedureFaults {
    if (!found.isEmpty()) {
      List<ProcedureFault> sorted = new ArrayList<>(found);
      sorted.sort(
          Comparator.comparingInt(ProcedureFault::line).thenComparingInt(ProcedureFault::column));
      throw new ProcedureFaults(sorted.subList(0, Math.min(sorted.size(), MOST_REPORTED)));
    }
  }
}
