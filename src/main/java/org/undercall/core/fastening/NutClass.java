package org.undercall.core.fastening;

import java.util.Arrays;
import java.util.Optional;

/**
 * The property class marked on a nut (ISO 898-2:2012).
 *
 * <p>A nut of full height carries any bolt whose first number is at most its class. Thin nuts (04,
 * 05) strip before the bolt breaks and carry no class of bolt fully.
 */
public enum NutClass {
  N04("04", 0),
  N05("05", 0),
  N5("5", 5),
  N6("6", 6),
  N8("8", 8),
  N9("9", 9),
  N10("10", 10),
  N12("12", 12);

  private final String marking;
  private final int carries;

  NutClass(String marking, int carries) {
    this.marking = marking;
    this.carries = carries;
  }

  /** The class with this marking; empty if the standard has none. */
  public static Optional<NutClass> of(String marking) {
    return Arrays.stream(values()).filter(n -> n.marking.equals(marking)).findFirst();
  }

  /** The lowest class of full height that carries the bolt. */
  public static NutClass leastFor(PropertyClass bolt) {
    return Arrays.stream(values()).filter(n -> n.carries(bolt)).findFirst().orElseThrow();
  }

  /** Whether the nut may be used with the bolt up to the bolt's full strength. */
  public boolean carries(PropertyClass bolt) {
    return carries >= bolt.firstNumber();
  }

  @Override
  public String toString() {
    return marking;
  }
}
