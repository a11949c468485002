package org.undercall.core.review;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Measure;
import org.undercall.core.term.Side;

/**
 * A reading before and after the work at one place: two steps of the same side whose ids differ
 * only in their endings, {@code -before} and {@code -after}.
 *
 * @param name their common id
 * @param before the last value that was kept before; empty if there is none
 * @param after the last value that was kept after; empty if there is none
 * @param limits what the step after it permits; empty if the procedure states none
 */
public record BeforeAfter(
    String name,
    Side side,
    Optional<Measure> before,
    Optional<Measure> after,
    Optional<Step.Limits> limits) {
  private static final String BEFORE = "-before";
  private static final String AFTER = "-after";

  /** Every such pair of a session, in the order of the walk; nothing is put in for a value. */
  public static List<BeforeAfter> of(Review review) {
    Map<String, StepReview> after = new LinkedHashMap<>();
    List<StepReview> before = new ArrayList<>();
    for (StepReview step : review.steps()) {
      String id = step.place().ref().id();
      if (step.place().step() instanceof Step.Measure && id.endsWith(BEFORE)) {
        before.add(step);
      } else if (step.place().step() instanceof Step.Measure && id.endsWith(AFTER)) {
        after.put(name(step, AFTER) + "/" + step.place().ref().side(), step);
      }
    }
    List<BeforeAfter> pairs = new ArrayList<>();
    for (StepReview step : before) {
      StepReview other = after.get(name(step, BEFORE) + "/" + step.place().ref().side());
      if (other != null && unit(step) == unit(other)) {
        pairs.add(pair(step, other));
      }
    }
    return List.copyOf(pairs);
  }

  private static BeforeAfter pair(StepReview before, StepReview after) {
    Step.Limits limits = ((Step.Measure) after.place().step()).limits();
    boolean stated = limits.least().isPresent() || limits.most().isPresent();
    return new BeforeAfter(
        name(before, BEFORE),
        before.place().ref().side(),
        last(before),
        last(after),
        stated ? Optional.of(limits) : Optional.empty());
  }

  private static String name(StepReview step, String ending) {
    String id = step.place().ref().id();
    return id.substring(0, id.length() - ending.length());
  }

  private static Object unit(StepReview step) {
    return ((Step.Measure) step.place().step()).unit();
  }

  private static Optional<Measure> last(StepReview step) {
    List<Review.Timed<SessionEvent.Measured>> all = step.work().measured();
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1).event().value());
  }

  /** How much more it is after than before, less than zero if it is less; empty without both. */
  public Optional<BigDecimal> change() {
    return before.flatMap(b -> after.map(a -> a.amount().subtract(b.amount())));
  }

  /** Whether the value after lies within what the procedure permits; empty if that is not known. */
  public Optional<Boolean> within() {
    return limits.flatMap(l -> after.map(a -> l.hold(a.amount())));
  }
}
