package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What was heard of a value before")
class EvidenceTest {
  private static final Set<IntentKind> TORQUE = Set.of(IntentKind.VALUE_CALLED);

  private static Meanings.Choice choice(Map<Object, Double> shares, Object chosen) {
    return new Meanings.Choice(List.of(), shares.get(chosen), true, shares);
  }

  private static double again(
      Map<Object, Double> first, Map<Object, Double> then, Object chosen, double seconds) {
    Evidence evidence = Evidence.of(choice(first, "110"), TORQUE, 10);
    return evidence.with(choice(then, chosen), TORQUE, seconds).share();
  }

  @Test
  @DisplayName("makes the same value surer than either alone")
  void agrees() {
    Map<Object, Double> shares = Map.of("110", 0.6, "150", 0.4);
    double odds = Math.pow(0.6 / 0.4, 1.5);
    assertEquals(odds / (1 + odds), again(shares, shares, "110", 14), 1e-9);
  }

  @Test
  @DisplayName("counts a meaning that was not heard at all as hardly likely")
  void absent() {
    double both = again(Map.of("110", 0.6, "150", 0.4), Map.of("110", 0.6, "190", 0.4), "110", 14);
    assertTrue(both > 0.9 && both < 1, "share: " + both);
  }

  @Test
  @DisplayName("leaves another value as it is, neither surer nor less sure")
  void differs() {
    assertEquals(
        0.6, again(Map.of("110", 0.9, "150", 0.1), Map.of("150", 0.6, "110", 0.4), "150", 14));
  }

  @Test
  @DisplayName("is forgotten after 15 seconds, and where something else may be said")
  void forgotten() {
    Map<Object, Double> shares = Map.of("110", 0.6, "150", 0.4);
    assertEquals(0.6, again(shares, shares, "110", 25.1));
    Evidence evidence = Evidence.of(choice(shares, "110"), TORQUE, 10);
    Set<IntentKind> other = Set.of(IntentKind.FINAL_TORQUE);
    assertEquals(0.6, evidence.with(choice(shares, "110"), other, 11).share());
  }

  @Test
  @DisplayName("never makes a choice less sure")
  void never() {
    double both = again(Map.of("110", 0.5, "150", 0.49), Map.of("110", 0.9, "150", 0.1), "110", 14);
    assertTrue(both >= 0.9, "share: " + both);
  }
}
