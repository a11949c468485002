package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An order round a wheel")
class StarOrderTest {

  private static List<Integer> order(String text) {
    return Arrays.stream(text.split("-", -1)).map(Integer::valueOf).toList();
  }

  /** The order with the numbering begun elsewhere, or run the other way round. */
  private static List<Integer> turned(List<Integer> order, int by, boolean mirrored) {
    int n = order.size();
    return order.stream().map(p -> Math.floorMod((mirrored ? -p : p) + by, n) + 1).toList();
  }

  @ParameterizedTest(name = "of {0}: {1}")
  @CsvFileSource(resources = "/reference/10b_star_order.csv", numLinesToSkip = 1)
  @DisplayName("is diagonal as computed outside, from any start and either way round")
  void diagonal(int studs, String order) {
    for (int by = 0; by < studs; by++) {
      assertTrue(StarOrder.diagonal(turned(order(order), by, false)), order + " by " + by);
      assertTrue(StarOrder.diagonal(turned(order(order), by, true)), order + " mirrored " + by);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/reference/10b_star_order.csv", numLinesToSkip = 1)
  @DisplayName("is shown as an example only if it is diagonal itself")
  void example(int studs) {
    assertTrue(StarOrder.diagonal(StarOrder.example(studs)));
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 5, 6, 8, 10})
  @DisplayName("is diagonal as it is shown, from any start and either way round")
  void shown(int studs) {
    for (int by = 0; by < studs; by++) {
      assertTrue(StarOrder.diagonal(turned(StarOrder.example(studs), by, false)), "by " + by);
      assertTrue(StarOrder.diagonal(turned(StarOrder.example(studs), by, true)), "mirrored " + by);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 5, 6, 7, 8, 9, 10, 12})
  @DisplayName("is not diagonal if it runs round the circle")
  void circle(int studs) {
    assertFalse(StarOrder.diagonal(IntStream.rangeClosed(1, studs).boxed().toList()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1-3-4-2-5",
        "1-2-3-5-4",
        "1-4-3-2-5-6",
        "1-5-2-6-3-7-4-8",
        "1-6-2-7-3-8-4-9-5-10"
      })
  @DisplayName("is not diagonal if one step goes to a neighbour")
  void neighbours(String order) {
    assertFalse(StarOrder.diagonal(order(order)));
  }
}
