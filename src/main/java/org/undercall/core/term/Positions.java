package org.undercall.core.term;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Places of a set of fasteners, by the numbers that the procedure's order gives them.
 *
 * @param numbers each from 1 and once, in the order in which they were called; at least one
 */
public record Positions(List<Integer> numbers) {
  public Positions {
    numbers = List.copyOf(numbers);
    boolean once = new HashSet<>(numbers).size() == numbers.size();
    if (numbers.isEmpty() || !once || numbers.stream().anyMatch(n -> n < 1)) {
      throw new IllegalArgumentException("positions are numbers from 1, each once: " + numbers);
    }
  }

  /** One position. */
  public static Positions of(int number) {
    return new Positions(List.of(number));
  }

  /** The numbers with a blank between them, as the log has them. */
  @Override
  public String toString() {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }
}
