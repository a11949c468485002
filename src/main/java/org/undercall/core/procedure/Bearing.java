package org.undercall.core.procedure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.Side;

/**
 * How a step bears on the car and on other steps.
 *
 * @param after ids of the steps that must be closed before this one, and that it falls with
 * @param undoes ids of the steps whose work it undoes
 * @param car what it does to the height of the car
 * @param corner the one wheel it is about, by its side or corner, in a step done once for the car
 * @param roadTest whether the car is driven
 */
public record Bearing(
    List<String> after, List<String> undoes, Lift car, Optional<Side> corner, boolean roadTest) {

  /** What a step does to the car as a whole. */
  public enum Lift {
    LEFT_AS_IT_IS,
    /** Onto stands or a lift. */
    RAISED,
    /** Onto its wheels. */
    LOWERED
  }

  /** Nothing is stated. */
  public static final Bearing NONE =
      new Bearing(List.of(), List.of(), Lift.LEFT_AS_IT_IS, Optional.empty(), false);

  public Bearing {
    after = List.copyOf(after);
    undoes = List.copyOf(undoes);
    Objects.requireNonNull(car, "car");
    Objects.requireNonNull(corner, "corner");
  }
}
