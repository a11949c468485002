package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.WorkPhase;

/**
 * A step with its place in the procedure.
 *
 * @param pointer JSON pointer to the step
 * @param perSide whether it is walked for each side or corner
 * @param step the step
 */
record Spot(String pointer, boolean perSide, Step step) {

  /** All steps in the order they are written. */
  static List<Spot> of(Procedure procedure) {
    List<Spot> spots = new ArrayList<>();
    for (int p = 0; p < procedure.phases().size(); p++) {
      WorkPhase phase = procedure.phases().get(p);
      for (int s = 0; s < phase.steps().size(); s++) {
        String pointer = "/phases/" + p + "/steps/" + s;
        spots.add(new Spot(pointer, phase.each() != Each.CAR, phase.steps().get(s)));
      }
    }
    return spots;
  }

  /** Its fastener, if it tightens one. */
  Optional<Fastener> fastener() {
    return step instanceof Step.Fasten fasten ? Optional.of(fasten.fastener()) : Optional.empty();
  }

  /** Whether it tightens the fasteners of a wheel. */
  WheelGuess wheel() {
    return fastener().map(WheelGuess::of).orElse(WheelGuess.NONE);
  }

  /** A finding at a field of the step. */
  Finding at(String field, CheckRule rule, String found, String expected) {
    return new Finding(rule, pointer + "/" + field, found, expected);
  }

  /** Whether a text has a word, whatever its capitals; a word may be longer at its end. */
  static boolean word(String text, String word) {
    for (String part : text.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)) {
      if (part.startsWith(word)) {
        return true;
      }
    }
    return false;
  }
}
