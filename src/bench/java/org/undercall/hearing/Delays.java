package org.undercall.hearing;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.sound.Frames;

/** How long phrases took from the end of speech until they were reported. */
final class Delays {
  private static final Set<IntentKind> ALLOWED = PhaseWords.heard(Phase.TORQUE);

  private final List<Trial> trials;
  private final double[] sorted;

  /**
   * One trial.
   *
   * @param delay in seconds, from the end of speech to the last phrase; empty if none came while
   *     sound came
   */
  record Trial(Result result, OptionalDouble delay) {}

  private Delays(List<Trial> trials) {
    this.trials = trials;
    this.sorted =
        trials.stream()
            .map(Trial::delay)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .sorted()
            .toArray();
  }

  static Delays of(List<Trial> trials) {
    return new Delays(trials);
  }

  /** Hears a clip at a torque stage, as fast as it would sound. */
  static Trial trial(Listener listener, Mixing.Clip clip, Predicate<Intent> right) {
    List<Listener.Heard> heard = listener.hearLive(clip.sound(), ALLOWED);
    OptionalDouble at = heard.isEmpty() ? OptionalDouble.empty() : heard.get(heard.size() - 1).at();
    double end = (double) clip.endOfSpeech() / Frames.RATE;
    return new Trial(
        Listener.result(heard, right),
        at.isPresent() ? OptionalDouble.of(at.getAsDouble() - end) : at);
  }

  /** How many phrases were timed. */
  int timed() {
    return sorted.length;
  }

  /** How many were not reported before the clip was over. */
  int late() {
    return trials.size() - sorted.length;
  }

  /** How many were heard right. */
  Share right() {
    int count = (int) trials.stream().filter(t -> t.result() == Result.RIGHT).count();
    return new Share(count, trials.size());
  }

  /** The delay below which so large a share lies, in seconds; 0 if none was timed. */
  double at(double quantile) {
    return sorted.length == 0
        ? 0
        : sorted[(int) Math.min(sorted.length - 1, quantile * sorted.length)];
  }

  /** Median and 95th percentile. */
  String shown() {
    return String.format(Locale.ROOT, "%.2f, %.2f", at(0.5), at(0.95));
  }
}
