package org.undercall.core.fastening;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

  /** By diameter: classes 5, 6, 8, 10 and 12, in newtons. */
  private static final Map<Integer, int[]> COARSE =
      Map.ofEntries(
          Map.entry(4, new int[] {4550, 5250, 7000, 9150, 10000}),
          Map.entry(5, new int[] {8250, 9500, 12140, 14800, 16200}),
          Map.entry(6, new int[] {11700, 13500, 17200, 20900, 22900}),
          Map.entry(7, new int[] {16800, 19400, 24700, 30100, 32900}),
          Map.entry(8, new int[] {21600, 24900, 31800, 38100, 41700}),
          Map.entry(10, new int[] {34200, 39400, 50500, 60300, 66100}),
          Map.entry(12, new int[] {51400, 59000, 74200, 88500, 98600}),
          Map.entry(14, new int[] {70200, 80500, 101200, 120800, 134600}),
          Map.entry(16, new int[] {95800, 109900, 138200, 164900, 183700}),
          Map.entry(18, new int[] {121000, 138200, 176600, 203500, 230400}),
          Map.entry(20, new int[] {154400, 176400, 225400, 259700, 294000}),
          Map.entry(22, new int[] {190900, 218200, 278800, 321200, 363600}),
          Map.entry(24, new int[] {222400, 254200, 324800, 374200, 423600}));

  private static final Set<String> FINE =
      Set.of("M8x1", "M10x1.25", "M12x1.5", "M14x1.5", "M16x1.5");

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

  /**
   * The proof load of a nut of full height.
   *
   * <p>Coarse threads: EN 20898-2, whose values ISO 898-2:2012 keeps, read in two suppliers'
   * printings; for class 12 the lower of its two styles. Fine threads M8x1, M10x1.25, and M12 to
   * M16 with 1.5: proof stress times stress area, 955 MPa for class 8, 1100 MPa up to M10 and 1110
   * MPa above for class 10, from memory. Empty elsewhere, and for class 9.
   */
  public Optional<Force> proofLoad(ThreadSize thread) {
    return thread.coarse() ? coarse(thread) : fine(thread);
  }

  private Optional<Force> coarse(ThreadSize thread) {
    int column =
        switch (this) {
          case N5 -> 0;
          case N6 -> 1;
          case N8 -> 2;
          case N10 -> 3;
          case N12 -> 4;
          case N04, N05, N9 -> -1;
        };
    return Optional.ofNullable(COARSE.get((int) thread.diameter().millimetres()))
        .filter(row -> column >= 0)
        .map(row -> new Force(row[column]));
  }

  private Optional<Force> fine(ThreadSize thread) {
    double stress =
        switch (this) {
          case N8 -> 955;
          case N10 -> thread.diameter().millimetres() <= 10 ? 1100 : 1110;
          default -> 0;
        };
    return Optional.of(thread)
        .filter(t -> stress > 0 && FINE.contains(t.toString()))
        .map(t -> new Stress(stress).on(t.stressArea()));
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
