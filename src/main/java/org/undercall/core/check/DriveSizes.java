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
  /** Across the flats of a hexagon, by nominal diameter. */
  private static final Map<Integer, List<Integer>> HEXAGONS =
      Map.ofEntries(
          Map.entry(4, List.of(7)),
          Map.entry(5, List.of(8)),
          Map.entry(6, List.of(8, 10)),
          Map.entry(7, List.of(10, 11)),
          Map.entry(8, List.of(10, 12, 13)),
          Map.entry(10, List.of(13, 14, 15, 16, 17)),
          Map.entry(12, List.of(15, 16, 17, 18, 19)),
          Map.entry(14, List.of(17, 18, 19, 21, 22)),
          Map.entry(16, List.of(21, 22, 24)),
          Map.entry(18, List.of(24, 27)),
          Map.entry(20, List.of(27, 30)),
          Map.entry(22, List.of(30, 32, 34)),
          Map.entry(24, List.of(30, 32, 34, 36)));

  /** The key of a socket head, by nominal diameter. */
  private static final Map<Integer, List<Integer>> KEYS =
      Map.ofEntries(
          Map.entry(4, List.of(3)),
          Map.entry(5, List.of(4)),
          Map.entry(6, List.of(5)),
          Map.entry(7, List.of(6)),
          Map.entry(8, List.of(6)),
          Map.entry(10, List.of(8)),
          Map.entry(12, List.of(10)),
          Map.entry(14, List.of(12)),
          Map.entry(16, List.of(14)),
          Map.entry(18, List.of(14)),
          Map.entry(20, List.of(17)),
          Map.entry(22, List.of(17)),
          Map.entry(24, List.of(19)));

  private DriveSizes() {}

  /** The usual hexagons for a nominal diameter in mm; none if the table does not have it. */
  static List<Integer> hexagons(int diameter) {
    return HEXAGONS.getOrDefault(diameter, List.of());
  }

  /** The usual keys for a nominal diameter in mm; none if the table does not have it. */
  static List<Integer> keys(int diameter) {
    return KEYS.getOrDefault(diameter, List.of());
  }
}
