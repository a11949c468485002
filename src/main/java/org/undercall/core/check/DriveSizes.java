package org.undercall.core.check;

import java.util.List;
import java.util.Map;

/**
 * The sizes of sockets and keys that are usual for a thread.
 *
 * <p>Hexagons of ISO 272, the smaller ones of flanged heads, the older ones still met, and keys of
 * socket heads. Taken from memory and common practice, so a size outside is a remark only.
 */
final class DriveSizes {
  private static final Map<Integer, List<Integer>> USUAL =
      Map.ofEntries(
          Map.entry(4, List.of(3, 7)),
          Map.entry(5, List.of(4, 8)),
          Map.entry(6, List.of(5, 8, 10)),
          Map.entry(7, List.of(6, 10, 11)),
          Map.entry(8, List.of(6, 10, 12, 13)),
          Map.entry(10, List.of(8, 13, 14, 15, 16, 17)),
          Map.entry(12, List.of(10, 15, 16, 17, 18, 19)),
          Map.entry(14, List.of(12, 17, 18, 19, 21, 22)),
          Map.entry(16, List.of(14, 21, 22, 24)),
          Map.entry(18, List.of(14, 24, 27)),
          Map.entry(20, List.of(17, 27, 30)),
          Map.entry(22, List.of(17, 30, 32, 34)),
          Map.entry(24, List.of(19, 30, 32, 34, 36)));

  private DriveSizes() {}

  /** The usual sizes for a nominal diameter in mm; none if the table does not have it. */
  static List<Integer> usual(int diameter) {
    return USUAL.getOrDefault(diameter, List.of());
  }
}
