package org.undercall.command.figure;

import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Sizes;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** The friction of thread and seat: typed, by state, or as a procedure has it. */
final class FrictionOptions {
  @Option(
      names = "--lubrication",
      paramLabel = "STATE",
      description =
          "dry, oiled, greased, paste, threadlocker or as_delivered (default: not stated).")
  private Lubrication lubrication;

  @Option(
      names = "--coated",
      description = "Screws coated for the car industry, 0.09 to 0.14 (VDA 235-101).")
  private boolean coated;

  @Option(
      names = "--friction",
      arity = "2",
      paramLabel = "MU",
      description = "Lowest and highest friction, in place of a state.")
  private double[] friction;

  @Option(
      names = "--seat-friction",
      arity = "2",
      paramLabel = "MU",
      description = "Lowest and highest friction of the seat alone.")
  private double[] seat;

  /** The friction; what is typed goes before what a procedure states. */
  Rubs friction(Optional<Taken> taken) throws Fault {
    Rubs both = both(taken);
    return seat == null
        ? both
        : new Rubs(
            both.thread(), typed("--seat-friction", seat), both.whence() + "; seat as typed");
  }

  /** The state of thread and seat that the friction follows from; empty if it does not. */
  Optional<Lubrication> state(Optional<Taken> taken) {
    boolean known =
        friction != null
            || seat != null
            || coated
            || (lubrication == null
                && taken.flatMap(t -> t.fastener().joint().sizes().friction()).isPresent());
    return known
        ? Optional.empty()
        : Optional.ofNullable(lubrication)
            .or(() -> taken.map(t -> t.fastener().part().lubrication()))
            .filter(state -> state != Lubrication.UNSTATED);
  }

  private Rubs both(Optional<Taken> taken) throws Fault {
    if (friction != null) {
      return alike(typed("--friction", friction), "as typed");
    }
    if (coated) {
      return alike(Friction.VDA_235_101, "coated screws, VDA 235-101 (from memory)");
    }
    Optional<Sizes.FrictionKnown> known =
        taken.flatMap(t -> t.fastener().joint().sizes().friction());
    if (lubrication == null && known.isPresent()) {
      return new Rubs(
          range(known.get().thread()), range(known.get().seat()), "as the procedure states");
    }
    Lubrication state = lubrication;
    if (state == null) {
      state = taken.map(t -> t.fastener().part().lubrication()).orElse(Lubrication.UNSTATED);
    }
    return ofState(state);
  }

  private static Rubs ofState(Lubrication state) throws Fault {
    Range<Friction> range =
        FrictionClass.expect(state)
            .orElseThrow(
                () ->
                    new Fault(
                        FigureCode.FRICTION_UNKNOWN,
                        "--lubrication",
                        "a state for which no published range of friction is at hand",
                        "--friction with the lowest and highest"));
    String words = state.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return alike(range, words + ", VDI 2230 Part 1, table A5");
  }

  private static Rubs alike(Range<Friction> range, String whence) {
    return new Rubs(range, range, whence);
  }

  private static Range<Friction> range(Sizes.Span span) {
    return new Range<>(
        Friction.of(span.least().doubleValue()), Friction.of(span.most().doubleValue()));
  }

  private static Range<Friction> typed(String option, double[] ends) throws Fault {
    for (double each : ends) {
      if (!(each >= Friction.TYPED.low().coefficient()
          && each <= Friction.TYPED.high().coefficient())) {
        throw new Fault(
            FigureCode.FRICTION,
            option,
            each + "",
            Friction.TYPED + ", since nothing outside is published");
      }
    }
    return Range.between(Friction.of(ends[0]), Friction.of(ends[1]));
  }
}
