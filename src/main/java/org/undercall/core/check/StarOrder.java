package org.undercall.core.check;

import java.util.List;

/**
 * Whether an order of tightening goes across a circle of fasteners, whatever number it starts from
 * and whichever way round the numbers run.
 *
 * <p>An odd number: each next one is half the circle on, (n - 1)/2 positions either way. An even
 * number: opposite pairs one after the other, and the next pair not beside the last where the
 * number leaves a choice. The rule is computed; makers number differently.
 */
final class StarOrder {
  private StarOrder() {}

  /** Whether the order, of positions from 1, is diagonal; an order of three or fewer always is. */
  static boolean diagonal(List<Integer> order) {
    int n = order.size();
    if (n <= 3) {
      return true;
    }
    return n % 2 == 1 ? halfTurns(order) : pairs(order);
  }

  /** A diagonal order, to show: of positions numbered one after the other round the circle. */
  static List<Integer> example(int n) {
    return switch (n) {
      case 4 -> List.of(1, 3, 2, 4);
      case 5 -> List.of(1, 3, 5, 2, 4);
      case 6 -> List.of(1, 4, 2, 5, 3, 6);
      case 8 -> List.of(1, 5, 3, 7, 2, 6, 4, 8);
      case 10 -> List.of(1, 6, 3, 8, 5, 10, 2, 7, 4, 9);
      default -> List.of();
    };
  }

  private static boolean halfTurns(List<Integer> order) {
    int n = order.size();
    int first = Math.floorMod(order.get(1) - order.get(0), n);
    boolean half = first == (n - 1) / 2 || first == (n + 1) / 2;
    for (int i = 1; i < n; i++) {
      half &= Math.floorMod(order.get(i) - order.get(i - 1), n) == first;
    }
    return half;
  }

  private static boolean pairs(List<Integer> order) {
    int axes = order.size() / 2;
    int besides = 0;
    for (int i = 0; i < order.size(); i += 2) {
      if (Math.floorMod(order.get(i + 1) - order.get(i), order.size()) != axes) {
        return false;
      }
      besides += i > 0 && beside(order.get(i), order.get(i - 2), axes) ? 1 : 0;
    }
    return besides <= unavoidable(axes);
  }

  private static boolean beside(int one, int other, int axes) {
    int apart = Math.floorMod(one - other, axes);
    return apart == 1 || apart == axes - 1;
  }

  /** How often a next pair cannot but lie beside the last one. */
  private static int unavoidable(int axes) {
    return switch (axes) {
      case 2 -> 1;
      case 3 -> 2;
      case 4 -> 1;
      default -> 0;
    };
  }
}
