package org.undercall.adapter.procedure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercall.port.Fault;

/**
 * Collects the faults of one file, or of one procedure that is put together from several, and knows
 * where each of its values is written.
 */
final class Faults {
  private static final int MOST_REPORTED = 200;

  /** A place in the text, line and column from 1. */
  record Position(int line, int column) {
    static final Position NONE = new Position(0, 0);
    static final Position START = new Position(1, 1);
  }

  /**
   * Where a value or a field's name is written.
   *
   * @param file as it is named in faults
   * @param pointer JSON pointer to it in that file
   * @param used where a reference puts it to use; empty if it is used where it is written
   * @param via pointer to the include that brought it into the procedure; empty if none did
   */
  record Spot(String file, String pointer, Position place, String used, String via) {
    /** A spot of a value that is used where it is written. */
    Spot(String file, String pointer, Position place) {
      this(file, pointer, place, "", "");
    }

    /** The same spot, for a value that is put to use elsewhere. */
    Spot usedAt(String where) {
      return new Spot(file, pointer, place, where, via);
    }

    /** The same spot, for a value that an include brought. */
    Spot broughtBy(String include) {
      return new Spot(file, pointer, place, used, include);
    }

    /** The spot as a fault names it. */
    Fault.Place where() {
      return new Fault.Place(file, pointer, place.line(), place.column());
    }

    /** File, line and column, as at the beginning of a fault. */
    String name() {
      return file + ":" + place.line() + ":" + place.column();
    }
  }

  private final String file;
  private final Map<String, Spot> values = new HashMap<>();
  private final Map<String, Spot> keys = new HashMap<>();
  private final Set<Fault.Finding> found = new LinkedHashSet<>();
  private final Set<String> unusable = new LinkedHashSet<>();
  private final List<String> files = new ArrayList<>();

  Faults(String file) {
    this.file = file;
    files.add(file);
  }

  void valueAt(String pointer, Position place) {
    valueAt(pointer, new Spot(file, pointer, place));
  }

  void valueAt(String pointer, Spot spot) {
    values.putIfAbsent(pointer, spot);
  }

  void keyAt(String pointer, Position place) {
    keyAt(pointer, new Spot(file, pointer, place));
  }

  void keyAt(String pointer, Spot spot) {
    keys.putIfAbsent(pointer, spot);
  }

  /** Where a value is written. */
  Spot valueSpot(String pointer) {
    return values.getOrDefault(pointer, new Spot(file, pointer, Position.START));
  }

  /** Where a field's name is written. */
  Spot keySpot(String pointer) {
    return keys.getOrDefault(pointer, new Spot(file, pointer, Position.START));
  }

  /** A value in the words of a fault: its pointer, and its file if that is another one. */
  String named(String pointer) {
    Spot spot = valueSpot(pointer);
    return spot.file().equals(file) ? spot.pointer() : spot.file() + " " + spot.pointer();
  }

  /** A fault of a value. */
  void value(ProcedureCode code, String pointer, String seen, String expected) {
    at(code, valueSpot(pointer), seen, expected);
  }

  /** A fault of a value that is not kept, so that no other fault is reported for it. */
  void unusable(ProcedureCode code, String pointer, String seen, String expected) {
    value(code, pointer, seen, expected);
    ignore(pointer);
  }

  /** A fault of a field's name. */
  void key(ProcedureCode code, String pointer, String seen, String expected) {
    at(code, keySpot(pointer), seen, expected);
  }

  /** A fault at a place of its own. */
  void at(ProcedureCode code, String pointer, Position place, String seen, String expected) {
    at(code, new Spot(file, pointer, place), seen, expected);
  }

  /** A fault of something that is written at a spot. */
  void at(ProcedureCode code, Spot spot, String seen, String expected) {
    String use = spot.used().isEmpty() ? "" : ", as used at " + spot.used();
    found.add(new Fault.Finding(code, spot.where(), seen, expected + use));
  }

  /** Adds what was found in another file; it is reported after what is known already. */
  void take(Faults other) {
    found.addAll(other.found);
    other.files.stream().filter(name -> !files.contains(name)).forEach(files::add);
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
    return new FilePlaces(file, values);
  }

  /** Ends the reading if there is any fault. */
  void throwIfAny() throws Fault {
    if (!found.isEmpty()) {
      throw all();
    }
  }

  /** All faults, file by file, each in the order of the file. */
  Fault all() {
    List<Fault.Finding> sorted = new ArrayList<>(found);
    sorted.sort(
        Comparator.comparingInt((Fault.Finding fault) -> files.indexOf(fault.place().name()))
            .thenComparingInt(fault -> fault.place().line())
            .thenComparingInt(fault -> fault.place().column()));
    return new Fault(sorted.subList(0, Math.min(sorted.size(), MOST_REPORTED)));
  }
}
